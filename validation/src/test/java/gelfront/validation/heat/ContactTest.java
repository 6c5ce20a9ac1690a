// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.evidence.Check;
import gelfront.grid.VoxelModel;
import gelfront.mesh.Vec3;
import gelfront.validation.exact.HalfSpaces;
import gelfront.validation.exact.HalfSpaces.Body;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Plastisol on a thick mould: two half-spaces, with and without contact conductance, also on poor
 * conductors where the coupling is tight. Carslaw and Jaeger ch. II; Incropera and DeWitt ch. 5.
 */
class ContactTest {
  private static final double DX = 0.2e-3;
  private static final int CELLS = 120;
  private static final double TIME = 60;

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          aluminium, 167, 2419200, 2000
          aluminium, 167, 2419200, Infinity
          steel, 51.9, 3824820, 2000
          plaster, 0.43, 1100000, Infinity
          plaster, 0.43, 1100000, 500
          silicone, 0.25, 1495000, Infinity
          epoxy, 0.2, 1380000, Infinity
          epoxy, 0.2, 1380000, 300
          """)
  void temperaturesOnBothSides(String mould, double k, double c, double conductance) {
    HalfSpaces exact =
        new HalfSpaces(
            new Body(Bodies.K, Bodies.C, Bodies.START), new Body(k, c, Bodies.AROUND), conductance);
    double width = DX * Math.max(1, Math.sqrt(k / c / Bodies.ALPHA));
    double[] widths = new double[CELLS];
    java.util.Arrays.fill(widths, width);
    double film = conductance == Double.POSITIVE_INFINITY ? 1e12 : conductance;
    VoxelModel model = Column.onMould(CELLS, DX, widths, k, c, Bodies.AROUND, film);
    double cell = 0.5 * DX;

    Bodies.Run run = Bodies.run(model, new Vec3(cell, 0, 0), Bodies.plain(), TIME);

    double span = Bodies.START - Bodies.AROUND;
    String name = "plastisol on " + mould + ", contact " + conductance + " W/m2K, degC";
    Check check = Check.of(name, "half-spaces, Carslaw and Jaeger ch. II");
    for (double t : new double[] {5, 15, 60}) {
      check.expected(exact.inFirst(cell, t)).got(run.watch().at(0, t));
    }
    for (int m : new int[] {0, 3, 12}) {
      double x = (m + 0.5) * width;
      check.expected(exact.inSecond(x, run.state().time)).got(run.state().mould[m]);
    }
    check.within(0.003, span);
  }
}

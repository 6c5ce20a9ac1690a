package gelfront.validation.heat;

import gelfront.base.Workers;
import gelfront.grid.VoxelModel;
import gelfront.heat.SplitStepper;
import gelfront.material.MaterialTable;
import gelfront.mesh.Vec3;
import gelfront.validation.exact.LayeredPlate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flat cavities near outer faces against the series of layered plates, space errors alone. */
class ThinWallTest {
  private static final double THICK = 6e-3;

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          printed-resin, 1, 9, 2000, 0.5
          printed-resin, 1, 9, 2000, 0.4
          printed-resin, 2, 9, 30, 0.5
          printed-resin, 1.3, 1.7, 500, 0.55
          silicone, 1, 9, 500, 0.5
          plaster, 2, 9, 500, 0.5
          aluminium-filled-epoxy, 1, 9, 500, 0.5
          stainless-steel, 1, 9, 2000, 0.5
          aluminium-6061, 1, 9, 2000, 0.5
          aluminium-6061, 1, 9, 9, 0.5
          aluminium-6061, 2.3, 15, 500, 0.45
          """)
  void seriesOfLayers(String material, double wallMm, double otherMm, double film, double voxelMm) {
    Plate plate =
        new Plate(
            MaterialTable.builtIn().mould(material),
            1e-3 * otherMm,
            THICK,
            1e-3 * wallMm,
            new LayeredPlate.Outside(9, 23),
            new LayeredPlate.Outside(film, 15));
    LayeredPlate exact = plate.exact();
    VoxelModel model = plate.model(1e-3 * voxelMm);
    StringBuilder s = new StringBuilder();
    for (double share : new double[] {0.25, 0.5, 0.75}) {
      Vec3 probe = new Vec3(0, 0, share * THICK);
      double hot = exact.at(1, share * THICK, 400);
      SplitStepper split = new SplitStepper(model, Bodies.plain(), Workers.SERIAL);
      Watch watch =
          Bodies.run(split, model, probe, Bodies.plain(), Plate.SHOT, Math.max(hot, 90), 400)
              .watch();
      for (double t : new double[] {140, 125, 100}) {
        double wanted = exact.crossing(1, share * THICK, t, 0.5, 1000);
        double seen = watch.crossing(0, t);
        s.append(
            String.format(
                " %.2f/%.0f: %.2f %+.2f %%", share, t, wanted, 100 * (seen / wanted - 1)));
      }
    }
    System.out.println(
        "TRIAL "
            + material
            + " "
            + wallMm
            + " "
            + film
            + " "
            + voxelMm
            + " cells "
            + model.mould().count()
            + s);
  }
}

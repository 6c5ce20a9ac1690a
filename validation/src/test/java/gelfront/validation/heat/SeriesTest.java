// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.evidence.Check;
import gelfront.grid.VoxelModel;
import gelfront.mesh.Vec3;
import gelfront.validation.exact.CoolingSeries;
import gelfront.validation.exact.CoolingSeries.Shape;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Slab, cylinder and ball at 20 cells across against the series of Incropera and DeWitt ch. 5,
 * Carslaw and Jaeger ch. III, VII, IX, at the Fourier numbers of the printed tables (0.1 and
 * later). Bars and balls are voxelized, coupled and stepped as a part is; the slab is made by hand.
 */
class SeriesTest {
  private static final String SOURCE = "series of Carslaw and Jaeger, Incropera and DeWitt";
  private static final double RADIUS = 5e-3;
  private static final double UNIT = RADIUS * RADIUS / Bodies.ALPHA;

  private static VoxelModel model(Shape shape, double biot, int across) {
    double film = Bodies.film(biot, RADIUS);
    double dx = 2 * RADIUS / across;
    return switch (shape) {
      case SLAB -> Column.slab(across, dx, Bodies.AROUND, film);
      case CYLINDER -> Bodies.slice(RADIUS, dx, film);
      case BALL -> Bodies.ball(RADIUS, dx, film);
    };
  }

  private static Watch cool(Shape shape, double biot, int across) {
    Vec3 centre = shape == Shape.SLAB ? new Vec3(RADIUS, 0, 0) : Vec3.ZERO;
    return Bodies.cool(model(shape, biot, across), centre, Bodies.temperature(0.2));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          SLAB, 1
          SLAB, 10
          SLAB, 80
          SLAB, Infinity
          CYLINDER, 1
          CYLINDER, 10
          CYLINDER, 80
          CYLINDER, Infinity
          BALL, 1
          BALL, 10
          BALL, 80
          BALL, Infinity
          """)
  void centreAndMean(Shape shape, double biot) {
    holds(shape, biot);
  }

  private static void holds(Shape shape, double biot) {
    CoolingSeries series = new CoolingSeries(shape, biot);

    Watch watch = cool(shape, biot, 20);

    String body = shape.name().toLowerCase(Locale.ROOT) + ", Biot number " + biot;
    Check times = Check.of(body + ": the centre's times, s", SOURCE);
    for (double theta : List.of(0.5, 0.3)) {
      double exact = series.fourierAtCentre(theta) * UNIT;
      times.expected(exact).got(watch.crossing(0, Bodies.temperature(theta)));
    }
    times.within(0.005);
    Check centre = Check.of(body + ": the centre's theta", SOURCE);
    Check mean = Check.of(body + ": the mean theta", SOURCE);
    double end = series.fourierAtCentre(0.25);
    for (double f = 0.1; f < end; f += 0.05) {
      centre.at(f).expected(series.centre(f)).got(Bodies.theta(watch.at(0, f * UNIT)));
      mean.expected(series.mean(f)).got(Bodies.theta(watch.mean(f * UNIT)));
    }
    centre.plot("Fourier number", "theta").within(0.003, 1);
    mean.within(0.003, 1);
  }

  /**
   * The slab's error falls with the square of the voxel. Bars and balls lie differently on each
   * grid: what is left of theirs is of the walls, a third of a per cent at 10 across at most.
   */
  @ParameterizedTest
  @EnumSource(Shape.class)
  void errorFallsWithTheVoxel(Shape shape) {
    double exact = new CoolingSeries(shape, 80).fourierAtCentre(0.3) * UNIT;

    double coarse = cool(shape, 80, 10).crossing(0, Bodies.temperature(0.3)) - exact;
    double fine = cool(shape, 80, 30).crossing(0, Bodies.temperature(0.3)) - exact;

    String body = shape.name().toLowerCase(Locale.ROOT) + ", the centre's time to theta 0.3";
    Check.of(body + ", 10 across", SOURCE).error(coarse / exact).within(0.0035);
    Check.of(body + ", 30 across", SOURCE).error(fine / exact).within(0.0015);
    if (shape == Shape.SLAB) {
      Check.of(body + ", order in the voxel", SOURCE)
          .expected(2)
          .got(Math.log(Math.abs(coarse / fine)) / Math.log(3))
          .within(0.1);
    }
  }
}

package gelfront.validation.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.grid.VoxelModel;
import gelfront.mesh.Vec3;
import gelfront.validation.exact.CoolingSeries;
import gelfront.validation.exact.CoolingSeries.Shape;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Slab, cylinder and ball at 20 cells across against the series of Incropera and DeWitt ch. 5,
 * Carslaw and Jaeger ch. III, VII, IX, at the Fourier numbers of the printed tables (0.1 and
 * later). Bars and balls are voxelized, coupled and stepped as a part is; the slab is made by hand.
 */
class SeriesTest {
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

    for (double theta : List.of(0.5, 0.3)) {
      double exact = series.fourierAtCentre(theta) * UNIT;
      assertEquals(exact, watch.crossing(0, Bodies.temperature(theta)), 0.005 * exact);
    }
    double end = series.fourierAtCentre(0.25);
    for (double f = 0.1; f < end; f += 0.05) {
      assertEquals(series.centre(f), Bodies.theta(watch.at(0, f * UNIT)), 0.003, "Fo " + f);
      assertEquals(series.mean(f), Bodies.theta(watch.mean(f * UNIT)), 0.003, "Fo " + f);
    }
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

    assertEquals(0, coarse / exact, 0.0035);
    assertEquals(0, fine / exact, 0.0015);
    if (shape == Shape.SLAB) {
      assertEquals(2, Math.log(Math.abs(coarse / fine)) / Math.log(3), 0.2);
    }
  }
}

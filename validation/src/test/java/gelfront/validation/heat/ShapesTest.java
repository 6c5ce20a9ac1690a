// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.evidence.Check;
import gelfront.mesh.Vec3;
import gelfront.validation.exact.EqualSetting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shapes against each other: equal setting, direction on the grid, size. */
class ShapesTest {
  private static final double DIAMETER = 8e-3;

  private static double film(double length) {
    return Bodies.film(Double.POSITIVE_INFINITY, length);
  }

  /** Ratios from the series of Carslaw and Jaeger; Bi infinite, no latent heat. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.3})
  void barPlateAndBallThatSetTogether(double theta) {
    double level = Bodies.temperature(theta);
    double end = Bodies.temperature(0.25);
    double plate = DIAMETER / EqualSetting.plate(theta);
    double ball = DIAMETER / EqualSetting.ball(theta);

    double bar =
        Bodies.cool(Bodies.slice(DIAMETER / 2, DIAMETER / 20, film(DIAMETER)), end)
            .crossing(0, level);
    double ofPlate =
        Bodies.cool(
                Column.slab(20, plate / 20, Bodies.AROUND, film(plate)),
                new Vec3(plate / 2, 0, 0),
                end)
            .crossing(0, level);
    double ofBall =
        Bodies.cool(Bodies.ball(ball / 2, ball / 20, film(ball)), end).crossing(0, level);

    String source = "series of Carslaw and Jaeger";
    Check.of("a plate that sets with a bar, theta " + theta, source)
        .expected(bar)
        .got(ofPlate)
        .within(0.005);
    Check.of("a ball that sets with a bar, theta " + theta, source)
        .expected(bar)
        .got(ofBall)
        .within(0.005);
  }

  @Test
  void anInclinedBarSetsWithAnAlignedOne() {
    double radius = 3e-3;
    double film = 1500;

    double aligned =
        Bodies.cool(Bodies.bar(radius, new Vec3(1, 0, 0), 0.375e-3, film), Bodies.temperature(0.4))
            .crossing(0, Bodies.temperature(0.5));
    double inclined =
        Bodies.cool(Bodies.bar(radius, new Vec3(3, 2, 1), 0.375e-3, film), Bodies.temperature(0.4))
            .crossing(0, Bodies.temperature(0.5));

    assertEquals(aligned, inclined, 0.01 * aligned);
  }

  /** Fo and Bi alone decide: twice the size at half the film takes four times as long. */
  @Test
  void twiceTheSizeTakesFourTimesAsLong() {
    double level = Bodies.temperature(0.5);
    double end = Bodies.temperature(0.45);

    double small = Bodies.cool(Bodies.ball(3e-3, 0.3e-3, 1000), end).crossing(0, level);
    double large = Bodies.cool(Bodies.ball(6e-3, 0.6e-3, 500), end).crossing(0, level);

    Check.of("twice the size takes four times as long", "Fourier and Biot numbers")
        .expected(4)
        .got(large / small)
        .within(0.002);
  }
}

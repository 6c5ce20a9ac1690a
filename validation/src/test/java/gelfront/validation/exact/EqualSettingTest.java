// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import gelfront.evidence.Check;
import gelfront.validation.exact.CoolingSeries.Shape;
import org.junit.jupiter.api.Test;

/** Against values computed from the same series by another program. */
class EqualSettingTest {
  private static final String SERIES = "Carslaw and Jaeger's series, by another program";

  @Test
  void plateAndBallThatSetWithABar() {
    Check plate = Check.of("plate that sets with a bar", SERIES);
    Check ball = Check.of("ball that sets with a bar", SERIES);
    for (double[] r :
        Rows.of(
            """
            0.7, 1.31544, 0.85194
            0.5556, 1.35926, 0.83718
            0.5, 1.37433, 0.83193
            0.4, 1.39941, 0.82284
            0.3, 1.42236, 0.81400
            0.01, 1.49593, 0.78203
            """)) {
      plate.expected(r[1]).got(EqualSetting.plate(r[0]));
      ball.expected(r[2]).got(EqualSetting.ball(r[0]));
    }
    plate.within(6e-6, 1);
    ball.within(6e-6, 1);
  }

  @Test
  void lateLimitFollowsFromTheFirstEigenvalues() {
    Check.of("late limit of plate and ball", "first eigenvalues: 2.4048 / (pi / 2), 2.4048 / pi")
        .expected(1.5310)
        .got(EqualSetting.late(Shape.SLAB))
        .expected(0.7655)
        .got(EqualSetting.late(Shape.BALL))
        .within(6e-5, 1);
  }
}

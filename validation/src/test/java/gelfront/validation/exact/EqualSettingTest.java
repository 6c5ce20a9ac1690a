// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.validation.exact.CoolingSeries.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against values computed from the same series by another program. */
class EqualSettingTest {
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          0.7, 1.31544, 0.85194
          0.5556, 1.35926, 0.83718
          0.5, 1.37433, 0.83193
          0.4, 1.39941, 0.82284
          0.3, 1.42236, 0.81400
          0.01, 1.49593, 0.78203
          """)
  void plateAndBallThatSetWithABar(double theta, double plate, double ball) {
    assertEquals(plate, EqualSetting.plate(theta), 6e-6);
    assertEquals(ball, EqualSetting.ball(theta), 6e-6);
  }

  @Test
  void lateLimitFollowsFromTheFirstEigenvalues() {
    assertEquals(1.5310, EqualSetting.late(Shape.SLAB), 6e-5);
    assertEquals(0.7655, EqualSetting.late(Shape.BALL), 6e-5);
  }
}

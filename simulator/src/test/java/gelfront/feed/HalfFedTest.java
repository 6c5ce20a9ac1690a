// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

final class HalfFedTest {
  private final HalfFed half = new HalfFed();

  /** A share of 1 - t / 10 is a half at 5 s, however long the steps are. */
  @Test
  void aStraightDeclineIsHalfWhereItIs() {
    double from = 0;
    for (double to : new double[] {1, 2.5, 3, 4.4, 6.2, 8}) {
      half.after(1 - 0.05 * (from + to), from, to);
      from = to;
    }

    assertEquals(5, half.at(), 1e-12);
  }

  /** The plunger is let go at 5 s: steps are short again, and nothing comes any more. */
  @Test
  void aSuddenEndIsWhereStepsAreShortAgain() {
    assertTrue(half.after(0.98, 3, 5));
    assertFalse(half.after(0, 5, 5.01));

    assertEquals(5, half.at(), 0.005);
  }

  @Test
  void whatComesBackWasNeverLost() {
    half.after(0.2, 0, 1);
    half.after(0.7, 1, 2);

    assertEquals(Double.POSITIVE_INFINITY, half.at());
  }
}

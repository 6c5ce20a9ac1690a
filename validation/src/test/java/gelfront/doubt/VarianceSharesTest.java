// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Ishigami and Homma's function f = sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1, each x even between -pi
 * and pi (Proc. ISUMA 1990, 398), whose shares have a closed form:
 *
 * <pre>
 *   V1 = (1 + b pi^4 / 5)^2 / 2,  V2 = a^2 / 8,  V13 = b^2 pi^8 (1/18 - 1/50),  V = V1 + V2 + V13
 * </pre>
 */
class VarianceSharesTest {
  private static final String SOURCE = "Ishigami and Homma 1990, closed form";

  private static final double A = 7;
  private static final double B = 0.1;
  private static final double V1 = 0.5 * Math.pow(1 + B * Math.pow(Math.PI, 4) / 5, 2);
  private static final double V2 = A * A / 8;
  private static final double V13 = B * B * Math.pow(Math.PI, 8) * (1 / 18.0 - 1 / 50.0);
  private static final double V = V1 + V2 + V13;

  private static double ishigami(double[] p) {
    double x1 = Math.PI * (2 * p[0] - 1);
    double x2 = Math.PI * (2 * p[1] - 1);
    double x3 = Math.PI * (2 * p[2] - 1);
    return Math.sin(x1) + A * Math.pow(Math.sin(x2), 2) + B * Math.pow(x3, 4) * Math.sin(x1);
  }

  private static VarianceShares.Share[] shares(int n) {
    VarianceShares v = new VarianceShares(n, 3);
    return v.of(Arrays.stream(v.points()).mapToDouble(VarianceSharesTest::ishigami).toArray());
  }

  @Test
  void sharesOfIshigamisFunctionAreThoseOfTheClosedForm() {
    VarianceShares.Share[] s = shares(4096);

    Check alone = Check.of("each unknown's own share of the variance", SOURCE);
    alone.expected(V1 / V).got(s[0].alone());
    alone.expected(V2 / V).got(s[1].alone());
    alone.expected(0).got(s[2].alone());
    alone.within(0.01, 1);
    Check total = Check.of("each unknown's total share of the variance", SOURCE);
    total.expected((V1 + V13) / V).got(s[0].total());
    total.expected(V2 / V).got(s[1].total());
    total.expected(V13 / V).got(s[2].total());
    total.within(0.01, 1);
  }

  @Test
  void intervalsHoldTheTruthAndShrink() {
    VarianceShares.Share[] few = shares(64);
    VarianceShares.Share[] many = shares(1024);
    double[] total = {(V1 + V13) / V, V2 / V, V13 / V};
    for (int u = 0; u < 3; u++) {
      assertTrue(few[u].low() <= total[u] && total[u] <= few[u].high(), u + ": " + few[u]);
      assertTrue(many[u].high() - many[u].low() < 0.5 * (few[u].high() - few[u].low()));
    }
  }

  @Test
  void nothingDecidesWhatNeverChanges() {
    VarianceShares v = new VarianceShares(8, 2);
    for (VarianceShares.Share s : v.of(new double[v.points().length])) {
      assertEquals(new VarianceShares.Share(0, 0, 0, 0), s);
    }
  }
}

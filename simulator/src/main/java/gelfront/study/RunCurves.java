// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Curves;
import gelfront.result.Series;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;

/** A run's curves as studies keep them: five digits, and of the pockets only the deepest. */
final class RunCurves {
  private static final MathContext DIGITS = new MathContext(5);
  private static final String DEEPEST = "pocket1";

  private RunCurves() {}

  static Curves of(Series s) {
    return new Curves(
        rounded(s.time()),
        s.curves().stream()
            .filter(c -> !c.key().startsWith("pocket") || c.key().equals(DEEPEST))
            .map(c -> new Curves.Curve(c.key(), c.label(), c.unit(), rounded(c.values())))
            .toList());
  }

  private static List<Double> rounded(double[] values) {
    return Arrays.stream(values).map(RunCurves::rounded).boxed().toList();
  }

  private static double rounded(double v) {
    return Double.isFinite(v) ? BigDecimal.valueOf(v).round(DIGITS).doubleValue() : 0;
  }
}

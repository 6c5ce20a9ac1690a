// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Quantities of a case file: a text with its unit, or a number where the file states the unit of
 * bare ones.
 *
 * @param bare units of bare numbers by dimension
 */
record QuantityReader(Map<Dimension, String> bare) {
  private static final Pattern LEADING_NUMBER =
      Pattern.compile("^[-+]?[0-9]+(\\.[0-9]+)?(?=\\s*[^-/0-9\\seE.]|$)");

  /**
   * A value of the file in SI.
   *
   * @throws IllegalArgumentException in words, if it is no quantity of this dimension
   */
  double si(Object raw, Dimension d) {
    if (raw instanceof String s) {
      return Quantities.parse(s, d);
    }
    if (!(raw instanceof Number n)) {
      throw new IllegalArgumentException("must be a quantity such as \"" + d.example() + "\"");
    }
    if (!Double.isFinite(n.doubleValue())) {
      throw new IllegalArgumentException(raw + " is not a finite number");
    }
    if (bare.get(d) == null) {
      throw new IllegalArgumentException(
          raw
              + " has no unit: write \""
              + d.example()
              + "\", or state units = { length = \"mm\", temperature = \"degC\", time = \"s\" }"
              + " at the head of the file");
    }
    return d.toSi(n.doubleValue(), bare.get(d));
  }

  /** As a reader of the report should see it: with its unit. */
  String shown(Object raw, Dimension d) {
    return raw instanceof Number && bare.containsKey(d)
        ? raw + " " + bare.get(d)
        : String.valueOf(raw);
  }

  /** Says that a value lies outside its range, and which unit may have been meant. */
  static String outOfRange(Object raw, Dimension d, double low, double high) {
    return raw
        + " is out of range: "
        + bound(low, d)
        + " to "
        + bound(high, d)
        + (grows(raw, d) ? "; plastisol must shrink as it cools" : otherUnit(raw, d, low, high));
  }

  private static boolean grows(Object raw, Dimension d) {
    return d == Dimension.EXPANSION && String.valueOf(raw).strip().startsWith("-");
  }

  private static String bound(double si, Dimension d) {
    String unit = d.example().substring(d.example().indexOf(' ') + 1);
    double one = d.toSi(1, unit) - d.toSi(0, unit);
    double value = (si - d.toSi(0, unit)) / one;
    return new BigDecimal(value)
            .round(new MathContext(4))
            .add(BigDecimal.ZERO)
            .stripTrailingZeros()
            .toPlainString()
        + " "
        + unit;
  }

  /** The same number would do in another unit: 330 for °F stated as °C, 1.03 g/cm3 as kg/m3. */
  private static String otherUnit(Object raw, Dimension d, double low, double high) {
    Matcher number = LEADING_NUMBER.matcher(String.valueOf(raw).strip());
    if (!number.find()) {
      return "";
    }
    double value = Double.parseDouble(number.group());
    return d.unitList().stream()
        .filter(u -> d.toSi(value, u) >= low && d.toSi(value, u) <= high)
        .findFirst()
        .map(u -> "; did you mean " + number.group() + " " + u + "?")
        .orElse("");
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Units that a person reads and types.
 *
 * @param inch lengths in inches, else millimetres
 * @param fahrenheit temperatures in °F, else °C
 */
public record Units(boolean inch, boolean fahrenheit) {
  /** Millimetres and °C. */
  public static final Units METRIC = new Units(false, false);

  /** The unit as a case file spells it; empty where the dimension has none that is typed here. */
  public String word(Dimension d) {
    return switch (d) {
      case LENGTH -> inch ? "in" : "mm";
      case TEMPERATURE -> fahrenheit ? "degF" : "degC";
      case TIME -> "s";
      case PRESSURE -> "kPa";
      case VOLUME -> "ml";
      case FORCE -> "kN";
      default -> "";
    };
  }

  /** The unit as a person reads it. */
  public String shown(Dimension d) {
    return word(d).replace("deg", "°");
  }

  /**
   * A value without its unit, as it is typed.
   *
   * @param si SI, °C
   */
  public String number(Dimension d, double si) {
    String format = d == Dimension.LENGTH ? (inch ? "%.4f" : "%.3f") : "%.2f";
    String digits = Quantities.say(format, inUnit(d, si)).replaceFirst("\\.?0+$", "");
    return digits.equals("-0") ? "0" : digits;
  }

  /** The same with two digits, as what is usual is told where it was turned into other units. */
  public String rough(Dimension d, double si) {
    boolean turned = inch && d == Dimension.LENGTH;
    return turned
        ? new BigDecimal(inUnit(d, si)).round(new MathContext(2)).toPlainString()
        : number(d, si);
  }

  private double inUnit(Dimension d, double si) {
    return d == Dimension.TEMPERATURE ? fahrenheit ? si * 1.8 + 32 : si : si / d.toSi(1, word(d));
  }

  /** A value with its unit, for a sentence. */
  public String said(Dimension d, double si) {
    String format = d == Dimension.LENGTH ? (inch ? "%.3f" : "%.1f") : "%.0f";
    return Quantities.say(format, inUnit(d, si)) + " " + shown(d);
  }

  /**
   * What a person typed, as it stands in a case file, quotes excluded. A bare number is in these
   * units; any other unit may be typed, too.
   *
   * @throws IllegalArgumentException in words, if it is no such quantity
   */
  public String typed(Dimension d, String text) {
    String stripped = text.strip().replace("°", "deg");
    String whole = stripped.matches(".*[0-9.]$") ? stripped + " " + word(d) : stripped;
    Quantities.parse(whole, d);
    return whole;
  }
}

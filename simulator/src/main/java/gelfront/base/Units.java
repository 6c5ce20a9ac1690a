// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;

/**
 * Units that a person reads and types, and how sentences tell figures in them. Volumes, pressures
 * and forces are the same in all.
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
    return Quantities.say(format, inUnit(d, si)).replaceFirst("\\.?0+$", "");
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

  /** Kelvins above or below something. */
  public String difference(double kelvins) {
    return Quantities.say("%.0f ", fahrenheit ? kelvins * 1.8 : kelvins)
        + (fahrenheit ? "°F" : "K");
  }

  /** A temperature to the degree. */
  public String temperature(double celsius) {
    return Quantities.say("%.0f ", inUnit(Dimension.TEMPERATURE, celsius))
        + shown(Dimension.TEMPERATURE);
  }

  /** A length with as many digits as {@link Quantities#mm} tells. */
  public String size(double metres) {
    return inch ? length(metres, Math.abs(metres) < 0.1 ? 1 : 0) : Quantities.mm(metres);
  }

  /** A length as it stands on a drawing or a cutter: no zeros behind. */
  public String plain(double metres) {
    return lengthDigits(metres, 2).replaceFirst("\\.?0+$", "") + " " + shown(Dimension.LENGTH);
  }

  /**
   * @param decimals of millimetres; inches get those that tell about as much
   */
  public String length(double metres, int decimals) {
    return lengths("%s", decimals, metres);
  }

  /** As above from one to the other; one alone where both read the same. */
  public String range(double low, double high, int decimals) {
    boolean same = lengthDigits(low, decimals).equals(lengthDigits(high, decimals));
    return same ? length(high, decimals) : lengths("%s to %s", decimals, low, high);
  }

  /**
   * Several, with the unit behind the last.
   *
   * @param text with a %s for each
   * @param decimals as above
   */
  public String lengths(String text, int decimals, double... metres) {
    Object[] digits = Arrays.stream(metres).mapToObj(m -> lengthDigits(m, decimals)).toArray();
    return Quantities.say(text, digits) + " " + shown(Dimension.LENGTH);
  }

  private String lengthDigits(double metres, int decimals) {
    int places = inch ? decimals == 0 ? 2 : 3 : decimals;
    return Quantities.say("%." + places + "f", inUnit(Dimension.LENGTH, metres));
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

// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads quantities as people write them, and writes them for people. */
public final class Quantities {
  private static final Pattern DECIMAL =
      Pattern.compile("([-+]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?)(.*)");
  private static final Pattern FRACTION =
      Pattern.compile("([-+]?)(?:([0-9]+)[\\s-]+)?([0-9]+)\\s*/\\s*([0-9]+)(.*)");
  private static final Pattern FIELD =
      Pattern.compile("%[-+ 0,(#]*[0-9]*(?:\\.([0-9]+))?([a-zA-Z%])");
  private static final Pattern COMMA = Pattern.compile("[-+]?[0-9. ']*,[0-9]+.*");

  private Quantities() {}

  /**
   * "12 mm", "330 degF", "1/2 in", "1 1/2 in", "1.5 min".
   *
   * @return SI; °C for temperatures; always finite
   * @throws IllegalArgumentException in words, if it is no such quantity
   */
  public static double parse(String text, Dimension dimension) {
    String trimmed = text.strip();
    if (COMMA.matcher(trimmed).matches()) {
      throw no(text, "has a decimal comma; write a point, as in " + dimension.example());
    }
    Matcher fraction = FRACTION.matcher(trimmed);
    Matcher decimal = DECIMAL.matcher(trimmed);
    double value;
    String unit;
    if (fraction.matches()) {
      value = value(fraction);
      unit = fraction.group(5).strip();
    } else if (decimal.matches()) {
      value = Double.parseDouble(decimal.group(1));
      unit = decimal.group(2).strip();
    } else {
      throw no(text, "is not a quantity; write it like " + dimension.example());
    }
    if (unit.isEmpty()) {
      throw no(text, "has no unit; write it like " + dimension.example());
    }
    if (!dimension.knows(unit)) {
      throw no(text, "can't be read: " + dimension.unknown(unit));
    }
    double si = dimension.toSi(value, unit);
    if (!Double.isFinite(si)) {
      throw no(text, "is not a finite value");
    }
    return si;
  }

  private static double value(Matcher fraction) {
    double whole = fraction.group(2) == null ? 0 : Double.parseDouble(fraction.group(2));
    double value =
        whole + Double.parseDouble(fraction.group(3)) / Double.parseDouble(fraction.group(4));
    return fraction.group(1).equals("-") ? -value : value;
  }

  private static IllegalArgumentException no(String text, String why) {
    return new IllegalArgumentException("\"" + text + "\" " + why);
  }

  /** Metres as millimetres, "3.0 mm". */
  public static String mm(double metres) {
    double mm = metres * 1e3;
    return say(Math.abs(mm) < 1 ? "%.2f mm" : Math.abs(mm) < 100 ? "%.1f mm" : "%.0f mm", mm);
  }

  /** Cubic metres as millilitres. */
  public static String ml(double m3) {
    double ml = m3 * 1e6;
    boolean speck = ml >= 5e-5 && ml < 0.01;
    return say(speck ? "%.4f ml" : ml < 1 ? "%.2f ml" : "%.1f ml", ml);
  }

  /** {@code String.format} with a point for decimals everywhere, and no zero below zero. */
  public static String say(String format, Object... values) {
    Object[] told = values.clone();
    Matcher field = FIELD.matcher(format);
    int next = 0;
    while (field.find()) {
      boolean takes = !field.group(2).equals("%") && !field.group(2).equals("n");
      if (takes && next < told.length) {
        told[next] = field.group(2).equals("f") ? unsigned(told[next], field.group(1)) : told[next];
        next++;
      }
    }
    return String.format(Locale.ROOT, format, told);
  }

  /** Nothing where no digit of a value below zero is told. */
  private static Object unsigned(Object value, @Nullable String decimals) {
    double least = 0.5 * Math.pow(10, decimals == null ? -6 : -Integer.parseInt(decimals));
    return value instanceof Double v && v <= 0 && v > -least ? Double.valueOf(0) : value;
  }

  /**
   * Millimetres to a tenth, and no zero below zero.
   *
   * @param metres of a place
   */
  public static double tenths(double metres) {
    return Math.rint(metres * 1e4) / 10 + 0.0;
  }
}

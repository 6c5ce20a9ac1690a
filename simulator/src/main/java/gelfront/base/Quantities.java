package gelfront.base;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads quantities as people write them, and writes them for people. */
public final class Quantities {
  private static final Pattern FORM =
      Pattern.compile(
          "\\s*([-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)(?:\\s*/\\s*([0-9.]+)(?=\\s|[a-zA-Z\"]))?\\s*(.*?)\\s*");

  private Quantities() {}

  /**
   * "12 mm", "330 degF", "1/2 in", "1.5 min".
   *
   * @throws IllegalArgumentException in words, if it is no such quantity
   */
  public static double parse(String text, Dimension dimension) {
    if (text.matches("\\s*[-+]?[0-9]+,[0-9]+.*")) {
      throw new IllegalArgumentException(
          "\"" + text + "\" has a decimal comma; write a point, as in " + dimension.example());
    }
    Matcher m = FORM.matcher(text);
    if (!m.matches()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is not a quantity; write it like " + dimension.example());
    }
    double value;
    try {
      value = Double.parseDouble(m.group(1));
      if (m.group(2) != null) {
        value /= Double.parseDouble(m.group(2));
      }
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "\"" + text + "\" does not begin with a number; write it like " + dimension.example(), e);
    }
    if (m.group(3).isEmpty()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" has no unit; write it like " + dimension.example());
    }
    return dimension.toSi(value, m.group(3));
  }

  /** Metres as millimetres, "3.0 mm". */
  public static String mm(double metres) {
    double mm = metres * 1e3;
    return say(Math.abs(mm) < 1 ? "%.2f mm" : Math.abs(mm) < 100 ? "%.1f mm" : "%.0f mm", mm);
  }

  /** Cubic metres as millilitres. */
  public static String ml(double m3) {
    return say(m3 < 1e-6 ? "%.2f ml" : "%.1f ml", m3 * 1e6);
  }

  /** {@code String.format} with a point for decimals everywhere. */
  public static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}

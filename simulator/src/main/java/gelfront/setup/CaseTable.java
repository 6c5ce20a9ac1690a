package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Nearest;
import gelfront.base.Quantities;
import gelfront.mesh.Vec3;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * One table of a case file. Getters note a mistake and answer with a stand-in, so that one pass
 * finds all mistakes.
 */
final class CaseTable {
  /** Nothing that a mould holds lies farther from the origin, metres. */
  private static final double FARTHEST = 10;

  private static final Pattern LEADING_NUMBER =
      Pattern.compile("^[-+]?[0-9]+(\\.[0-9]+)?(?=\\s*[^-/0-9\\seE.]|$)");

  private final String name;
  private final TomlTable table;
  private final TomlPosition at;
  private final Map<Dimension, String> bare;
  private final List<Mistake> mistakes;
  private final List<Statement> given;

  /**
   * @param name as in {@link CaseKeys}
   * @param table null where the file has none
   * @param at where the table stands
   * @param bare units of bare numbers by dimension
   * @param mistakes collects them
   * @param given collects what the file states
   */
  CaseTable(
      String name,
      TomlTable table,
      TomlPosition at,
      Map<Dimension, String> bare,
      List<Mistake> mistakes,
      List<Statement> given) {
    this.name = name;
    this.table = table;
    this.at = at;
    this.bare = bare;
    this.mistakes = mistakes;
    this.given = given;
    refuseUnknown();
  }

  private void refuseUnknown() {
    if (table == null) {
      return;
    }
    List<String> known = CaseKeys.of(name);
    for (String key : table.keySet()) {
      if (!known.contains(key)) {
        mistake(
            key,
            "unknown key \""
                + key
                + "\""
                + where()
                + Nearest.to(key, known)
                    .map(k -> "; did you mean \"" + k + "\"?")
                    .orElse("; known: " + String.join(", ", known)));
      }
    }
  }

  private String where() {
    return name.isEmpty() ? "" : " in [" + name + "]";
  }

  boolean present() {
    return table != null;
  }

  boolean has(String key) {
    return table != null && table.contains(List.of(key));
  }

  CaseTable sub(String key) {
    if (!has(key)) {
      return new CaseTable(key, null, at, bare, mistakes, given);
    }
    if (!(table.get(List.of(key)) instanceof TomlTable t)) {
      mistake(key, "[" + key + "] must be a table");
      return new CaseTable(key, null, at, bare, mistakes, given);
    }
    return new CaseTable(key, t, position(key), bare, mistakes, given);
  }

  /** Tables of an array such as [[block.insert]]. */
  List<CaseTable> list(String key) {
    List<CaseTable> all = new ArrayList<>();
    if (!has(key)) {
      return all;
    }
    String full = name.isEmpty() ? key : name + "." + key;
    if (table.get(List.of(key)) instanceof TomlArray a) {
      for (int i = 0; i < a.size(); i++) {
        if (a.get(i) instanceof TomlTable t) {
          all.add(new CaseTable(full, t, a.inputPositionOf(i), bare, mistakes, given));
        } else {
          mistake(key, "[[" + full + "]] must hold tables");
        }
      }
    } else {
      mistake(key, "write [[" + full + "]] with double brackets: there may be several");
    }
    return all;
  }

  private TomlPosition position(String key) {
    TomlPosition p = table == null ? null : table.inputPositionOf(List.of(key));
    return p == null ? at : p;
  }

  void mistake(String key, String message) {
    TomlPosition p = key.isEmpty() ? at : position(key);
    mistakes.add(
        p == null ? new Mistake(0, 0, message) : new Mistake(p.line(), p.column(), message));
  }

  private void missing(String key, String example) {
    mistake("", "[" + name + "] needs " + key + ", for example " + key + " = " + example);
  }

  Optional<String> text(String key) {
    if (!has(key)) {
      return Optional.empty();
    }
    if (table.get(List.of(key)) instanceof String s) {
      state(key, s);
      return Optional.of(s);
    }
    mistake(key, key + " must be a text in quotes");
    return Optional.empty();
  }

  private void state(String key, String value) {
    given.add(
        new Statement((name.isEmpty() ? "" : name + ": ") + key.replace('_', ' '), value, ""));
  }

  /** One text or a list of texts. */
  List<String> texts(String key) {
    if (!has(key)) {
      return List.of();
    }
    if (!(table.get(List.of(key)) instanceof TomlArray a)) {
      return text(key).stream().toList();
    }
    List<String> all = new ArrayList<>();
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i) instanceof String s) {
        all.add(s);
      } else {
        mistake(key, key + " must be a text in quotes or a list of such");
      }
    }
    state(key, String.join(", ", all));
    return all;
  }

  boolean flag(String key) {
    if (!has(key)) {
      return false;
    }
    if (table.get(List.of(key)) instanceof Boolean b) {
      return b;
    }
    mistake(key, key + " must be true or false");
    return false;
  }

  /** A whole number, {@code otherwise} where it is not stated. */
  int count(String key, int otherwise) {
    if (!has(key)) {
      return otherwise;
    }
    if (table.get(List.of(key)) instanceof Long l && l >= 1 && l <= 1000) {
      state(key, String.valueOf(l));
      return Math.toIntExact(l);
    }
    mistake(key, key + " must be a whole number from 1 to 1000");
    return otherwise;
  }

  /** A quantity in SI that lies in a range; NaN and a mistake where it is missing or odd. */
  double need(String key, Dimension d, double low, double high) {
    if (!has(key)) {
      if (table != null) {
        missing(key, "\"" + d.example() + "\"");
      }
      return Double.NaN;
    }
    return quantity(key, d, low, high).orElse(Double.NaN);
  }

  /** A quantity in SI that lies in a range, if it is stated. */
  OptionalDouble quantity(String key, Dimension d, double low, double high) {
    if (!has(key)) {
      return OptionalDouble.empty();
    }
    OptionalDouble v = value(key, table.get(List.of(key)), d);
    if (v.isPresent()) {
      state(key, String.valueOf(table.get(List.of(key))));
      if (!(v.getAsDouble() >= low && v.getAsDouble() <= high)) {
        mistake(
            key,
            key
                + " = "
                + table.get(List.of(key))
                + " is out of range: "
                + shown(low, d)
                + " to "
                + shown(high, d)
                + otherUnit(table.get(List.of(key)), d, low, high));
        return OptionalDouble.empty();
      }
    }
    return v;
  }

  private static String shown(double si, Dimension d) {
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

  private OptionalDouble value(String key, Object raw, Dimension d) {
    try {
      if (raw instanceof String s) {
        return OptionalDouble.of(Quantities.parse(s, d));
      }
      if (raw instanceof Number n) {
        String unit = bare.get(d);
        if (!Double.isFinite(n.doubleValue())) {
          mistake(key, key + " = " + raw + " is not a finite number");
          return OptionalDouble.empty();
        }
        if (unit != null) {
          return OptionalDouble.of(d.toSi(n.doubleValue(), unit));
        }
        mistake(
            key,
            key
                + " = "
                + raw
                + " has no unit: write \""
                + d.example()
                + "\", or state units = { length = \"mm\", temperature = \"degC\", time = \"s\" } at the head of the file");
        return OptionalDouble.empty();
      }
      mistake(key, key + " must be a quantity such as \"" + d.example() + "\"");
    } catch (IllegalArgumentException e) {
      mistake(key, key + ": " + e.getMessage());
    }
    return OptionalDouble.empty();
  }

  /** Quantities of a list, rising or not. */
  List<Double> quantities(String key, Dimension d) {
    List<Double> all = new ArrayList<>();
    if (!has(key)) {
      return all;
    }
    Object raw = table.get(List.of(key));
    if (raw instanceof TomlArray a) {
      for (int i = 0; i < a.size(); i++) {
        value(key, a.get(i), d).ifPresent(all::add);
      }
    } else {
      value(key, raw, d).ifPresent(all::add);
    }
    state(key, raw instanceof TomlArray a ? a.toList().toString() : String.valueOf(raw));
    return all;
  }

  /** A place, metres. */
  Optional<Vec3> place(String key) {
    double[] v = three(key, true);
    return v == null ? Optional.empty() : Optional.of(new Vec3(v[0], v[1], v[2]));
  }

  /** A direction of length one. */
  Optional<Vec3> direction(String key) {
    double[] v = three(key, false);
    if (v == null) {
      return Optional.empty();
    }
    Vec3 d = new Vec3(v[0], v[1], v[2]);
    if (!(d.length() > 0 && Double.isFinite(d.length()))) {
      mistake(key, key + " must point somewhere, for example [-1, 0, 0]");
      return Optional.empty();
    }
    return Optional.of(d.unit());
  }

  private double[] three(String key, boolean length) {
    if (!has(key)) {
      return null;
    }
    String example = length ? "[\"0 mm\", \"2 mm\", \"0 mm\"]" : "[-1, 0, 0]";
    if (!(table.get(List.of(key)) instanceof TomlArray a) || a.size() != 3) {
      mistake(key, key + " must be three values, for example " + example);
      return null;
    }
    double[] v = new double[3];
    for (int i = 0; i < 3; i++) {
      if (length) {
        OptionalDouble one = value(key, a.get(i), Dimension.LENGTH);
        if (one.isEmpty()) {
          return null;
        }
        v[i] = one.getAsDouble();
        if (Math.abs(v[i]) > FARTHEST) {
          mistake(key, key + " lies more than 10 m away; is it stated in the right unit?");
          return null;
        }
      } else if (a.get(i) instanceof Number n && Double.isFinite(n.doubleValue())) {
        v[i] = n.doubleValue();
      } else {
        mistake(key, key + " must be three numbers, for example " + example);
        return null;
      }
    }
    state(key, a.toList().toString());
    return v;
  }

  /** One of several words. */
  Optional<String> choice(String key, List<String> known) {
    Optional<String> word = text(key);
    if (word.isPresent() && !known.contains(word.get())) {
      mistake(
          key,
          key
              + " = \""
              + word.get()
              + "\" is none of "
              + String.join(", ", known)
              + Nearest.question(word.get(), known));
      return Optional.empty();
    }
    return word;
  }

  /** Like {@link #choice}, and it must be there. */
  String needChoice(String key, List<String> known) {
    if (!has(key)) {
      missing(key, "\"" + known.get(0) + "\"");
    }
    return choice(key, known).orElse(known.get(0));
  }
}

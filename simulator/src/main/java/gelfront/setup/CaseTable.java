// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Nearest;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
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

  private final String name;
  private final String label;
  private final @Nullable TomlTable table;
  private final @Nullable TomlPosition at;
  private final QuantityReader reader;
  private final List<Mistake> mistakes;
  private final List<Statement> given;

  /**
   * @param name as in {@link CaseKeys}
   * @param label by which statements tell it from others of its name
   * @param table null where the file has none
   * @param at where the table stands; null where that is the whole file
   * @param reader of quantities
   * @param mistakes collects them
   * @param given collects what the file states
   */
  private CaseTable(
      String name,
      String label,
      @Nullable TomlTable table,
      @Nullable TomlPosition at,
      QuantityReader reader,
      List<Mistake> mistakes,
      List<Statement> given) {
    this.name = name;
    this.label = label;
    this.table = table;
    this.at = at;
    this.reader = reader;
    this.mistakes = mistakes;
    this.given = given;
    if (table != null) {
      UnknownKeys.in(name, table).forEach(this::mistake);
    }
  }

  /** The whole file. */
  static CaseTable whole(
      TomlTable file, QuantityReader reader, List<Mistake> mistakes, List<Statement> given) {
    return new CaseTable("", "", file, null, reader, mistakes, given);
  }

  /** What statements call it: its name, and its number from 1 on where there may be several. */
  String label() {
    return label;
  }

  boolean present() {
    return table != null;
  }

  boolean has(String key) {
    return table != null && table.contains(List.of(key));
  }

  /** What the file states under a key that it {@link #has}. */
  private Object stated(String key) {
    return Objects.requireNonNull(table, key).get(List.of(key));
  }

  CaseTable sub(String key) {
    if (!has(key)) {
      return new CaseTable(key, key, null, at, reader, mistakes, given);
    }
    if (!(stated(key) instanceof TomlTable t)) {
      mistake(key, "[" + key + "] must be a table");
      return new CaseTable(key, key, null, at, reader, mistakes, given);
    }
    return new CaseTable(key, key, t, position(key), reader, mistakes, given);
  }

  /** Tables of an array such as [[block.insert]]. */
  List<CaseTable> list(String key) {
    List<CaseTable> all = new ArrayList<>();
    if (!has(key)) {
      return all;
    }
    String full = name.isEmpty() ? key : name + "." + key;
    if (stated(key) instanceof TomlArray a) {
      for (int i = 0; i < a.size(); i++) {
        if (a.get(i) instanceof TomlTable t) {
          String one = full + " " + (i + 1);
          all.add(new CaseTable(full, one, t, a.inputPositionOf(i), reader, mistakes, given));
        } else {
          mistake(key, "[[" + full + "]] must hold tables");
        }
      }
    } else {
      mistake(key, "write [[" + full + "]] with double brackets: there may be several");
    }
    return all;
  }

  private @Nullable TomlPosition position(String key) {
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
    if (stated(key) instanceof String s) {
      state(key, s);
      return Optional.of(s);
    }
    mistake(key, key + " must be a text in quotes");
    return Optional.empty();
  }

  private void state(String key, String value) {
    given.add(
        new Statement((label.isEmpty() ? "" : label + ": ") + key.replace('_', ' '), value, ""));
  }

  /** One text or a list of texts. */
  List<String> texts(String key) {
    if (!has(key)) {
      return List.of();
    }
    if (!(stated(key) instanceof TomlArray a)) {
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
    if (stated(key) instanceof Boolean b) {
      state(key, b ? "yes" : "no");
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
    if (stated(key) instanceof Long l && l >= 1 && l <= 1000) {
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
    Object raw = stated(key);
    OptionalDouble v = value(key, raw, d);
    if (v.isPresent() && !(v.getAsDouble() >= low && v.getAsDouble() <= high)) {
      mistake(key, key + " = " + QuantityReader.outOfRange(raw, d, low, high));
      return OptionalDouble.empty();
    }
    if (v.isPresent()) {
      state(key, reader.shown(raw, d));
    }
    return v;
  }

  private OptionalDouble value(String key, Object raw, Dimension d) {
    try {
      return OptionalDouble.of(reader.si(raw, d));
    } catch (IllegalArgumentException e) {
      mistake(key, key + ": " + e.getMessage());
      return OptionalDouble.empty();
    }
  }

  /** Quantities in SI of a list, or of one value. */
  List<Double> quantities(String key, Dimension d) {
    List<Double> all = new ArrayList<>();
    if (!has(key)) {
      return all;
    }
    Object raw = stated(key);
    List<Object> values = raw instanceof TomlArray a ? a.toList() : List.of(raw);
    for (Object one : values) {
      value(key, one, d).ifPresent(all::add);
    }
    state(key, values.stream().map(v -> reader.shown(v, d)).collect(Collectors.joining(", ")));
    return all;
  }

  /** A place, metres. */
  Optional<Vec3> place(String key) {
    return has(key) ? places(key, List.of(stated(key))).stream().findFirst() : Optional.empty();
  }

  private List<Vec3> places(String key, List<Object> stated) {
    List<Vec3> all = new ArrayList<>();
    List<String> shown = new ArrayList<>();
    for (Object one : stated) {
      List<Object> raw = three(key, one, "[\"0 mm\", \"2 mm\", \"0 mm\"]");
      double[] v = raw.stream().mapToDouble(c -> coordinate(key, c)).toArray();
      if (v.length == 3 && !Double.isNaN(v[0] + v[1] + v[2])) {
        all.add(new Vec3(v[0], v[1], v[2]));
        shown.add(shown(raw));
      }
    }
    if (!all.isEmpty()) {
      state(key, String.join(", ", shown));
    }
    return all;
  }

  private String shown(List<Object> place) {
    return place.stream()
        .map(c -> reader.shown(c, Dimension.LENGTH))
        .collect(Collectors.joining(", ", "(", ")"));
  }

  /** Places, metres: one or a list of them. */
  List<Vec3> places(String key) {
    boolean several =
        has(key)
            && stated(key) instanceof TomlArray a
            && !a.isEmpty()
            && a.get(0) instanceof TomlArray;
    return several ? places(key, ((TomlArray) stated(key)).toList()) : place(key).stream().toList();
  }

  /** Metres; NaN and a mistake where it is none. */
  private double coordinate(String key, Object raw) {
    double v = value(key, raw, Dimension.LENGTH).orElse(Double.NaN);
    if (Math.abs(v) > FARTHEST) {
      mistake(key, key + ": " + raw + " lies more than 10 m away; is it stated in the right unit?");
      return Double.NaN;
    }
    return v;
  }

  /** A direction of length one. */
  Optional<Vec3> direction(String key) {
    String example = "[-1, 0, 0]";
    List<Object> raw = has(key) ? three(key, stated(key), example) : List.of();
    if (raw.isEmpty()) {
      return Optional.empty();
    }
    double[] v =
        raw.stream()
            .mapToDouble(c -> c instanceof Number n ? n.doubleValue() : Double.NaN)
            .toArray();
    Vec3 d = new Vec3(v[0], v[1], v[2]);
    if (Double.isNaN(d.length())) {
      mistake(key, key + " must be three numbers, for example " + example);
      return Optional.empty();
    }
    if (!(d.length() > 0 && Double.isFinite(d.length()))) {
      mistake(key, key + " must point somewhere, for example " + example);
      return Optional.empty();
    }
    state(key, raw.toString());
    return Optional.of(d.unit());
  }

  /** Three values, or none and a mistake. */
  private List<Object> three(String key, Object stated, String example) {
    if (stated instanceof TomlArray a && a.size() == 3) {
      return a.toList();
    }
    mistake(key, key + " must be three values, for example " + example);
    return List.of();
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

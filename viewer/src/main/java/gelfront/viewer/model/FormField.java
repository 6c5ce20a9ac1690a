// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.setup.Case;
import gelfront.setup.CaseKeys;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One line of the form: a key of the case file.
 *
 * @param key with its table, as {@code gate.size}
 * @param label for people
 * @param dimension null: a choice of words
 * @param low what is usual, SI and °C; below it is odd, not forbidden
 * @param high likewise; common practice, no source
 * @param value what the case says or assumes; empty where it has none
 * @param choices that there are; empty for quantities
 * @param word the present choice
 */
public record FormField(
    String key,
    String label,
    @Nullable Dimension dimension,
    double low,
    double high,
    Function<Case, OptionalDouble> value,
    Function<LoadedCase, List<String>> choices,
    Function<LoadedCase, String> word) {

  static FormField quantity(
      String key,
      String label,
      Dimension d,
      double low,
      double high,
      Function<Case, OptionalDouble> value) {
    return new FormField(key, label, d, low, high, value, c -> List.of(), c -> "");
  }

  static FormField choice(
      String key,
      String label,
      Function<LoadedCase, List<String>> choices,
      Function<LoadedCase, String> word) {
    return new FormField(key, label, null, 0, 0, c -> OptionalDouble.empty(), choices, word);
  }

  public boolean isChoice() {
    return dimension == null;
  }

  /**
   * What it is measured in.
   *
   * @throws NullPointerException for choices: a fault in the program
   */
  public Dimension measured() {
    return Objects.requireNonNull(dimension, "a choice has no unit");
  }

  /** In the words of {@code gelfront keys}. */
  public String meaning() {
    int dot = key.lastIndexOf('.');
    String stated = dot < 0 ? "" : "[" + key.substring(0, dot) + "]";
    // One of several tables goes by its number here, and by double brackets there.
    String table = stated.replaceFirst("\\[(.*)\\.\\d+]", "[[$1]]");
    String name = key.substring(dot + 1);
    return CaseKeys.all().stream()
        .filter(k -> k.table().equals(table) && k.name().equals(name))
        .map(CaseKeys.Key::meaning)
        .findFirst()
        .orElseThrow();
  }

  /** "usually 2 to 6 mm"; empty for choices. */
  public String usual(Units units) {
    if (isChoice()) {
      return "";
    }
    return "usually "
        + units.rough(measured(), low)
        + " to "
        + units.rough(measured(), high)
        + " "
        + units.shown(measured());
  }

  /** Whether a value is out of what is usual. */
  public boolean odd(LoadedCase loaded) {
    OptionalDouble v = value.apply(loaded.setup());
    double slack = 1e-9 * Math.abs(high);
    return v.isPresent()
        && (v.getAsDouble() < low - slack || v.getAsDouble() > high + slack)
        && !isChoice();
  }

  /** As it stands in the form; empty where the case has no such value. */
  public String shown(LoadedCase loaded, Units units) {
    if (isChoice()) {
      return word.apply(loaded);
    }
    OptionalDouble v = value.apply(loaded.setup());
    return v.isPresent() ? units.number(measured(), v.getAsDouble()) : "";
  }

  /**
   * What a person typed or chose, as a change of the case file.
   *
   * @throws IllegalArgumentException in words
   */
  public List<Change> changed(String typed, LoadedCase loaded, Units units) {
    if (key.endsWith(".shape")) {
      return shaped(typed, loaded);
    }
    if (key.equals("fill.on")) {
      return List.of(new Change.Set(key, Boolean.toString(typed.equals("yes"))));
    }
    if (isChoice()) {
      return List.of(Change.word(key, typed));
    }
    if (typed.isBlank()) {
      return List.of(new Change.Remove(key));
    }
    Change set = new Change.Set(key, "\"" + units.typed(measured(), typed) + "\"");
    return key.startsWith("runner.") && !loaded.states("runner")
        ? List.of(set, runnerBeside(loaded))
        : List.of(set);
  }

  /** Only a rectangular section has a height, and needs one. */
  private List<Change> shaped(String shape, LoadedCase loaded) {
    String table = key.substring(0, key.lastIndexOf('.'));
    Change word = Change.word(key, shape);
    if (!shape.equals("rectangular")) {
      return List.of(word, new Change.Remove(table + ".height"));
    }
    double size = Gates.of(loaded).get(Gates.number(table)).section().width();
    return List.of(word, Change.mm(table + ".height", Math.round(0.5e4 * size) * 1e-4));
  }

  /** A runner has a size and a length: the one that wasn't typed. */
  private Change runnerBeside(LoadedCase loaded) {
    double gate = loaded.stated("gate.size", Dimension.LENGTH).orElse(3e-3);
    return key.equals("runner.length")
        ? Change.mm("runner.size", Math.round(1.5e4 * gate) * 1e-4)
        : new Change.Set("runner.length", "\"" + Quantities.say("%.0f mm", 10.0) + "\"");
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.setup.Case;
import gelfront.setup.Change;
import gelfront.setup.FeedSystem;
import gelfront.setup.InputName;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An input and the values it is to take, evenly spaced, ends included.
 *
 * @param input what changes
 * @param unit as people wrote it
 * @param low first value, in that unit
 * @param high last, above the first
 * @param steps how many values, two at least
 */
public record Range(InputName input, String unit, double low, double high, int steps) {
  /** Runs of a map that somebody waits for. */
  private static final int MOST_STEPS = 100;

  private static final String NUMBER = "([-+]?[0-9]*\\.?[0-9]+(?:[eE][-+]?[0-9]+)?)\\s*";

  /** None, or what may have slashes in it but doesn't begin with a fraction's. */
  private static final String UNIT = "(|(?!/\\s*[0-9]).+?)";

  private static final Pattern WRITTEN =
      Pattern.compile(
          "([^=]+)=\\s*" + NUMBER + UNIT + "\\.\\.\\s*" + NUMBER + UNIT + "(?:/\\s*([0-9]+))?");

  public Range {
    if (!(low < high)) {
      throw new IllegalArgumentException(
          Quantities.say(
              "%s: the range from %s to %s %s is empty",
              input.words(), plain(low), plain(high), unit));
    }
    if (steps < 2 || steps > MOST_STEPS) {
      throw new IllegalArgumentException(
          input.words() + ": 2 to " + MOST_STEPS + " values make a map");
    }
  }

  /**
   * "gate size = 2..5 mm", with "/7" at the end for seven values.
   *
   * @param steps where it says none
   * @throws IllegalArgumentException in words
   */
  public static Range parse(String text, int steps) {
    Matcher m = WRITTEN.matcher(text.strip());
    if (!m.matches()) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" is no range; write \"gate size = 2..5 mm\" or \"shot = 150..170 degC/6\"");
    }
    InputName input = InputName.of(m.group(1));
    String first = m.group(3).strip();
    String unit = m.group(5).strip();
    if (unit.isEmpty() || !(first.isEmpty() || first.equals(unit))) {
      throw new IllegalArgumentException(
          "\"" + text + "\": both ends need one unit, as in \"gate size = 2..5 mm\"");
    }
    int n = m.group(6) == null ? steps : (int) Double.parseDouble(m.group(6)); // however long
    return new Range(
        input, unit, Double.parseDouble(m.group(2)), Double.parseDouble(m.group(4)), n);
  }

  /** In the range's unit, rising. */
  public List<Double> values() {
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      all.add(low + (high - low) * i / (steps - 1));
    }
    return all;
  }

  /** "3.5 mm gate size". */
  public String label(double value) {
    return input.words() + " " + plain(value) + " " + unit;
  }

  static String plain(double v) {
    return Quantities.say(Math.abs(v) < 0.1 ? "%.6f" : "%.4f", v).replaceFirst("\\.?0+$", "");
  }

  /**
   * What makes the input take a value. A sprue that would narrow outwards gets as wide a mouth.
   *
   * @param value in the range's unit
   */
  public List<Change> changes(LoadedCase base, double value) {
    Change one = new Change.Set(input.key(), Change.quantity(value, unit));
    boolean declared = base.setup().feed() instanceof FeedSystem.Declared;
    if (!declared || !input.key().equals("sprue.diameter")) {
      return List.of(one);
    }
    OptionalDouble mouth = base.stated("sprue.mouth_diameter", Dimension.LENGTH);
    boolean narrows = mouth.isPresent() && mouth.getAsDouble() < Dimension.LENGTH.toSi(value, unit);
    return narrows
        ? List.of(one, new Change.Set("sprue.mouth_diameter", Change.quantity(value, unit)))
        : List.of(one);
  }

  /** The case's own value in the range's unit; absent where it has none that is known. */
  public OptionalDouble present(LoadedCase base) {
    OptionalDouble si =
        Arrays.stream(Dimension.values())
            .filter(d -> d.knows(unit))
            .map(d -> base.stated(input.key(), d))
            .filter(OptionalDouble::isPresent)
            .findFirst()
            .orElseGet(() -> assumed(base.setup()));
    return si.isPresent() ? OptionalDouble.of(fromSi(si.getAsDouble())) : si;
  }

  private OptionalDouble assumed(Case c) {
    return switch (input.key()) {
      case "block.start" -> OptionalDouble.of(c.block().startTemperature());
      case "block.air" -> OptionalDouble.of(c.block().airTemperature());
      case "block.wall" -> OptionalDouble.of(c.block().wall());
      case "shot.hold_time" -> OptionalDouble.of(c.shot().holdTime());
      case "shot.hold_pressure" -> OptionalDouble.of(c.shot().holdPressure());
      case "shot.fill_time" -> OptionalDouble.of(c.shot().fillTime());
      case "plastisol.no_flow" -> OptionalDouble.of(c.plastisol().noFlow());
      case "plastisol.firm" -> OptionalDouble.of(c.plastisol().firm());
      default -> OptionalDouble.empty();
    };
  }

  private double fromSi(double si) {
    Dimension d =
        Arrays.stream(Dimension.values()).filter(x -> x.knows(unit)).findFirst().orElseThrow();
    double zero = d.toSi(0, unit);
    return (si - zero) / (d.toSi(1, unit) - zero);
  }
}

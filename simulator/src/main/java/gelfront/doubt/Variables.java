// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import gelfront.answer.Doubt;
import gelfront.base.Dimension;
import gelfront.base.Entries;
import gelfront.material.Ranged;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/**
 * What isn't known for sure of a case: properties that the file leaves to the material table, and
 * how exactly shot and tools meet what it states. What the file states of the plastisol is taken
 * for known.
 */
final class Variables {
  private static final String OWN = "tolerance, own judgement";

  private final LoadedCase base;
  private final List<Variable> all = new ArrayList<>();
  private final List<String> known = new ArrayList<>();

  private Variables(LoadedCase base) {
    this.base = base;
  }

  /**
   * @throws IllegalArgumentException in words, if the table has no such plastisol
   */
  static Variables of(LoadedCase base, Tolerances tolerances) {
    Variables v = new Variables(base);
    Map<String, Ranged> table = base.materials().entry("plastisol", v.grade());
    for (Property p : Property.plastisol()) {
      v.property("plastisol.", p, Entries.of(table, p.key()));
    }
    v.property("block.", Property.contact(), base.materials().film("contact"));
    v.property("block.", Property.shrunkOff(), base.materials().film("contact-shrunk-off"));
    v.tolerances(tolerances);
    return v;
  }

  List<Variable> all() {
    return all;
  }

  /** What was left out because the file states it. */
  List<String> known() {
    return known;
  }

  private String grade() {
    return base.word("plastisol.grade").orElse("soft");
  }

  private void property(String table, Property p, Ranged range) {
    OptionalDouble stated = base.stated(table + p.key(), p.dimension());
    boolean measured = p.key().equals("viscosity_165") && base.states("plastisol.viscosity");
    if (stated.isPresent() || measured) {
      known.add(p.words());
    } else if (range.low() < range.high()) {
      Guess g =
          new Guess(
              p.fromSi(range.low()),
              p.fromSi(range.typical()),
              p.fromSi(range.high()),
              p.decades());
      add(p.words(), p.unit(), g, "material table, " + range.source(), p.advice(), of(table, p));
    }
  }

  private static DoubleFunction<List<Change>> of(String table, Property p) {
    return v -> List.of(new Change.Set(table + p.key(), Change.quantity(v, p.unit())));
  }

  private void tolerances(Tolerances t) {
    within(
        "shot temperature",
        "shot.temperature",
        "degC",
        OptionalDouble.of(base.setup().shot().temperature()),
        t.temperature(),
        "Hold a second thermometer into the stream.");
    within(
        "mould temperature",
        "block.start",
        "degC",
        OptionalDouble.of(base.setup().block().startTemperature()),
        t.temperature(),
        "Press a surface thermometer on the cavity just before the shot.");
    double hold = base.setup().shot().holdTime();
    within(
        "hold time",
        "shot.hold_time",
        "s",
        hold > t.time() ? OptionalDouble.of(hold) : OptionalDouble.empty(),
        t.time(),
        "Count aloud, or use a timer.");
    OptionalDouble gate = base.stated("gate.size", Dimension.LENGTH);
    within(
        "gate size",
        "gate.size",
        "mm",
        gate.isPresent() ? OptionalDouble.of(gate.getAsDouble() * 1e3) : gate,
        t.size() * 1e3,
        "Measure the gate of a cold shot with calipers, and add its shrinkage.");
  }

  private void within(
      String words, String key, String unit, OptionalDouble value, double by, String advice) {
    if (value.isPresent() && by > 0 && value.getAsDouble() > by) {
      double v = value.getAsDouble();
      Guess g = new Guess(v - by, v, v + by, false);
      add(words, unit, g, OWN, advice, x -> List.of(new Change.Set(key, Change.quantity(x, unit))));
    }
  }

  private void add(
      String words,
      String unit,
      Guess g,
      String source,
      String advice,
      DoubleFunction<List<Change>> changes) {
    all.add(
        new Variable(
            new Doubt.Unknown(words, unit, g.low(), g.likely(), g.high(), source, advice),
            g,
            changes));
  }
}

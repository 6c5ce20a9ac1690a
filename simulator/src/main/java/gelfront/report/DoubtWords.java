// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Doubt;
import gelfront.answer.RunOutcome;
import java.util.ArrayList;
import java.util.List;

/** How sure a verdict is, in sentences. */
public final class DoubtWords {
  private DoubtWords() {}

  /** How many cases dent, how deep, and which unknown decides. */
  public static List<String> of(Doubt d) {
    List<String> said = new ArrayList<>();
    said.add(count(d));
    if (!d.outcomes().isEmpty()) {
      said.add(depths(d));
    }
    said.add(asItIs(d));
    said.add(first(d));
    if (d.failed() > 0) {
      String cases = d.failed() == 1 ? " plausible case" : " plausible cases";
      said.add(d.failed() + cases + " gave no result; the table says why.");
    }
    return said;
  }

  private static String count(Doubt d) {
    int n = d.outcomes().size();
    if (n == 0) {
      return "No plausible case gave a result.";
    }
    long may = d.mayDent();
    if (may == 0) {
      return "Clean in all " + n + " plausible cases.";
    }
    return "Dents in "
        + may
        + " of "
        + n
        + " plausible cases if the skin gives way in the worst manner, in "
        + (d.dentsAnyway() == 0 ? "none" : "" + d.dentsAnyway())
        + " of them if it does in the mildest.";
  }

  private static String depths(Doubt d) {
    double[] all = d.depths();
    return "The deepest dent is "
        + mm(d.depthAt(0.5))
        + " in the middle case, "
        + mm(d.depthAt(0.25))
        + " to "
        + mm(d.depthAt(0.75))
        + " in the middle half, "
        + mm(all[0])
        + " to "
        + mm(all[all.length - 1])
        + " over all.";
  }

  private static String asItIs(Doubt d) {
    String usual =
        d.finer()
            .outcome()
            .map(
                o ->
                    "With the most likely values: "
                        + Say.depth(o.dentLow(), o.dentHigh())
                        + " deep")
            .orElse("With the most likely values there is no result (" + d.finer().error() + ")");
    String still =
        d.conduction()
            .outcome()
            .map(RunOutcome::dentHigh)
            .map(v -> "; if no liquid were drawn in at all: " + mm(Math.max(0, v + d.anchor())))
            .orElse("");
    return usual + still + ".";
  }

  private static String first(Doubt d) {
    int n = d.outcomes().size();
    boolean alike = n > 0 && d.failed() == 0 && (d.mayDent() == 0 || d.dentsAnyway() == n);
    if (alike) {
      return "The verdict is the same in all of them: nothing has to be measured for it.";
    }
    return d.first()
        .map(u -> "Measure this first: " + u.name() + ". " + u.advice())
        .orElse(
            "None of the unknowns stands out: so few cases don't tell which decides, or all say the"
                + " same.");
  }

  static String mm(double metres) {
    return Say.fixed(metres * 1e3, 2) + " mm";
  }

  /** A unit as it is printed. */
  static String unit(String unit) {
    return switch (unit) {
      case "degC" -> "°C";
      case "Pas" -> "Pa s";
      case "W/mK" -> "W/m K";
      case "J/kgK" -> "J/kg K";
      case "W/m2K" -> "W/m² K";
      default -> unit;
    };
  }

  /** A value of an unknown with three digits. */
  static String value(double v) {
    return v != 0 && Math.abs(v) < 0.01
        ? String.format(java.util.Locale.ROOT, "%.2e", v)
        : Say.significant(v, 3);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.base.Quantities;
import gelfront.fill.FillRecord;
import gelfront.finding.Filled;
import gelfront.mesh.Vec3;
import java.util.List;

/** What a shot came to, in words. */
final class FillWords {
  private FillWords() {}

  static String sentence(
      FillRecord fill,
      double pressure,
      List<Filled.Cold> cold,
      List<Filled.TrappedAir> air,
      Vec3 last,
      double margin,
      double spare) {
    String end =
        switch (fill.end()) {
          case FULL -> Quantities.say("The cavity is full after %.1f s", fill.time());
          case AIR_HOLDS ->
              air.isEmpty()
                  ? Quantities.say("The cavity is full after %.1f s", fill.time())
                  : Quantities.say("After %.1f s the air in the cavity holds", fill.time());
          case FROZEN ->
              Quantities.say(
                  "The way to the front sets after %.1f s, before it is full", fill.time());
          case TOO_SLOW -> Quantities.say("After %.0f s the cavity is still not full", fill.time());
        };
    String pressed = Quantities.say(", with up to %.0f kPa at the mouth. ", pressure * 1e-3);
    return end + pressed + reach(cold, last, margin, spare) + air(air);
  }

  private static String reach(List<Filled.Cold> cold, Vec3 last, double margin, double spare) {
    if (!cold.isEmpty() && !cold.get(0).reached()) {
      return Quantities.say(
          "No liquid comes to %s, %s of the part: shoot hotter or faster, or warm the mould. ",
          FillJudge.place(cold.get(0).place()), Quantities.ml(cold.get(0).volume()));
    }
    if (!cold.isEmpty()) {
      return Quantities.say(
          "The place at %s may not fill: the front comes only %.0f K above where nothing flows,"
              + " with %.1f s to spare. ",
          FillJudge.place(cold.get(0).place()), cold.get(0).margin(), cold.get(0).spare());
    }
    String time =
        Double.isFinite(spare) ? Quantities.say(", with %.1f s to spare", Math.max(0, spare)) : "";
    return Quantities.say(
        "It fills last at %s; the front is nowhere less than %.0f K above where nothing flows%s. ",
        FillJudge.place(last), margin, time);
  }

  private static String air(List<Filled.TrappedAir> air) {
    if (air.isEmpty()) {
      return "No air is trapped.";
    }
    return Quantities.say(
        "Air is trapped in %s, the most at %s.",
        air.size() == 1 ? "one place" : air.size() + " places",
        FillJudge.place(air.get(0).place()));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.finding.Filled;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a shot came to, in words. */
final class FillWords {
  /** Instead of what is said of dents. */
  static final String EXPLANATION =
      "What is said here of dents, gate and times counts only once it fills: it is calculated as if"
          + " the cavity were full.";

  /** Metres from which nobody scratches a single vent: own judgement. */
  private static final double WIDEST_SCRATCH = 100e-3;

  private final Units units;

  FillWords(Units units) {
    this.units = units;
  }

  String sentence(Filled f) {
    return end(f)
        + Quantities.say(
            ", with up to %.0f kPa at the mouth before the last fiftieth. ", f.pressure() * 1e-3)
        + reach(f)
        + air(f.air());
  }

  /**
   * Of a part that isn't whole.
   *
   * @param empty m3 of it that stay so
   */
  String verdict(Filled f, double empty) {
    return Quantities.say(
        "This part doesn't fill: %s of it stays empty, round %s, because %s.",
        Quantities.ml(empty),
        Words.place(
            units, wanting(f).map(Filled.Cold::place).orElseGet(() -> f.air().get(0).place())),
        wanting(f).isPresent() ? "no liquid comes there" : "air is trapped there");
  }

  /** What to change for it to fill. */
  List<String> advice(Filled f) {
    List<String> advice = new ArrayList<>();
    if (wanting(f).isPresent()) {
      advice.add("Shoot hotter or faster, or warm the mould: liquid must come everywhere first.");
      advice.add("Or open the gate, or fill nearer to the place that stays empty.");
    }
    f.air().stream().limit(1).forEach(a -> advice.add(proposal(a)));
    return advice;
  }

  /** The largest place that no liquid reaches; none where more is held out by air. */
  private static Optional<Filled.Cold> wanting(Filled f) {
    double air = f.air().stream().mapToDouble(Filled.TrappedAir::volume).sum();
    return f.cold().stream().filter(c -> !c.reached() && f.unfilled() >= air).findFirst();
  }

  private static String end(Filled f) {
    String full = Quantities.say("The cavity is full after %.1f s", f.time());
    return switch (f.end()) {
      case FULL -> full;
      case AIR_HOLDS ->
          f.air().isEmpty()
              ? full
              : Quantities.say("After %.1f s the air in the cavity holds", f.time());
      case FROZEN ->
          Quantities.say("The way to the front sets after %.1f s, before it is full", f.time());
      case TOO_SLOW -> Quantities.say("After %.0f s the cavity is still not full", f.time());
    };
  }

  private String reach(Filled f) {
    if (f.cold().isEmpty()) {
      double spare = f.spare();
      String time =
          Double.isFinite(spare)
              ? Quantities.say(", with %.1f s to spare", Math.max(0, spare))
              : "";
      return Quantities.say(
          "It fills last at %s; the front is nowhere less than %s above where nothing flows%s. ",
          place(f.last()), units.difference(f.margin()), time);
    }
    Filled.Cold worst = f.cold().get(0);
    return worst.reached()
        ? Quantities.say(
            "The place at %s may not fill: the front comes only %s above where nothing flows,"
                + " with %.1f s to spare. ",
            place(worst.place()), units.difference(worst.margin()), worst.spare())
        : Quantities.say(
            "No liquid comes to %s, %s of the part: shoot hotter or faster, or warm the mould. ",
            place(worst.place()), Quantities.ml(worst.volume()));
  }

  private String air(List<Filled.TrappedAir> air) {
    if (air.isEmpty()) {
      return "No air is trapped.";
    }
    return Quantities.say(
        "Air is trapped in %s, the most at %s.",
        air.size() == 1 ? "one place" : air.size() + " places", place(air.get(0).place()));
  }

  /** What would let it out. */
  String proposal(Filled.TrappedAir a) {
    if (a.offFace() > 0) {
      return Quantities.say(
          "It lies %s from the parting face, where no scratch reaches it: let a pin or an insert end"
              + " there, for air leaves round it, turn the part in the block, or gate it so that this"
              + " place doesn't fill last.",
          units.size(a.offFace()));
    }
    double wide = Math.ceil(a.ventWidth() * 1e3) * 1e-3;
    if (wide > WIDEST_SCRATCH) {
      return Quantities.say(
          "No scratch lets so much air out: vents %s deep would have to be %s wide together. Scratch"
              + " many round the part, or fill more slowly, as long as thin places still fill.",
          units.length(Filled.TrappedAir.VENT_DEPTH, 2), units.length(wide, 0));
    }
    return Quantities.say(
        "Scratch a vent %s deep and %s wide into the parting face, from %s to the outside of the"
            + " block.",
        units.length(Filled.TrappedAir.VENT_DEPTH, 2), units.length(wide, 0), place(a.vent()));
  }

  private String place(Vec3 p) {
    return units.lengths("(%s, %s, %s)", 1, p.x(), p.y(), p.z());
  }
}

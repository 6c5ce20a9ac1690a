package gelfront.study;

import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import gelfront.base.Quantities;
import gelfront.finding.Constriction;
import gelfront.mesh.Vec3;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A sizing in plain words: only what was run is claimed. */
final class SizeWords {
  /** Share of the visible depth within which models decide more than the part does. */
  private static final double CLOSE = 0.15;

  private SizeWords() {}

  /** What came of one place. */
  static String place(
      LoadedCase base, PlaceSearch p, List<Sizing.Choice> choices, Optional<Sizing.Cure> cure) {
    double visible = base.setup().visibleDent();
    if (choices.isEmpty()) {
      return no(p, cure);
    }
    Optional<Sizing.Choice> holds =
        choices.stream()
            .filter(c -> c.holds(visible))
            .min(Comparator.comparingDouble(Sizing.Choice::gate));
    if (holds.isEmpty()) {
      return "A gate of "
          + Cutters.plainMm(p.does())
          + " does at level quick, but not at level normal, nor do the next cutter sizes: too close"
          + " to call; take the next size up and check it.";
    }
    return "A gate of "
        + holds.get().gateWords()
        + " does"
        + beside(base, holds.get())
        + below(p)
        + ".";
  }

  private static String beside(LoadedCase base, Sizing.Choice c) {
    double now = ((FeedSystem.Declared) base.setup().feed()).sprue().innerDiameter();
    double dent = c.normal().outcome().map(RunOutcome::dentHigh).orElse(Double.NaN);
    String sprue =
        Math.abs(c.sprue() - now) < 1e-6
            ? ", with the sprue of " + Cutters.plainMm(now) + " as it is"
            : ", with a sprue of " + Cutters.plainMm(c.sprue());
    double margin = base.setup().visibleDent() - dent;
    String close = margin < CLOSE * base.setup().visibleDent() ? ", a close call" : "";
    return sprue
        + Quantities.say(
            ": the deepest dent stays under %.2f mm, %.2f mm less than is seen",
            dent * 1e3, margin * 1e3)
        + close;
  }

  private static String below(PlaceSearch p) {
    return Double.isNaN(p.tooSmall())
        ? "; no thinner one was asked for"
        : "; " + Cutters.plainMm(p.tooSmall()) + " does not";
  }

  private static String no(PlaceSearch p, Optional<Sizing.Cure> cure) {
    String upTo = "No gate up to " + Cutters.plainMm(p.widest()) + " can do it here";
    Optional<RunOutcome> widest = p.atWidest();
    if (widest.isEmpty()) {
      return upTo + ": the widest gives no result.";
    }
    String left = Quantities.say(" (%.2f mm deep with that)", widest.get().dentHigh() * 1e3);
    return upTo + left + ": " + cure.map(SizeWords::cure).orElseGet(() -> blame(widest.get()));
  }

  private static String cure(Sizing.Cure c) {
    String starves =
        Quantities.say(
            "the neck at %s, %s wide, starves what lies behind it",
            at(c.neck()), Quantities.mm(c.was()));
    return c.wanted()
        .map(
            w ->
                starves
                    + "; make it "
                    + Cutters.plainMm(w)
                    + " (run with a gate of "
                    + Cutters.plainMm(c.gate())
                    + "), or feed there too (not run).")
        .orElse(
            starves
                + ", and twice that width doesn't do either: feed behind it too (not run), or make"
                + " the part thinner there.");
  }

  private static String blame(RunOutcome o) {
    if (o.blamed().isEmpty()) {
      return "nothing is cut off, and yet the part dents.";
    }
    Constriction c = o.blamed().get();
    return switch (c.kind()) {
      case NECK -> "the neck at " + at(c.place()) + " starves what lies behind it.";
      case TOO_THICK ->
          "the part itself is no thicker where it closes, at "
              + at(c.place())
              + ": feed it where it is thickest, or make it thinner there.";
      case SPRUE -> "the sprue sets first, and none wider is accepted.";
      case DRY_SPRUE -> "the sprue runs dry: make it longer or top it up.";
      case RUNNER -> "the runner sets first: make it shorter or wider than the gate.";
      case GATE -> "the gate still sets first: accept a wider one, or feed it elsewhere.";
    };
  }

  static String verdict(LoadedCase base, List<Sizing.Place> places, int best) {
    if (best < 0) {
      return places.size() == 1
          ? places.get(0).words()
          : "No gate can do it at any of "
              + places.size()
              + " places. "
              + capital(places.get(0).label())
              + ": "
              + places.get(0).words();
    }
    Sizing.Place p = places.get(best);
    double now = ((FeedSystem.Declared) base.setup().feed()).gate().section().width();
    String where =
        p.label().equals("as it is") ? "" : capital(p.label()) + ", at " + at(p.at()) + ": ";
    String from = where.isEmpty() ? " The gate is " + Cutters.plainMm(now) + " now." : "";
    return where + p.words() + from;
  }

  static String at(Vec3 p) {
    return Quantities.say(
            "x = %.0f, y = %.0f, z = %.0f mm",
            p.x() * 1e3 + 0.0, p.y() * 1e3 + 0.0, p.z() * 1e3 + 0.0)
        .replace("-0,", "0,")
        .replace("-0 mm", "0 mm");
  }

  private static String capital(String s) {
    return Character.toUpperCase(s.charAt(0)) + s.substring(1);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.finding.Opening;
import gelfront.mesh.Vec3;
import gelfront.setup.FeedSystem;
import gelfront.setup.LoadedCase;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** A sizing in plain words: only what was run is claimed. */
final class SizeWords {
  private final Units units;

  SizeWords(Units units) {
    this.units = units;
  }

  /** What came of one place. */
  String place(LoadedCase base, PlaceSearch p, SizeChoices run, Optional<Sizing.Cure> cure) {
    double visible = base.setup().visibleDent();
    List<Sizing.Choice> choices = run.choices();
    Optional<Sizing.Choice> holds =
        choices.stream()
            .filter(c -> c.holds(visible))
            .min(Comparator.comparingDouble(Sizing.Choice::gate));
    if (holds.isEmpty() && Double.isNaN(p.does())) {
      return no(p, choices, cure, visible);
    }
    if (holds.isEmpty()) {
      return "A gate of "
          + units.plain(p.does())
          + " does at level quick, but not at level normal, nor do the next cutter sizes: too close"
          + " to call; "
          + tooClose(choices, visible);
    }
    return "A gate of "
        + holds.get().size().in(units)
        + " does"
        + beside(base, holds.get())
        + below(p, run.near(), holds.get().gate())
        + "."
        + run.tooWide().stream().map(SizeWords::noCutter).collect(Collectors.joining());
  }

  private String tooClose(List<Sizing.Choice> choices, double visible) {
    return choices.stream()
        .flatMap(c -> c.normal().outcome().stream())
        .filter(o -> o.goesOval(visible))
        .map(RunOutcome::opening)
        .max(Comparator.comparingDouble(Opening::shutUntil))
        .map(o -> openLater(o) + ".")
        .orElse("take the next size up and check it.");
  }

  /** What an oval asks for. */
  static String openLater(Opening o) {
    return Quantities.say(
        "opened after %.0f s the part goes oval, which no gate mends: open later, from %.0f s on",
        o.at(), Math.ceil(o.shutUntil()));
  }

  /** "0.31 mm deep", or "0.75 mm oval" where that is worse. */
  String worst(RunOutcome o) {
    String kind = o.opening().oval() > o.dentHigh() ? "oval" : "deep";
    return units.length(o.defect(), 2) + " " + kind;
  }

  private String beside(LoadedCase base, Sizing.Choice c) {
    double now = ((FeedSystem.Declared) base.setup().feed()).sprue().innerDiameter();
    RunOutcome came = c.normal().outcome().orElseThrow();
    String sprue =
        Math.abs(c.sprue() - now) < 1e-6
            ? ", with the sprue of " + units.plain(now) + " as it is"
            : ", with a sprue of " + units.plain(c.sprue());
    double margin = base.setup().visibleDent() - came.defect();
    String close = margin < PlaceSearch.CLOSE * base.setup().visibleDent() ? ", a close call" : "";
    return sprue
        + ": the deepest dent stays under "
        + units.length(came.dentHigh(), 2)
        + opened(came.opening())
        + (told(margin) ? ", " + units.length(margin, 2) + " less" : ", hardly less")
        + " than is seen"
        + close;
  }

  /** Whether a length is more than nothing where it is told. */
  private boolean told(double length) {
    return !units.length(length, 2).equals(units.length(0, 2));
  }

  private String opened(Opening o) {
    if (!o.byClock()) {
      return "";
    }
    String how = o.oval() > 0 ? "oval by less than " + units.length(o.oval() + 1e-5, 2) : "round";
    return Quantities.say(" and the part, opened after %.0f s, ", o.at())
        + (o.oval() > 0 ? "goes " : "stays ")
        + how;
  }

  private static String noCutter(Cutters kind) {
    return " No cutter in "
        + (kind == Cutters.MM ? "mm" : "inch")
        + " is wide enough and still within the case's limits.";
  }

  /**
   * What is known of thinner gates.
   *
   * @param near that were run at level normal, too, rising
   */
  private String below(PlaceSearch p, List<Sizing.Point> near, double gate) {
    OptionalDouble tooSmall =
        DoubleStream.concat(
                DoubleStream.of(p.tooSmall()), near.stream().mapToDouble(Sizing.Point::gate))
            .filter(g -> g < gate - 1e-9)
            .max();
    if (tooSmall.isPresent()) {
      return "; " + units.plain(tooSmall.getAsDouble()) + " does not";
    }
    return p.points().stream().anyMatch(q -> q.gate() < gate - 1e-9)
        ? "; thinner ones were run at level quick only"
        : "; no thinner one was asked for";
  }

  private String no(
      PlaceSearch p, List<Sizing.Choice> near, Optional<Sizing.Cure> cure, double visible) {
    String upTo =
        p.points().size() == 1
            ? "A gate of " + units.plain(p.widest()) + " doesn't do it here"
            : Quantities.say(
                "None of %d gates up to %s does it here",
                p.points().size(), units.plain(p.widest()));
    Optional<Sizing.Point> best = p.best();
    if (best.isEmpty()) {
      return upTo + ": none gives a result (" + p.points().get(0).ran().error() + ").";
    }
    RunOutcome left = best.get().ran().outcome().orElseThrow();
    String depth =
        Quantities.say(
            " (%s at the least, with %s%s)",
            worst(left),
            units.plain(best.get().gate()),
            near.isEmpty() ? "" : "; at level normal " + depth(near.get(0)));
    String why =
        p.openedTooEarly()
            .map(o -> openLater(o) + leftShut(p, left, visible))
            .orElseGet(() -> cure.map(c -> cure(c, visible)).orElseGet(() -> blame(left)));
    return upTo + depth + ": " + why;
  }

  /** What the gates do to a part that is left in the mould. */
  private String leftShut(PlaceSearch p, RunOutcome left, double visible) {
    return p.points().stream()
        .filter(g -> g.ran().outcome().filter(o -> o.dentHigh() < visible).isPresent())
        .findFirst()
        .map(g -> "; left shut, " + units.plain(g.gate()) + " leaves no dent: size it again then.")
        .orElseGet(() -> apart(left, visible));
  }

  /** What else is wrong than the opening. */
  String apart(RunOutcome o, double visible) {
    return o.dentHigh() < visible ? "." : "; apart from that, " + blame(o);
  }

  private String depth(Sizing.Choice c) {
    return c.normal().outcome().map(o -> worst(o) + ", a close call").orElse("no result");
  }

  private String second(Sizing.Second s, double visible) {
    String gate =
        Quantities.say(
            "a second gate, %s wide, at %s beside one of %s",
            units.plain(s.gate()), at(s.at()), units.plain(s.first()));
    return gate
        + s.normal()
            .map(n -> left(n, visible))
            .orElse(
                s.ran()
                    .outcome()
                    .map(o -> " leaves " + units.length(o.defect(), 2) + " at level quick")
                    .orElse(" gives no result"));
  }

  /** What a change that does at level quick leaves at level normal. */
  private String left(Ran normal, double visible) {
    return normal
        .outcome()
        .map(
            o ->
                " leaves "
                    + units.length(o.defect(), 2)
                    + " at level normal, which "
                    + (o.clean(visible) ? "isn't seen" : "may be seen: too close to call"))
        .orElse(" gives no result at level normal");
  }

  String cure(Sizing.Cure c, double visible) {
    String starves =
        Quantities.say(
            "the neck at %s, %s wide, starves what lies behind it",
            at(c.neck()), units.size(c.was()));
    return c.wanted()
        .map(
            w ->
                starves
                    + "; make it "
                    + units.plain(w)
                    + ", which with a gate of "
                    + units.plain(c.gate())
                    + c.normal().map(n -> left(n, visible)).orElse(" does at level quick")
                    + c.second().map(s -> "; " + second(s, visible)).orElse("")
                    + ".")
        .orElse(
            starves
                + c.ran()
                    .outcome()
                    .filter(o -> o.goesOval(visible))
                    .map(o -> "; with twice that width, " + openLater(o.opening()))
                    .orElse(", nor does twice that width do at level quick")
                + c.second().map(s -> "; " + second(s, visible)).orElse("")
                + "; or make the part thinner behind it.");
  }

  String blame(RunOutcome o) {
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

  String verdict(LoadedCase base, List<Sizing.Place> places, int best) {
    if (best < 0) {
      return places.size() == 1
          ? places.get(0).told().in(units)
          : "No gate can do it at any of "
              + places.size()
              + " places. "
              + capital(places.get(0).label())
              + ": "
              + places.get(0).told().in(units);
    }
    Sizing.Place p = places.get(best);
    double now = ((FeedSystem.Declared) base.setup().feed()).gate().section().width();
    String where = p.elsewhere() ? capital(p.label()) + ", at " + at(p.at()) + ": " : "";
    String from = where.isEmpty() ? " The gate is " + units.plain(now) + " now." : "";
    return where + p.told().in(units) + from;
  }

  String at(Vec3 p) {
    return at(units, p);
  }

  /** A place in a sentence. */
  static String at(Units units, Vec3 p) {
    return units.lengths("x = %s, y = %s, z = %s", 0, p.x(), p.y(), p.z());
  }

  private static String capital(String s) {
    return Character.toUpperCase(s.charAt(0)) + s.substring(1);
  }
}

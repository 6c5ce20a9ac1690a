// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.base.Quantities;
import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.finding.Dent;
import gelfront.finding.HotSpot;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Pockets in plain words: what each is, what follows for the part, what to change. */
final class Words {
  private final Units units;

  Words(Units units) {
    this.units = units;
  }

  String sentence(Pocket p) {
    StringBuilder s = new StringBuilder();
    s.append(
        Quantities.say(
            "%s; behind it, round %s%s, %s of plastisol is still liquid and sets"
                + " only after %.0f s.",
            capital(closes(p)), at(p.centre()), cavity(p), Quantities.ml(p.volume()), p.lastSet()));
    s.append(' ').append(dent(p.severity(), p.dents().get(0)));
    s.append(margin(p));
    for (HotSpot h : p.spots().subList(1, p.spots().size())) {
      s.append(
          Quantities.say(
              " At %.0f s %s parts the place round %s from the rest.",
              h.separatedAt(), name(h.neck()), at(h.place())));
    }
    return s.toString();
  }

  private String dent(Severity severity, Dent d) {
    return switch (severity) {
      case WILL_DENT ->
          Quantities.say("A dent %s is to be expected near %s.", depth(d), at(d.place()));
      case MAY_DENT -> Quantities.say("A dent %s is possible near %s.", depth(d), at(d.place()));
      case CLEAN ->
          Quantities.say(
              "It shrinks evenly enough: a local dent stays under %s.", units.size(d.depthHigh()));
    };
  }

  /** How much longer the way in would have had to stay open; nothing where no dent is seen. */
  private static String margin(Pocket p) {
    if (p.severity() == Severity.CLEAN) {
      return "";
    }
    String until =
        Quantities.say("%.0f s longer, until %.0f s", Math.max(1, p.margin()), p.openUntil());
    return p.constriction().kind() == Constriction.Kind.DRY_SPRUE
        ? " For no dent to be seen, liquid would have had to stand in the sprue " + until + "."
        : " For no dent to be seen, it would have had to stay open " + until + ".";
  }

  /** The worse of dents and oval first. */
  String verdict(Severity worst, List<Pocket> pockets, Opening opening) {
    String dents = verdict(worst, pockets);
    if (opening.severity() == Severity.CLEAN) {
      return dents;
    }
    String oval = new OpeningWords(units).verdict(opening);
    return opening.severity().compareTo(worst) >= 0
        ? oval + " Left shut: " + lower(dents)
        : dents + " " + oval;
  }

  private String verdict(Severity worst, List<Pocket> pockets) {
    if (pockets.isEmpty()) {
      return "No dent: every place stays fed until it has set.";
    }
    Pocket p = pockets.get(0);
    Dent d = p.dents().get(0);
    return switch (worst) {
      case WILL_DENT ->
          Quantities.say(
              "This part will dent: %s near %s%s, because %s.",
              depth(d), at(d.place()), cavity(p), closes(p));
      case MAY_DENT ->
          Quantities.say(
              "This part may dent: %s near %s%s, because %s.",
              depth(d), at(d.place()), cavity(p), closes(p));
      case CLEAN ->
          Quantities.say(
              "No visible dent: the part shrinks evenly, the deepest local dent stays under %s.",
              units.size(d.depthHigh()));
    };
  }

  String explanation(Severity worst, List<Pocket> pockets) {
    if (pockets.isEmpty()) {
      return "Hot plastisol can reach every place through gate and sprue until it has set.";
    }
    Pocket p = pockets.get(0);
    String first =
        Quantities.say(
            "%s, but the plastisol behind it stays liquid until %.0f s."
                + " Between %s and %s of shrinkage can't be fed any more.",
            capital(sets(p)),
            p.lastSet(),
            Quantities.ml(p.unfedLow()),
            Quantities.ml(p.unfedHigh()));
    return worst == Severity.CLEAN
        ? first + " It spreads over the whole part, which comes out a little smaller, not dented."
        : first + " Most of it comes from the softest, thickest places.";
  }

  /** Directions, best first; sizes are for whoever runs the changed case. */
  List<String> advice(List<Pocket> pockets, Opening opening) {
    List<String> shut =
        opening.severity() == Severity.CLEAN ? List.of() : List.of(OpeningWords.advice(opening));
    return Stream.concat(shut.stream(), advice(pockets).stream()).toList();
  }

  private List<String> advice(List<Pocket> pockets) {
    List<String> advice = new ArrayList<>();
    List<Pocket> dented = pockets.stream().filter(p -> p.severity() != Severity.CLEAN).toList();
    dented.forEach(p -> advise(p, advice));
    if (!advice.isEmpty()) {
      boolean sprue =
          dented.stream().allMatch(p -> p.constriction().kind() == Constriction.Kind.SPRUE);
      advice.add(
          sprue // no top-up gets through one that has set
              ? "Hold the plunger until the sprue has set: it costs nothing to try."
              : "Hold the plunger until the gate has set and top up the sprue: it costs nothing to"
                  + " try.");
      advice.add(
          "Shoot a little cooler, as long as thin places still fill: less heat, less shrinkage.");
    }
    return advice.stream().distinct().toList();
  }

  private void advise(Pocket p, List<String> advice) {
    Constriction c = p.constriction();
    switch (c.kind()) {
      case GATE -> {
        advice.add(
            Quantities.say(
                "Open the gate (now %s) a little more and run the case again; the first millimetres"
                    + " count most.",
                units.size(c.width())));
        advice.add(
            Quantities.say(
                "Or move the gate to the thick place round %s that sets last.",
                at(p.centre()) + cavity(p)));
      }
      case SPRUE ->
          advice.add(
              Quantities.say(
                  "Make the sprue wider or longer: it sets before the part (%s wide).",
                  units.size(c.width())));
      case DRY_SPRUE ->
          advice.add(
              "Top up the sprue before it runs dry, or make it longer or wider: air has come to its"
                  + " end.");
      case TOO_THICK -> {
        advice.add(
            Quantities.say(
                "Make the part thinner round %s, or hollow it with a core: no gate can be wider than the"
                    + " part is where it closes (%s).",
                at(p.centre()) + cavity(p), units.size(c.width())));
        advice.add(
            Quantities.say(
                "Or feed it right at the thickest place, round %s.", at(p.centre()) + cavity(p)));
      }
      case RUNNER ->
          advice.add(Quantities.say("Make the runner thicker (now %s).", units.size(c.width())));
      case NECK -> {
        advice.add(
            Quantities.say(
                "Make the neck at %s thicker (now %s): it starves what lies behind.",
                at(c.place()), units.size(c.width())));
        advice.add(
            Quantities.say(
                "Or feed the part behind the neck too, round %s.", at(p.centre()) + cavity(p)));
      }
    }
    for (HotSpot h : p.spots().subList(1, p.spots().size())) {
      advice.add(
          Quantities.say(
              "Thicken the neck at %s (now %s), or feed on both sides of it: it parts the place round"
                  + " %s from the rest at %.0f s.",
              at(h.neck().place()), units.size(h.neck().width()), at(h.place()), h.separatedAt()));
    }
  }

  /** What cuts a pocket off, and when. */
  private String closes(Pocket p) {
    return isDry(p) ? dry(p) : Quantities.say("%s closes after %.1f s", cause(p), p.cutOff());
  }

  private String sets(Pocket p) {
    String width = units.size(p.constriction().width());
    return isDry(p)
        ? dry(p)
        : Quantities.say("%s (%s wide) sets after %.1f s", cause(p), width, p.cutOff());
  }

  private static boolean isDry(Pocket p) {
    return p.constriction().kind() == Constriction.Kind.DRY_SPRUE;
  }

  private static String dry(Pocket p) {
    return Quantities.say("the sprue has run dry by %.1f s", p.cutOff());
  }

  private String cause(Pocket p) {
    return name(p.constriction());
  }

  private String name(Constriction c) {
    return switch (c.kind()) {
      case GATE -> "the gate";
      case RUNNER -> "the runner";
      case SPRUE -> "the sprue";
      case DRY_SPRUE -> "the sprue that has run dry";
      case NECK -> "the neck at " + at(c.place());
      case TOO_THICK -> "the part itself at " + at(c.place());
    };
  }

  /** The cavities of a pocket after its place, where there are several: " in cavity 2". */
  private static String cavity(Pocket p) {
    List<String> numbers = p.cavities().stream().map(String::valueOf).toList();
    String word = numbers.size() == 1 ? "cavity " : "cavities ";
    return numbers.isEmpty() ? "" : " in " + word + String.join(" and ", numbers);
  }

  private String depth(Dent d) {
    return units.lengths("%s to %s", 2, d.depthLow(), d.depthHigh()) + " deep";
  }

  private String at(Vec3 p) {
    return place(units, p);
  }

  /** A place in a sentence. */
  static String place(Units units, Vec3 p) {
    return units.lengths("x %s, y %s, z %s", 0, p.x(), p.y(), p.z());
  }

  private static String lower(String s) {
    return Character.toLowerCase(s.charAt(0)) + s.substring(1);
  }

  private static String capital(String s) {
    return Character.toUpperCase(s.charAt(0)) + s.substring(1);
  }
}

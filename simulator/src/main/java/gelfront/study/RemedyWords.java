// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.Ran;
import gelfront.answer.Remedies.Line;
import gelfront.answer.RunOutcome;
import gelfront.base.Quantities;
import gelfront.base.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What remedies come to in words: nothing that was not run. */
final class RemedyWords {
  private final Units units;

  RemedyWords(Units units) {
    this.units = units;
  }

  String nothingToDo(Ran before, Optional<Ran> normal, double visible) {
    if (before.outcome().isEmpty()) {
      return "The case as it is gives no result: " + before.error();
    }
    boolean holds = normal.filter(n -> Line.cures(n, visible)).isPresent();
    if (!Line.cures(before, visible)) {
      return "At level quick "
          + dentAndOval(before)
          + " is left, at level normal, which is the finer, "
          + normal.map(this::dentAndOval).orElse("an unknown one")
          + ", and that isn't seen: there is nothing to cure, but little to spare.";
    }
    return "As it is, the dent stays under "
        + mm(before)
        + (oval(before) > 0
            ? " and the oval under " + mm(oval(before)) + "; neither is seen at level quick"
            : " and isn't seen at level quick")
        + (holds
            ? ", nor at level normal: there is nothing to cure."
            : ", but at level normal it is "
                + normal.map(this::dentAndOval).orElse("unknown")
                + ": too close to call; run it with --level normal.");
  }

  String verdict(
      Ran before, Optional<Line> chosen, List<Line> lines, List<Line> pairs, double visible) {
    if (chosen.isPresent()) {
      Line c = chosen.get();
      return capital(c.what().in(units))
          + (byClock(before) ? ": " : ": the deepest dent falls ")
          + fall(before, c.best())
          + (byClock(before) ? ", and nothing is seen" : " and isn't seen")
          + " any more"
          + (close(c.best(), visible) ? ", a close call" : "")
          + " (run at level normal)."
          + cost(before, c.best());
    }
    Optional<Line> best =
        Stream.concat(lines.stream(), pairs.stream())
            .filter(l -> l.doubt().isEmpty() && l.normal().flatMap(Ran::outcome).isPresent())
            .min(Comparator.comparingDouble(l -> l.best().outcome().orElseThrow().defect()));
    return "Nothing that was run cures it. gelfront size looks for a gate or a neck that does. "
        + best.map(
                l ->
                    "The most comes of this: "
                        + l.what().in(units)
                        + ", "
                        + fall(before, l.best())
                        + " (run at level normal)."
                        + cost(before, l.best()))
            .orElse("None of it could be confirmed.");
  }

  private static boolean close(Ran ran, double visible) {
    double seen = (1 - PlaceSearch.CLOSE) * visible;
    return ran.outcome().filter(o -> o.defect() > seen).isPresent();
  }

  private static String cost(Ran before, Ran after) {
    if (before.outcome().isEmpty() || after.outcome().isEmpty()) {
      return "";
    }
    RunOutcome was = before.outcome().get();
    RunOutcome is = after.outcome().get();
    double longer = is.cycle() - was.cycle();
    double trim = (is.feedVolume() - was.feedVolume()) * 1e6;
    String time =
        Math.abs(longer) < 1
            ? "It opens as soon as before"
            : Quantities.say(
                "It opens %.0f s %s", Math.abs(longer), longer > 0 ? "later" : "sooner");
    String more =
        Math.abs(trim) < 0.05
            ? ", with as much to trim."
            : Quantities.say(
                ", with %.1f ml %s to trim.", Math.abs(trim), trim > 0 ? "more" : "less");
    return " " + time + more;
  }

  private static boolean byClock(Ran ran) {
    return ran.outcome().filter(o -> o.opening().byClock()).isPresent();
  }

  /** "from 0.60 mm to 0.10 mm": of the dent; where a clock opens the mould, of the oval, too. */
  private String fall(Ran before, Ran after) {
    return byClock(before)
        ? "from " + dentAndOval(before) + " to " + dentAndOval(after)
        : "from " + mm(before) + " to " + mm(after);
  }

  private String dentAndOval(Ran ran) {
    return oval(ran) > 0
        ? "a dent of " + mm(ran) + " and an oval of " + mm(oval(ran))
        : "a dent of " + mm(ran);
  }

  private static double oval(Ran ran) {
    return ran.outcome().map(o -> o.opening().oval()).orElse(0.0);
  }

  private String mm(Ran ran) {
    return ran.outcome().map(o -> mm(o.dentHigh())).orElse("an unknown depth");
  }

  private String mm(double metres) {
    return units.length(metres, 2);
  }

  private static String capital(String s) {
    return Character.toUpperCase(s.charAt(0)) + s.substring(1);
  }
}

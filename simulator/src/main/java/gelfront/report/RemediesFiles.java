// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.Ran;
import gelfront.answer.Remedies;
import gelfront.answer.RunOutcome;
import gelfront.base.Quantities;
import gelfront.base.Units;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Remedies as JSON, and cells of their table. */
public final class RemediesFiles {
  /** Metres of an oval below which it is round. */
  private static final double LEAST = 5e-6;

  private RemediesFiles() {}

  /** {@code gelfront remedies 1}. */
  public static String json(Remedies r) {
    ObjectNode n = Answers.open("gelfront remedies 1");
    n.put("name", r.name());
    n.put("level", r.level());
    n.put("verdict", r.verdict());
    Answers.number(n, "visible_dent_mm", r.visible() * 1e3);
    Answers.put(n.putObject("before"), r.before());
    r.beforeNormal().ifPresent(b -> Answers.put(n.putObject("before_normal"), b));
    r.chosen().ifPresent(c -> put(n.putObject("answer"), r, c));
    lines(n.putArray("remedies"), r, r.lines());
    lines(n.putArray("pairs"), r, r.pairs());
    ArrayNode left = n.putArray("not_run");
    r.notRun().forEach(l -> left.addObject().put("what", l.label()).put("why", l.why()));
    ArrayNode cautions = n.putArray("cautions");
    Cautions.ALL.forEach(cautions::add);
    return Answers.text(n);
  }

  private static void lines(ArrayNode to, Remedies r, List<Remedies.Line> lines) {
    lines.forEach(l -> put(to.addObject(), r, l));
  }

  private static void put(ObjectNode n, Remedies r, Remedies.Line l) {
    n.put("what", l.label());
    n.put("effort", l.effort().name().toLowerCase(Locale.ROOT));
    n.put("caution", l.caution());
    n.put("not_recommended_because", l.doubt());
    n.put("cures", Remedies.Line.cures(l.best(), r.visible()));
    Answers.put(n.putObject("run"), l.quick());
    l.normal().ifPresent(b -> Answers.put(n.putObject("run_normal"), b));
  }

  /** Heads of the cells below. */
  public static final List<String> HEADS =
      List.of("what", "dent", "at normal", "opens", "to trim", "push on halves", "so");

  /** A line of the table; words as people read them, millimetres and °C. */
  public static List<String> cells(Remedies r, Remedies.Line l) {
    return cells(r, l, Units.METRIC);
  }

  /** As above, in other units. */
  public static List<String> cells(Remedies r, Remedies.Line l, Units units) {
    String what = l.what().in(units);
    if (l.quick().outcome().isEmpty()) {
      return List.of(what, "no result", "", "", "", "", l.quick().error());
    }
    RunOutcome o = l.quick().outcome().get();
    RunOutcome was = r.before().outcome().orElseThrow();
    return List.of(
        what,
        left(l.quick(), units),
        l.normal().map(n -> left(n, units)).orElse(""),
        change(o.cycle() - was.cycle(), "%+.0f s", 0.5),
        change((o.feedVolume() - was.feedVolume()) * 1e6, "%+.1f ml", 0.05),
        force(o.pressing()),
        so(r, l));
  }

  /** The case as it is, as such a line. */
  public static List<String> before(Remedies r) {
    RunOutcome o = r.before().outcome().orElseThrow();
    return List.of(
        "as it is",
        left(r.before(), Units.METRIC),
        r.beforeNormal().map(n -> left(n, Units.METRIC)).orElse(""),
        "at " + Say.time(o.cycle()),
        Quantities.say("%.1f ml", o.feedVolume() * 1e6),
        force(o.pressing()),
        o.pressing().margin().isEmpty() ? "the case states no clamping_force" : "");
  }

  /** What a run leaves: "0.31 mm" deep; where the part goes oval, "0.31 mm, oval 0.75 mm". */
  public static String left(Ran ran, Units units) {
    return ran.outcome().map(o -> left(o, units)).orElse("no result");
  }

  private static String left(RunOutcome o, Units units) {
    String dent = units.length(o.dentHigh(), 2);
    double oval = o.opening().oval();
    return oval < LEAST ? dent : dent + ", oval " + units.length(oval, 2);
  }

  private static String change(double by, String format, double least) {
    return Math.abs(by) < least ? "same" : Quantities.say(format, by);
  }

  private static String force(RunOutcome.Pressing p) {
    String when = p.mostWhileFilling() ? " as it fills" : "";
    String force = Quantities.say("%.0f N%s", p.force(), when);
    if (p.margin().isEmpty()) {
      return force;
    }
    double left = p.margin().getAsDouble();
    return left < 0
        ? force + ", OPENS the mould"
        : force + Quantities.say(", %.0f N to spare", left);
  }

  private static String so(Remedies r, Remedies.Line l) {
    Optional<RunOutcome> normal = l.normal().flatMap(n -> r.beforeNormal()).flatMap(Ran::outcome);
    RunOutcome was = normal.or(() -> r.before().outcome()).orElseThrow();
    String words = so(was, l.best().outcome(), r.visible());
    return l.doubt().isEmpty() ? words : words + ", but " + l.doubt();
  }

  private static String so(RunOutcome was, Optional<RunOutcome> came, double visible) {
    if (came.isEmpty()) {
      return "gives no result at level normal";
    }
    RunOutcome is = came.get();
    if (is.clean(visible)) {
      return "cures";
    }
    boolean both = was.dentHigh() >= visible && was.goesOval(visible);
    if (both && is.goesOval(visible) != (is.dentHigh() >= visible)) {
      return is.goesOval(visible)
          ? "takes the dent away, not the oval"
          : "takes the oval away, not the dent";
    }
    return is.defect() < 0.8 * was.defect()
        ? "helps"
        : is.defect() > 1.25 * was.defect() ? "makes it worse" : "changes little";
  }
}

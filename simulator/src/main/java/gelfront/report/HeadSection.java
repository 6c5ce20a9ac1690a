// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.VoxelDoubt;
import gelfront.finding.Dent;
import gelfront.finding.Findings;
import gelfront.finding.Opening;
import gelfront.finding.Severity;
import gelfront.result.StoredRun;
import java.util.Comparator;
import java.util.Optional;

/** The verdict in one sentence, the figures behind it, and what to change. */
final class HeadSection {
  private HeadSection() {}

  static void write(Html h, StoredRun run, Optional<VoxelDoubt> voxels) {
    Findings f = run.findings();
    h.open("div", "class", "bar").element("b", run.name());
    h.element("span", "gelfront " + run.provenance().version()).close();
    h.element("div", stamp(f), "class", "stamp " + tone(f));
    h.element("h1", f.verdict()).element("p", f.explanation());
    voxels.ifPresent(v -> h.element("p", String.join(" ", VoxelWords.of(v)), "class", "voxels"));
    facts(h, f);
    opening(h, f.opening());
    advice(h, f);
  }

  private static String stamp(Findings f) {
    return f.empty() > 0 ? "✗ " + Say.outcome(f) : mark(f.severity());
  }

  private static String tone(Findings f) {
    return Say.tone(f.empty() > 0 ? Severity.WILL_DENT : f.severity());
  }

  private static void opening(Html h, Opening o) {
    if (o.sentence().isEmpty()) {
      return;
    }
    h.open("section").element("h2", "Opened before it is firm").element("p", o.sentence());
    if (!o.sign().isEmpty()) {
      h.open("p", "class", "sign").element("b", "At the bench: ").text(o.sign()).close();
    }
    h.element("p", "Dents, here and below, are those of a part that stays in the mould.").close();
  }

  private static String mark(Severity s) {
    return switch (s) {
          case CLEAN -> "✓ ";
          case MAY_DENT -> "? ";
          case WILL_DENT -> "✗ ";
        }
        + Say.severity(s);
  }

  private static void facts(Html h, Findings f) {
    h.open("div", "class", "facts");
    f.pockets().stream()
        .flatMap(p -> p.dents().stream())
        .max(Comparator.comparingDouble(Dent::depthHigh))
        .ifPresent(d -> deepest(h, d));
    if (f.opening().byClock()) {
      String when = "oval, opened after " + Say.time(f.opening().at());
      fact(h, Say.fixed(f.opening().oval() * 1e3, 2) + " mm", when);
    }
    fact(h, Say.time(f.gateSets()), "gate closes");
    fact(h, Say.time(f.partSets()), "last place sets");
    fact(h, Say.time(f.firmAt()), "firm enough to open");
    fact(h, Say.fixed(f.linearShrinkage() * 100, 1) + " %", "smaller in length than the cavity");
    h.close();
  }

  private static void deepest(Html h, Dent d) {
    fact(h, Say.depth(d), "deepest dent (" + Say.depthInch(d.depthLow(), d.depthHigh()) + ")");
  }

  private static void fact(Html h, String value, String what) {
    h.open("div").element("b", value).element("span", what).close();
  }

  private static void advice(Html h, Findings f) {
    if (f.advice().isEmpty()) {
      return;
    }
    h.open("section").element("h2", "What to change, best first").open("ol", "class", "todo");
    f.advice().forEach(a -> h.element("li", a));
    h.close();
    h.element("p", "These are directions, not sizes: change the case file and run it again.");
    h.close();
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.DentMap;
import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;

/** A map as a page: two drawings, and all its runs as tables. */
public final class MapPage {
  private MapPage() {}

  /** The page; loads nothing. */
  public static String of(DentMap m) {
    return AnswerPage.of(
        m.name() + ": " + m.x().name() + " and " + m.y().name(), h -> content(h, m));
  }

  private static void content(Html h, DentMap m) {
    h.element("p", summary(m));
    h.element(
        "p",
        "The red line is where a dent of "
            + Say.fixed(m.visible() * 1e3, 2)
            + " mm begins. Full dots: a run whose dent isn't seen. Open dots: one whose dent may be"
            + " seen. Crosses: no result. The ring is the case as it is. White lines join like"
            + " values, those marked on the scale. Between the dots nothing was"
            + " calculated; it is drawn as a smooth surface. Calculated at level "
            + m.level()
            + ".");
    h.open("section").element("h2", "Deepest dent").open("figure");
    new HeatMap(m, o -> o.dentHigh() * 1e3).draw(h, "deepest dent, high bound, mm");
    h.close();
    table(h, m, "mm", o -> Say.fixed(o.dentHigh() * 1e3, 2));
    h.close();
    h.open("section").element("h2", "Time to open the mould").open("figure");
    new HeatMap(m, RunOutcome::cycle).draw(h, "seconds until the mould is opened");
    h.close();
    table(h, m, "s", o -> Say.fixed(o.cycle(), 0));
    h.close();
  }

  /** In words. */
  public static String summary(DentMap m) {
    long all = m.runs().stream().mapToLong(r -> r.size()).sum();
    if (m.none()) {
      return "No pair of these values gives a result: "
          + m.runs().get(0).get(0).error()
          + "."
          + now(m);
    }
    String safe =
        m.safe() == 0
            ? "No pair of these values is free of a dent that may be seen."
            : m.safe() == all
                ? "Every pair of these values is free of a dent that may be seen."
                : m.safe()
                    + " of "
                    + all
                    + (m.safe() == 1 ? " runs is" : " runs are")
                    + " free of a dent that may be seen.";
    String runs = m.failed() == 1 ? " run gave no result." : " runs gave no result.";
    String failed = m.failed() == 0 ? "" : " " + m.failed() + runs;
    return safe + failed + now(m);
  }

  private static String now(DentMap m) {
    return m.present()
        .outcome()
        .map(
            o ->
                " As it is: "
                    + Say.depth(o.dentLow(), o.dentHigh())
                    + " deep, "
                    + Say.time(o.cycle())
                    + " to open.")
        .orElse(" As it is, the case gives no result: " + m.present().error());
  }

  private interface Words {
    String of(RunOutcome o);
  }

  private static void table(Html h, DentMap m, String unit, Words words) {
    h.open("div", "class", "scroll").open("table").open("thead").open("tr");
    h.element("th", unit + ": " + m.y().title() + " down, " + m.x().title() + " across");
    for (double v : m.x().values()) {
      h.element("th", plain(v), "scope", "col", "class", "n");
    }
    h.close().close().open("tbody");
    for (int r = m.runs().size() - 1; r >= 0; r--) {
      h.open("tr").element("th", plain(m.y().values().get(r)), "scope", "row");
      for (Ran ran : m.runs().get(r)) {
        String shown = ran.outcome().map(words::of).orElse("no result");
        h.open("td", "class", m.safe(ran) ? "n clean" : "n");
        if (m.safe(ran)) {
          h.element("b", shown);
        } else {
          h.text(shown);
        }
        h.close();
      }
      h.close();
    }
    h.close().close().close();
  }

  private static String plain(double v) {
    return Say.fixed(v, Math.abs(v) < 0.1 ? 6 : 3).replaceFirst("\\.?0+$", "");
  }
}

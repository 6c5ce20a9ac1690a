// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Remedies;
import gelfront.base.Entries;
import java.util.List;
import java.util.Map;

/** Remedies as a page: the answer, then all that was run, least effort first. */
public final class RemediesPage {
  private static final Map<Remedies.Effort, String> EFFORTS =
      Map.of(
          Remedies.Effort.RECIPE, "At the bench, with the mould as it is",
          Remedies.Effort.FILE_WORK, "With file or cutter",
          Remedies.Effort.REDESIGN, "Another design");

  private RemediesPage() {}

  /** The page; loads nothing. */
  public static String of(Remedies r) {
    return AnswerPage.of(r.name() + ": what to change", h -> content(h, r));
  }

  private static void content(Html h, Remedies r) {
    if (!r.lines().isEmpty()) {
      boolean cured = r.chosen().isPresent();
      String words = cured ? "✓ can be cured" : "no cure among these";
      h.element("div", words, "class", cured ? "stamp clean" : "stamp will");
    }
    h.open("p").element("b", r.verdict()).close();
    r.chosen()
        .filter(c -> !c.caution().isEmpty())
        .ifPresent(c -> h.element("p", "Mind: " + c.caution(), "class", "sign"));
    if (r.lines().isEmpty()) {
      return;
    }
    h.element(
        "p",
        "Every line was calculated at level "
            + r.level()
            + "; where there is a figure under \"at normal\", once more, finer. Depths are the high bound of the"
            + " deepest dent; from "
            + Say.fixed(r.visible() * 1e3, 2)
            + " mm on a dent is seen."
            + opened(r)
            + " The push on the halves is that of the hold pressure, or, where the shot was calculated and pushes"
            + " harder before the last fiftieth is in, that of the liquid as it fills."
            + " Depths of like runs differ by a fifth at level quick: trust larger"
            + " differences only. What may not fill, or opens the mould, is never the answer. Two changes to the"
            + " mould at once are tried only where nothing with less work takes the dent away."
            + " Sizes of the steps: common practice, no source.");
    for (Remedies.Effort e : Remedies.Effort.values()) {
      List<Remedies.Line> lines = r.lines().stream().filter(l -> l.effort() == e).toList();
      section(h, r, Entries.of(EFFORTS, e), lines, e == Remedies.Effort.RECIPE);
    }
    section(h, r, "Two at once", r.pairs(), false);
    left(h, r.notRun());
    Cautions.section(h);
  }

  private static String opened(Remedies r) {
    return r.before().outcome().filter(o -> o.opening().byClock()).isEmpty()
        ? ""
        : " Oval: how far the part's flat sides come in where the clock opens the mould on a liquid core;"
            + " it counts as much as a dent.";
  }

  private static void section(
      Html h, Remedies r, String title, List<Remedies.Line> lines, boolean first) {
    if (lines.isEmpty()) {
      return;
    }
    h.open("section").element("h2", title);
    h.open("div", "class", "scroll").open("table").open("thead").open("tr");
    RemediesFiles.HEADS.forEach(c -> h.element("th", c, "scope", "col"));
    h.close().close().open("tbody");
    if (first) {
      row(h, RemediesFiles.before(r), "", "");
    }
    for (Remedies.Line l : lines) {
      boolean cures = Remedies.Line.cures(l.best(), r.visible()) && l.doubt().isEmpty();
      row(h, RemediesFiles.cells(r, l), l.caution(), cures ? "clean" : "");
    }
    h.close().close().close().close();
  }

  private static void row(Html h, List<String> cells, String caution, String tone) {
    h.open("tr").open("td").element("b", cells.get(0));
    if (!caution.isEmpty()) {
      h.empty("br").element("small", caution);
    }
    h.close();
    int last = cells.size() - 1;
    for (String figure : cells.subList(1, last)) {
      h.element("td", figure, "class", (tone + " figure").strip());
    }
    h.element("td", cells.get(last), "class", tone);
    h.close();
  }

  private static void left(Html h, List<Remedies.Left> left) {
    if (!left.isEmpty()) {
      h.open("section").element("h2", "Not run, and why").open("ul");
      left.forEach(l -> h.element("li", l.label() + ": " + l.why() + "."));
      h.close().close();
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import java.util.List;

/** A sizing as a page: the answer, the curve of dent over size, the dimension sheet. */
public final class SizePage {
  private SizePage() {}

  /** The page; loads nothing. */
  public static String of(Sizing s) {
    return AnswerPage.of(s.name() + ": gate, runner and sprue", h -> content(h, s));
  }

  private static void content(Html h, Sizing s) {
    String tone = s.chosen() < 0 ? "will" : "clean";
    h.element("div", s.chosen() < 0 ? "no single gate will do" : "sized", "class", "stamp " + tone);
    h.element("p", s.verdict());
    s.best().ifPresent(p -> sheet(h, s, p));
    for (Sizing.Place p : s.places()) {
      place(h, s, p);
    }
    h.open("section").element("h2", "How this was found");
    h.element(
        "p",
        s.runs()
            + " runs. The search ran at level quick; the answer and what it is rounded up to were"
            + " run again at level normal, and only that counts. A dent is seen from "
            + Say.fixed(s.visible() * 1e3, 2)
            + " mm on; its depth here is the high bound of what the skin allows. Where a clock opens the"
            + " mould, an oval counts as much.");
    h.close();
  }

  private static void sheet(Html h, Sizing s, Sizing.Place p) {
    h.open("section").element("h2", "What to cut");
    h.open("div", "class", "scroll").open("table").open("thead").open("tr").element("th", "");
    for (Sizing.Choice c : p.choices()) {
      h.element("th", c.label(), "scope", "col");
    }
    h.element("th", "", "scope", "col").close().close().open("tbody");
    List<Sizing.SheetLine> first = p.choices().get(0).sheet();
    for (int i = 0; i < first.size(); i++) {
      int line = i;
      h.open("tr").element("th", first.get(i).name(), "scope", "row");
      p.choices().forEach(c -> h.element("td", both(c.sheet().get(line).value())));
      h.element("td", first.get(i).note()).close();
    }
    h.open("tr").element("th", "deepest dent, level normal", "scope", "row");
    p.choices().forEach(c -> h.element("td", dent(c, s.visible())));
    h.element("td", "").close();
    h.open("tr").element("th", "until it is opened", "scope", "row");
    p.choices()
        .forEach(
            c ->
                h.element(
                    "td", c.normal().outcome().map(o -> Say.time(o.cycle())).orElse("no result")));
    h.element("td", "").close();
    h.close().close().close().close();
  }

  private static String dent(Sizing.Choice c, double visible) {
    return c.normal()
        .outcome()
        .map(o -> worst(o) + (c.holds(visible) ? ": does" : ": no"))
        .orElse("no result: " + c.normal().error());
  }

  private static String worst(RunOutcome o) {
    String oval = o.opening().oval() > o.dentHigh() ? " oval" : "";
    return Say.fixed(o.defect() * 1e3, 2) + " mm" + oval;
  }

  private static String both(double metres) {
    return Say.fixed(metres * 1e3, 2) + " mm (" + Say.fixed(metres / 0.0254, 3) + " in)";
  }

  private static void place(Html h, Sizing s, Sizing.Place p) {
    h.open("section").element("h2", "Gate: " + p.label());
    h.element(
        "p",
        "At "
            + Say.place(p.at())
            + " mm, where the part is "
            + Say.mm(p.thickness())
            + " thick. "
            + p.words());
    if (p.curve().stream().filter(c -> c.ran().outcome().isPresent()).count() > 1) {
      h.open("figure");
      new SizeCurve(p, s.visible()).draw(h);
      h.element(
          "figcaption",
          "Deepest dent (or the oval, where that is worse) over the gate's size, high bound: dots at level quick, squares at level normal;"
              + " the band reaches down to the low bound. Below"
              + " the line it isn't seen.");
      h.close();
    }
    table(h, s, p);
    h.close();
  }

  private static void table(Html h, Sizing s, Sizing.Place p) {
    h.open("div", "class", "scroll").open("table").open("thead").open("tr");
    for (String t :
        List.of("gate, mm", "sprue, mm", "level", "dent, mm", "seen", "to open", "blamed")) {
      h.element("th", t, "scope", "col");
    }
    h.close().close().open("tbody");
    for (Sizing.Point c : p.curve()) {
      h.open("tr").element("th", Say.fixed(c.gate() * 1e3, 1), "scope", "row");
      h.element("td", Double.isNaN(c.sprue()) ? "as drawn" : Say.fixed(c.sprue() * 1e3, 1));
      h.element("td", c.level());
      if (c.ran().outcome().isEmpty()) {
        h.element("td", "no result: " + c.ran().error(), "colspan", "4").close();
        continue;
      }
      RunOutcome o = c.ran().outcome().get();
      h.element("td", Say.fixed(o.dentLow() * 1e3, 2) + " to " + Say.fixed(o.dentHigh() * 1e3, 2));
      h.element("td", seen(o, s.visible()));
      h.element("td", Say.time(o.cycle())).element("td", Answers.blamed(o)).close();
    }
    h.close().close().close();
  }

  private static String seen(RunOutcome o, double visible) {
    if (o.goesOval(visible)) {
      return "an oval of " + Say.fixed(o.opening().oval() * 1e3, 2) + " mm";
    }
    return o.clean(visible) ? "no" : "may be";
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Band;
import gelfront.answer.Doubt;
import gelfront.answer.Ran;

/** How sure a verdict is, as a page: all plausible cases, and which unknown decides. */
public final class DoubtPage {
  private static final int WIDTH = 860;
  private static final int LEFT = 230;
  private static final int RIGHT = 30;
  private static final int ROW = 32;
  private static final String INK = "#1d2327";
  private static final String GREY = "#525c62";
  private static final String RULE = "#e4e1d8";
  private static final String RED = "#8f2416";
  private static final String BLUE = "#1f5a7a";

  private DoubtPage() {}

  /** The page; loads nothing. */
  public static String of(Doubt d) {
    return AnswerPage.of(d.name() + ": how sure", h -> content(h, d));
  }

  private static void content(Html h, Doubt d) {
    figures(h, d);
    BandSection.write(h, Band.of(d));
    h.open("section").element("h2", "Not in this doubt");
    h.element(
        "p",
        "How the cavity fills, and the voxels' own error"
            + " beside the anchor. Taken as the case states: "
            + (d.known().isEmpty() ? "nothing of the plastisol" : String.join(", ", d.known()))
            + ".");
    failures(h, d);
    h.close();
    Cautions.section(h);
  }

  /** Sentences, all cases, what decides, and the model's own forks. */
  static void figures(Html h, Doubt d) {
    DoubtWords.of(d).forEach(s -> h.element("p", s));
    h.open("section").element("h2", "Every plausible case");
    h.element(
        "p",
        "Each bar is one case with all unknowns somewhere in their ranges: from the dent if the skin"
            + " gives way in the mildest manner to the dent if it does in the worst. Red line: "
            + DoubtWords.mm(d.visible())
            + ", from where a dent is seen. Calculated at level "
            + d.level()
            + "; "
            + DoubtWords.mm(Math.abs(d.anchor()))
            + (d.anchor() < 0
                ? " taken off, by which the case as it is comes out shallower at level normal."
                : " added, by which the case as it is comes out deeper at level normal."));
    h.open("figure");
    bars(h, d);
    h.close().close();
    h.open("section").element("h2", "What decides");
    h.element(
        "p",
        "How far each unknown goes with the depth ("
            + d.method()
            + "). The thin line is what chance leaves open: where it crosses 0, so few cases don't"
            + " tell.");
    h.open("figure");
    influences(h, d);
    h.close();
    unknowns(h, d);
    h.close();
    forks(h, d);
  }

  /** The model's own ways, apart from what isn't known of the plastisol. */
  private static void forks(Html h, Doubt d) {
    h.open("section").element("h2", "If the model went another way");
    h.element(
        "p",
        "The case as it is, level "
            + d.level()
            + ", with one thing otherwise in the model itself.");
    h.open("div", "class", "scroll").open("table").open("thead").open("tr");
    h.element("th", "model", "scope", "col").element("th", "deepest dent, mm", "scope", "col");
    h.close().close().open("tbody");
    fork(h, "as it is", d.typical());
    d.forks().forEach(f -> fork(h, f.name(), f.ran()));
    fork(h, "no liquid drawn in at all", d.conduction());
    h.close().close().close();
    h.element(
        "p",
        "From the low to the high bound of each dent: the skin gives way in a broad lobe or in a"
            + " narrow one, and the gelled core pulls only until no-flow or on until it is cold.");
    h.close();
  }

  private static void fork(Html h, String name, Ran ran) {
    String depth =
        ran.outcome()
            .map(o -> Say.fixed(o.dentLow() * 1e3, 2) + " to " + Say.fixed(o.dentHigh() * 1e3, 2))
            .orElse("no result: " + ran.error());
    h.open("tr").element("th", name, "scope", "row").element("td", depth).close();
  }

  private static void bars(Html h, Doubt d) {
    double[][] bounds = d.bounds();
    double most =
        Math.max(d.visible() * 1.5, bounds.length == 0 ? 0 : bounds[bounds.length - 1][1]);
    Scale x = Scale.rounded(0, most * 1e3, 6);
    int step = bounds.length > 60 ? 4 : 13;
    int height = 70 + step * bounds.length;
    int left = 40;
    Svg.open(h, WIDTH, height, "dent depth of every plausible case, millimetres");
    for (double v : x.lines()) {
      double p = left + x.share(v) * (WIDTH - RIGHT - left);
      Svg.line(h, p, 8, p, height - 52, RULE, "1.5");
      Svg.text(h, p, height - 28, "middle", Say.tick(v, x.step()), GREY);
    }
    Svg.text(h, WIDTH - RIGHT, height - 4, "end", "deepest dent, mm", GREY);
    for (int i = 0; i < bounds.length; i++) {
      double a = left + x.share(bounds[i][0] * 1e3) * (WIDTH - RIGHT - left);
      double b = left + x.share(bounds[i][1] * 1e3) * (WIDTH - RIGHT - left);
      boolean seen = bounds[i][1] >= d.visible();
      double y = 14.0 + step * i;
      Svg.rect(h, a - 2, y, Math.max(4, b - a + 4), 0.65 * step, seen ? "#c98d2b" : BLUE);
    }
    double p = left + x.share(d.visible() * 1e3) * (WIDTH - RIGHT - left);
    Svg.line(h, p, 4, p, height - 52, RED, "3");
    h.close();
  }

  private static void influences(Html h, Doubt d) {
    int height = 78 + ROW * d.influences().size();
    boolean signed = d.influences().stream().anyMatch(i -> i.value() < 0 || i.low() < 0);
    Scale x = Scale.exact(signed ? -1 : 0, 1, 4);
    Svg.open(h, WIDTH, height, "how far each unknown decides");
    for (double v : x.lines()) {
      Svg.line(h, px(x, v), 4, px(x, v), height - 68, v == 0 ? INK : RULE, "1.5");
      Svg.text(h, px(x, v), height - 44, "middle", Say.tick(v, x.step()), GREY);
    }
    if (signed) {
      Svg.text(h, px(x, -0.5), height - 12, "middle", "more of it: shallower dents", GREY);
      Svg.text(h, px(x, 0.5), height - 12, "middle", "more of it: deeper dents", GREY);
    }
    for (int r = 0; r < d.influences().size(); r++) {
      Doubt.Influence i = d.influences().get(r);
      double y = 8.0 + ROW * r;
      double a = px(x, Math.min(0, i.value()));
      double b = px(x, Math.max(0, i.value()));
      Svg.text(h, LEFT - 10, y + 17, "end", d.unknowns().get(i.unknown()).name(), INK);
      Svg.rect(h, a, y, Math.max(2, b - a), 0.66 * ROW, i.told() ? "#c98d2b" : "#cfcdc6");
      double middle = y + 0.33 * ROW;
      Svg.line(
          h, px(x, clipped(x, i.low())), middle, px(x, clipped(x, i.high())), middle, INK, "2");
    }
    h.close();
  }

  private static double clipped(Scale x, double v) {
    return Math.max(x.low(), Math.min(x.high(), v));
  }

  private static double px(Scale x, double v) {
    return LEFT + x.share(v) * (WIDTH - RIGHT - LEFT);
  }

  private static void unknowns(Html h, Doubt d) {
    h.open("div", "class", "scroll").open("table").open("thead").open("tr");
    for (String head :
        new String[] {"unknown", "low", "likely", "high", "unit", "from", "how to find out"}) {
      h.element("th", head, "scope", "col");
    }
    h.close().close().open("tbody");
    for (Doubt.Influence i : d.influences()) {
      Doubt.Unknown u = d.unknowns().get(i.unknown());
      h.row(
          u.name(),
          DoubtWords.value(u.low()),
          DoubtWords.value(u.likely()),
          DoubtWords.value(u.high()),
          DoubtWords.unit(u.unit()),
          u.source(),
          u.advice());
    }
    h.close().close().close();
  }

  private static void failures(Html h, Doubt d) {
    d.cases().stream()
        .map(Doubt.PlausibleCase::ran)
        .map(Ran::error)
        .filter(e -> !e.isEmpty())
        .distinct()
        .forEach(e -> h.element("p", "No result: " + e));
  }
}

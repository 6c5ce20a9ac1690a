// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Trials;
import java.util.ArrayList;
import java.util.List;

/** What trial shots tell, as a page. */
public final class TrialsPage {
  private static final int WIDTH = 820;
  private static final int LEFT = 250;
  private static final int ROW = 34;
  private static final int TOP = 54;

  private TrialsPage() {}

  /** One file that loads nothing. */
  public static String of(Trials t) {
    return AnswerPage.of(t.name() + ": calibrated by trial shots", h -> content(h, t));
  }

  /** In sentences. */
  public static List<String> words(Trials t) {
    List<String> said = new ArrayList<>();
    Trials.Known k = t.noFlow();
    if (k.told()) {
      said.add(
          "No-flow temperature: "
              + Say.fixed(k.value(), 0)
              + " °C ("
              + Say.fixed(k.low(), 0)
              + " to "
              + Say.fixed(k.high(), 0)
              + " with 90 %; it was "
              + Say.fixed(t.before()[1], 0)
              + ", "
              + Say.fixed(t.before()[0], 0)
              + " to "
              + Say.fixed(t.before()[2], 0)
              + ").");
    } else {
      said.add(
          "These shots don't tell the no-flow temperature: "
              + Say.fixed(k.low(), 0)
              + " to "
              + Say.fixed(k.high(), 0)
              + " °C is left, hardly less than before. Note whether the gate froze before or after"
              + " the plunger was released, for several hold times.");
    }
    said.add(skin(t));
    said.addAll(t.notes());
    return said;
  }

  private static String skin(Trials t) {
    if (t.inseparable()) {
      return "No-flow and the way the skin gives way can't be told from each other by these shots"
          + " (correlation "
          + Say.fixed(t.correlation(), 2)
          + "): a lower no-flow with a milder skin dents as much. Measure depths, or note when the"
          + " gate froze.";
    }
    if (!t.skin().told()) {
      return "How the skin gives way, between its two readings, these shots don't tell.";
    }
    String which = t.skin().value() < 0.5 ? "milder" : "deeper";
    return "The skin gives way nearer to the "
        + which
        + " of its two readings ("
        + Say.fixed(t.skin().value(), 1)
        + " on the way from the milder to the deeper, "
        + Say.fixed(t.skin().low(), 1)
        + " to "
        + Say.fixed(t.skin().high(), 1)
        + " with 90 %).";
  }

  private static void content(Html h, Trials t) {
    words(t).forEach(s -> h.element("p", s));
    h.open("section").element("h2", "No-flow temperature").open("figure");
    band(h, t);
    h.element(
        "figcaption",
        "Grey: what was known before. Blue: what holds it with 90 % now; the ring is its middle.");
    h.close().close();
    h.open("section").element("h2", "Shot by shot");
    h.open("div", "class", "scroll").open("table").open("thead").open("tr");
    for (String head :
        List.of("line", "shot", "seen", "calculated dent, mm", "gate closes, s", "chance")) {
      h.element("th", head, "scope", "col");
    }
    h.close().close().open("tbody");
    t.shots().forEach(s -> row(h, s));
    h.close().close().close();
    h.element(
        "p",
        "Calculated at the no-flow temperature that was found; chance: of what was seen, by the"
            + " model with its own doubt. A dent is seen from "
            + Say.fixed(t.visible() * 1e3, 2)
            + " mm on.");
    h.close();
    h.element("p", "From " + t.log() + ", SHA-256 " + t.hash() + ".");
    Cautions.section(h);
  }

  private static void row(Html h, Trials.Shot s) {
    h.open("tr").element("th", String.valueOf(s.line()), "scope", "row");
    h.element("td", s.what()).element("td", s.seen());
    h.element("td", Say.fixed(s.low() * 1e3, 2) + " to " + Say.fixed(s.high() * 1e3, 2));
    h.element("td", Double.isFinite(s.closes()) ? Say.fixed(s.closes(), 1) : "stays open");
    h.element("td", Say.fixed(s.chance() * 100, 0) + " %").close();
  }

  private static void band(Html h, Trials t) {
    Scale x = Scale.rounded(t.before()[0], t.before()[2], 6);
    int height = TOP + 2 * ROW + 30;
    Svg.open(h, WIDTH, height, "no-flow temperature before and now");
    for (double v : x.lines()) {
      Svg.line(h, px(x, v), TOP - 14, px(x, v), height - 28, "#e4e1d8", "1.5");
      Svg.text(h, px(x, v), height - 6, "middle", Say.tick(v, x.step()), "#4f5a5e");
    }
    bar(h, x, "before", t.before()[0], t.before()[2], t.before()[1], 0);
    bar(h, x, "now", t.noFlow().low(), t.noFlow().high(), t.noFlow().value(), 1);
    Svg.text(h, WIDTH - 30, TOP - 24, "end", "°C", "#4f5a5e");
    h.close();
  }

  private static void bar(
      Html h, Scale x, String name, double low, double high, double middle, int row) {
    int y = TOP + row * ROW;
    String colour = row == 0 ? "#a9a69c" : "#17596b";
    Svg.text(h, LEFT - 20, y + 6, "end", name, "#1f2a2e");
    Svg.line(h, px(x, low), y, px(x, high), y, colour, "10");
    Svg.circle(h, px(x, middle), y, "7", "#ffffff", colour, "3");
  }

  private static double px(Scale x, double v) {
    return LEFT + x.share(v) * (WIDTH - LEFT - 40);
  }
}

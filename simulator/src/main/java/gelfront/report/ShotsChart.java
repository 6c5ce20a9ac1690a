// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.SeriesAnswer;
import gelfront.answer.ShotRow;
import java.util.ArrayList;
import java.util.List;

/** Dent and mould temperature of each shot, one above the other, as SVG. */
final class ShotsChart {
  private static final int WIDTH = 860;
  private static final int HEIGHT = 420;
  private static final int LEFT = 76;
  private static final int TOP = 40;
  private static final int MIDDLE = 210;
  private static final int PANEL = 130;
  private static final String DENT = "#a0341f";
  private static final String MOULD = "#10253f";

  private final SeriesAnswer answer;
  private final List<ShotRow> shown;
  private final Scale dent;
  private final Scale heat;

  ShotsChart(SeriesAnswer answer) {
    this.answer = answer;
    shown = new ArrayList<>(answer.shots());
    answer.settled().ifPresent(shown::add);
    double deepest = shown.stream().mapToDouble(ShotRow::dentHigh).max().orElse(0);
    dent = Scale.rounded(0, 1e3 * Math.max(deepest, 1.2 * answer.visible()), 4);
    heat =
        Scale.rounded(
            shown.stream().mapToDouble(ShotRow::mouldBefore).min().orElse(0),
            shown.stream().mapToDouble(ShotRow::mouldBefore).max().orElse(1) + 0.1,
            4);
  }

  void draw(Html h) {
    Svg.open(h, WIDTH, HEIGHT, "deepest dent and mould temperature of each shot");
    Svg.text(
        h,
        LEFT,
        TOP - 16,
        "start",
        "deepest dent, low to high bound, mm; red line: seen from here on",
        DENT);
    Svg.text(h, LEFT, MIDDLE + TOP - 16, "start", "mould at the wall before the shot, °C", MOULD);
    grid(h, dent, TOP);
    grid(h, heat, MIDDLE + TOP);
    double seen = at(dent, TOP, 1e3 * answer.visible());
    Svg.line(h, LEFT, seen, WIDTH - 20, seen, "#8f2416", "2.5");
    for (int i = 0; i < shown.size(); i++) {
      shot(h, shown.get(i), LEFT + (i + 0.5) * (WIDTH - 20 - LEFT) / shown.size());
    }
    h.close();
  }

  private static void grid(Html h, Scale s, int top) {
    for (double v : s.lines()) {
      Svg.line(h, LEFT, at(s, top, v), WIDTH - 20, at(s, top, v), "#e4e1d8", "1.5");
      Svg.text(h, LEFT - 8, at(s, top, v) + 6, "end", Say.tick(v, s.step()), "#525c62");
    }
  }

  private void shot(Html h, ShotRow r, double x) {
    double high = at(dent, TOP, 1e3 * r.dentHigh());
    double low = at(dent, TOP, 1e3 * r.dentLow());
    Svg.rect(h, x - 14, high, 28, Math.max(2, low - high), DENT);
    Svg.circle(h, x, at(heat, MIDDLE + TOP, r.mouldBefore()), "8", MOULD, "#ffffff", "2");
    String name = r.number() > 0 ? String.valueOf(r.number()) : "settled";
    Svg.text(h, x, HEIGHT - 14, "middle", name, "#1d2327");
  }

  private static double at(Scale s, int top, double v) {
    return top + (1 - s.share(v)) * PANEL;
  }
}

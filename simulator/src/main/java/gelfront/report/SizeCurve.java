// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The deepest dent, or the oval where that is worse, over the gate's size as a drawing. */
final class SizeCurve {
  private static final int WIDTH = 640;
  private static final int HEIGHT = 340;
  private static final int LEFT = 76;
  private static final int RIGHT = 24;
  private static final int TOP = 30;
  private static final int BOTTOM = 72;
  private static final String INK = "#1d2327";

  private final List<double[]> quick = new ArrayList<>();
  private final List<double[]> normal = new ArrayList<>();
  private final double visible;
  private final Scale x;
  private final Scale y;

  /**
   * @param place with two outcomes or more
   * @param visible metres
   */
  SizeCurve(Sizing.Place place, double visible) {
    this.visible = visible * 1e3;
    for (Sizing.Point p : place.curve()) {
      List<double[]> ofLevel = p.level().equals("quick") ? quick : normal;
      p.ran().outcome().ifPresent(o -> ofLevel.add(point(p.gate(), o)));
    }
    place
        .choices()
        .forEach(c -> c.normal().outcome().ifPresent(o -> normal.add(point(c.gate(), o))));
    quick.sort(Comparator.comparingDouble(p -> p[0]));
    List<double[]> all = new ArrayList<>(quick);
    all.addAll(normal);
    x =
        Scale.rounded(
            all.stream().mapToDouble(p -> p[0]).min().orElse(0),
            all.stream().mapToDouble(p -> p[0]).max().orElse(1),
            6);
    double most = all.stream().mapToDouble(p -> p[1]).max().orElse(1);
    y = Scale.rounded(0, Math.max(1.2 * this.visible, most), 4);
  }

  private static double[] point(double gate, RunOutcome o) {
    return new double[] {gate * 1e3, o.defect() * 1e3, o.leastDefect() * 1e3};
  }

  void draw(Html h) {
    Svg.open(h, WIDTH, HEIGHT, "deepest dent over the gate's size");
    for (double v : y.lines()) {
      Svg.line(h, LEFT, py(v), WIDTH - RIGHT, py(v), "#e4e1d8", "1.5");
      Svg.text(h, LEFT - 8, py(v) + 6, "end", Say.tick(v, y.step()), INK);
    }
    for (double v : x.lines()) {
      Svg.text(h, px(v), HEIGHT - BOTTOM + 26, "middle", Say.tick(v, x.step()), INK);
    }
    Svg.text(h, LEFT - 8, TOP - 10, "end", "mm", INK);
    Svg.text(h, (LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 12, "middle", "gate, mm", INK);
    Svg.line(h, LEFT, py(visible), WIDTH - RIGHT, py(visible), "#8f2416", "3");
    Svg.text(h, LEFT + 8, py(visible) + 24, "start", "not seen below", "#8f2416");
    StringBuilder way = new StringBuilder();
    quick.forEach(p -> way.append(at(p)).append(' '));
    h.empty(
        "polyline",
        "points",
        way.toString().strip(),
        "fill",
        "none",
        "stroke",
        INK,
        "stroke-width",
        "2");
    band(h);
    quick.forEach(p -> Svg.circle(h, px(p[0]), py(p[1]), "5", "#ffffff", INK, "2"));
    normal.forEach(p -> Svg.rect(h, px(p[0]) - 6, py(p[1]) - 6, 12, 12, "#17596b"));
    h.close();
  }

  /** From the low to the high bound: what the skin decides. */
  private void band(Html h) {
    StringBuilder way = new StringBuilder();
    quick.forEach(p -> way.append(at(p)).append(' '));
    for (int i = quick.size() - 1; i >= 0; i--) {
      double[] p = quick.get(i);
      way.append(at(new double[] {p[0], p[2]})).append(' ');
    }
    String points = way.toString().strip();
    h.empty("polygon", "points", points, "fill", "#17596b", "fill-opacity", "0.15");
  }

  private String at(double[] p) {
    return Say.fixed(px(p[0]), 1) + "," + Say.fixed(py(p[1]), 1);
  }

  private double px(double v) {
    return LEFT + x.share(v) * (WIDTH - LEFT - RIGHT);
  }

  private double py(double v) {
    return HEIGHT - BOTTOM - y.share(v) * (HEIGHT - TOP - BOTTOM);
  }
}

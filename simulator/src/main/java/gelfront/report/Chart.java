// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Band;
import gelfront.result.Series;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Curves over time as SVG, readable in print and without script. */
final class Chart {
  private static final int WIDTH = 860;
  private static final int HEIGHT = 360;
  private static final int LEFT = 62;
  private static final int RIGHT = 22;
  private static final int TOP = 34;
  private static final int BOTTOM = 62;
  private static final String[] INK = {
    "#10253f", "#a0341f", "#2f6f4f", "#6a4c93", "#8a6d00", "#4a5560"
  };
  private static final String[] DASH = {"none", "9 4", "3 3", "12 3 3 3", "6 2", "2 5"};

  private final Series series;
  private final List<Band> bands;
  private final String unit;
  private final String name;
  private final String axis;
  private final Scale x;
  private final Scale y;

  private Chart(Series series, List<Band> all, String unit, String name, String axis) {
    this.series = series;
    double end = series.time()[series.time().length - 1];
    this.bands = bandsOf(series, all).map(b -> b.until(end)).toList();
    this.unit = unit;
    this.name = name;
    this.axis = axis;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Series.Curve c : series.curves()) {
      for (double v : c.values()) {
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
    }
    for (Band b : bands) {
      low = Math.min(low, Arrays.stream(b.low()).min().orElse(low));
      high = Math.max(high, Arrays.stream(b.high()).max().orElse(high));
    }
    x = Scale.exact(0, series.time()[series.time().length - 1], 8);
    y = Scale.rounded(low, high, 4);
  }

  /**
   * What the curves of one unit show; nothing where there are none.
   *
   * @param bands of any curves; those of the curves shown are drawn behind them
   * @param what in words
   * @param marks moments to mark with an upright line
   */
  static void of(
      Html html, Series series, List<Band> bands, String unit, String what, List<Mark> marks) {
    Series some = in(series, unit);
    if (!some.curves().isEmpty()) {
      new Chart(some, bands, unit, what + " over time", "seconds after filling").draw(html, marks);
    }
  }

  private static Stream<Band> bandsOf(Series series, List<Band> all) {
    return all.stream()
        .filter(b -> series.curves().stream().anyMatch(c -> c.key().equals(b.key())));
  }

  /** One unit's curves while it fills, s from the first liquid on. */
  static void filling(Html html, Series series, String unit, String name) {
    new Chart(in(series, unit), List.of(), unit, name, "seconds from the first liquid on")
        .draw(html, List.of());
  }

  private static Series in(Series series, String unit) {
    return new Series(
        series.time(), series.curves().stream().filter(c -> c.unit().equals(unit)).toList());
  }

  /**
   * @param time s
   * @param label beside the line
   */
  record Mark(double time, String label) {}

  private void draw(Html h, List<Mark> marks) {
    Svg.open(h, WIDTH, HEIGHT, name);
    for (double v : y.lines()) {
      Svg.line(h, LEFT, py(v), WIDTH - RIGHT, py(v), "#e4e1d8", "1.5");
      Svg.text(h, LEFT - 8, py(v) + 6, "end", Say.tick(v, y.step()), "#525c62");
    }
    for (double v : x.lines()) {
      Svg.text(h, px(v), HEIGHT - BOTTOM + 27, "middle", Say.tick(v, x.step()), "#525c62");
    }
    Svg.text(h, LEFT - 8, TOP - 12, "end", unit, "#525c62");
    Svg.text(h, WIDTH - RIGHT, HEIGHT - 6, "end", axis, "#525c62");
    bands(h);
    marks(h, marks);
    curves(h);
    h.close();
    key(h);
  }

  private void marks(Html h, List<Mark> marks) {
    for (Mark m : marks) {
      double x = px(m.time());
      boolean late = x > 0.7 * WIDTH;
      Svg.line(h, x, TOP, x, HEIGHT - BOTTOM, "#8f2416", "1.5");
      Svg.text(h, late ? x - 6 : x + 6, TOP + 20, late ? "end" : "start", m.label(), "#8f2416");
    }
  }

  /** Filled, in the colour of their curve. */
  private void bands(Html h) {
    for (Band b : bands) {
      StringBuilder points = new StringBuilder();
      for (int t = 0; t < b.time().length; t++) {
        point(points, b.time()[t], b.high()[t]);
      }
      for (int t = b.time().length - 1; t >= 0; t--) {
        point(points, b.time()[t], b.low()[t]);
      }
      int curve = series.curves().stream().map(Series.Curve::key).toList().indexOf(b.key());
      String ink = INK[curve % INK.length];
      String all = points.toString().trim();
      h.empty("polygon", "points", all, "fill", ink, "fill-opacity", "0.18", "stroke", "none");
    }
  }

  private void point(StringBuilder points, double t, double v) {
    points.append(Say.fixed(px(t), 1)).append(',').append(Say.fixed(py(v), 1)).append(' ');
  }

  private void curves(Html h) {
    for (int i = 0; i < series.curves().size(); i++) {
      double[] values = series.curves().get(i).values();
      StringBuilder points = new StringBuilder();
      for (int t = 0; t < series.time().length; t++) {
        point(points, series.time()[t], values[t]);
      }
      stroke(h, points.toString().trim(), i);
    }
  }

  private static void stroke(Html h, String points, int curve) {
    h.empty(
        "polyline",
        "points",
        points,
        "fill",
        "none",
        "stroke",
        INK[curve % INK.length],
        "stroke-width",
        "3",
        "stroke-dasharray",
        DASH[curve % DASH.length]);
  }

  /** Which curve is which, below the drawing: beside the curves there is no room on a phone. */
  private void key(Html h) {
    h.open("ul", "class", "key");
    for (int i = 0; i < series.curves().size(); i++) {
      h.open("li").open("svg", "viewBox", "0 0 44 10", "aria-hidden", "true");
      stroke(h, "0,5 44,5", i);
      h.close().text(series.curves().get(i).label()).close();
    }
    h.close();
  }

  private double px(double t) {
    return LEFT + x.share(t) * (WIDTH - LEFT - RIGHT);
  }

  private double py(double v) {
    return HEIGHT - BOTTOM - y.share(v) * (HEIGHT - TOP - BOTTOM);
  }
}

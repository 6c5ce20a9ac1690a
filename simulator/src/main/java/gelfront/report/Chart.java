package gelfront.report;

import gelfront.result.Series;
import java.util.List;

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
  private final String unit;
  private final String name;
  private final Scale x;
  private final Scale y;

  private Chart(Series series, String unit, String name) {
    this.series = series;
    this.unit = unit;
    this.name = name;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Series.Curve c : series.curves()) {
      for (double v : c.values()) {
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
    }
    x = Scale.exact(0, series.time()[series.time().length - 1], 8);
    y = Scale.rounded(low, high, 4);
  }

  /**
   * @param marks moments to mark with an upright line, s and label by turns
   */
  static void temperatures(Html html, Series series, List<Mark> marks) {
    new Chart(in(series, "°C"), "°C", "temperatures over time").draw(html, marks);
  }

  /** Volumes; nothing where there are none. */
  static void volumes(Html html, Series series, List<Mark> marks) {
    Series ml = in(series, "ml");
    if (!ml.curves().isEmpty()) {
      new Chart(ml, "ml", "volumes over time").draw(html, marks);
    }
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
    Svg.text(h, WIDTH - RIGHT, HEIGHT - 6, "end", "seconds after filling", "#525c62");
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

  private void curves(Html h) {
    for (int i = 0; i < series.curves().size(); i++) {
      double[] values = series.curves().get(i).values();
      StringBuilder points = new StringBuilder();
      for (int t = 0; t < series.time().length; t++) {
        points.append(Say.fixed(px(series.time()[t]), 1)).append(',');
        points.append(Say.fixed(py(values[t]), 1)).append(' ');
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

package gelfront.report;

import gelfront.result.Series;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Curves over time as SVG, readable in print and without script. */
final class Chart {
  private static final int WIDTH = 860;
  private static final int HEIGHT = 360;
  private static final int LEFT = 52;
  private static final int RIGHT = 210;
  private static final int TOP = 26;
  private static final int BOTTOM = 44;
  private static final String[] INK = {
    "#10253f", "#a0341f", "#2f6f4f", "#6a4c93", "#8a6d00", "#4a5560"
  };
  private static final String[] DASH = {"", "9 4", "3 3", "12 3 3 3", "6 2", "2 5"};

  private final Series series;
  private final Scale x;
  private final Scale y;

  private Chart(Series series) {
    this.series = series;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Series.Curve c : series.curves()) {
      for (double v : c.values()) {
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
    }
    x = Scale.exact(0, series.time()[series.time().length - 1], 8);
    y = Scale.rounded(low, high, 6);
  }

  /**
   * @param marks moments to mark with an upright line, s and label by turns
   */
  static void temperatures(Html html, Series series, List<Mark> marks) {
    new Chart(series).draw(html, marks);
  }

  /**
   * @param time s
   * @param label beside the line
   */
  record Mark(double time, String label) {}

  private void draw(Html h, List<Mark> marks) {
    h.open(
        "svg",
        "viewBox",
        "0 0 " + WIDTH + " " + HEIGHT,
        "role",
        "img",
        "aria-label",
        "temperatures over time");
    for (double v : y.lines()) {
      Svg.line(h, LEFT, py(v), WIDTH - RIGHT, py(v), "#e4e1d8", "1.5");
      Svg.text(h, LEFT - 8, py(v) + 5, "end", Say.tick(v, y.step()), "#525c62");
    }
    for (double v : x.lines()) {
      Svg.text(h, px(v), HEIGHT - BOTTOM + 20, "middle", Say.tick(v, x.step()), "#525c62");
    }
    Svg.text(h, LEFT - 8, TOP - 8, "end", "°C", "#525c62");
    Svg.text(h, WIDTH - RIGHT, HEIGHT - 6, "end", "seconds after filling", "#525c62");
    double last = -1e9;
    for (Mark m : marks.stream().sorted(Comparator.comparingDouble(Mark::time)).toList()) {
      Svg.line(h, px(m.time()), TOP, px(m.time()), HEIGHT - BOTTOM, "#8f2416", "1.5");
      boolean crowded = px(m.time()) - last < 120;
      Svg.text(h, px(m.time()) + 5, TOP + (crowded ? 30 : 13), "start", m.label(), "#8f2416");
      last = px(m.time());
    }
    curves(h);
    h.close();
  }

  private void curves(Html h) {
    double[] label = labelPlaces();
    for (int i = 0; i < series.curves().size(); i++) {
      Series.Curve c = series.curves().get(i);
      StringBuilder points = new StringBuilder();
      for (int t = 0; t < series.time().length; t++) {
        points.append(Say.fixed(px(series.time()[t]), 1)).append(',');
        points.append(Say.fixed(py(c.values()[t]), 1)).append(' ');
      }
      String ink = INK[i % INK.length];
      h.empty(
          "polyline",
          "points",
          points.toString().trim(),
          "fill",
          "none",
          "stroke",
          ink,
          "stroke-width",
          "2.5",
          "stroke-dasharray",
          DASH[i % DASH.length].isEmpty() ? "none" : DASH[i % DASH.length]);
      Svg.text(h, WIDTH - RIGHT + 8, label[i] + 5, "start", c.label(), ink);
    }
  }

  /** Beside each curve's end, moved apart where they would touch. */
  private double[] labelPlaces() {
    int n = series.curves().size();
    List<Integer> order = new ArrayList<>();
    double[] at = new double[n];
    for (int i = 0; i < n; i++) {
      order.add(i);
      double[] v = series.curves().get(i).values();
      at[i] = py(v[v.length - 1]);
    }
    order.sort(Comparator.comparingDouble(i -> -at[i]));
    double bottom = HEIGHT - BOTTOM;
    for (int i : order) {
      at[i] = Math.min(at[i], bottom);
      bottom = at[i] - 19;
    }
    return at;
  }

  private double px(double t) {
    return LEFT + x.share(t) * (WIDTH - LEFT - RIGHT);
  }

  private double py(double v) {
    return HEIGHT - BOTTOM - y.share(v) * (HEIGHT - TOP - BOTTOM);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What is expected as a line, what was got as rings on it, as SVG. */
final class CheckPlot {
  private static final int WIDTH = 520;
  private static final int HEIGHT = 300;
  private static final int LEFT = 70;
  private static final int TOP = 34;
  private static final int RIGHT = 20;
  private static final int BOTTOM = 50;

  private final String title;
  private final String xName;
  private final String yName;
  private final List<double[]> points = new ArrayList<>();

  CheckPlot(String title, String xName, String yName) {
    this.title = title;
    this.xName = xName;
    this.yName = yName;
  }

  void add(double x, double expected, double got) {
    if (Double.isNaN(x) || Double.isNaN(expected)) {
      throw new IllegalStateException("a drawing needs a place and a value for each pair");
    }
    points.add(new double[] {x, expected, got});
  }

  String svg() {
    points.sort(Comparator.comparingDouble(p -> p[0]));
    double[] x = range(0, 0);
    double[] y = range(1, 2);
    StringBuilder s = new StringBuilder();
    s.append(say("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\"", WIDTH, HEIGHT));
    s.append(" font-family=\"sans-serif\" font-size=\"13\">\n");
    s.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
    text(s, LEFT, 18, "start", title);
    text(s, WIDTH - RIGHT, HEIGHT - 8, "end", xName);
    text(s, LEFT - 8, TOP - 2, "end", yName);
    for (int i = 0; i <= 4; i++) {
      double ty = y[0] + (y[1] - y[0]) * i / 4;
      double tx = x[0] + (x[1] - x[0]) * i / 4;
      s.append(
          say("<path d=\"M%d %.1fH%d\" stroke=\"#e0e0e0\"/>\n", LEFT, py(ty, y), WIDTH - RIGHT));
      text(s, LEFT - 8, py(ty, y) + 4, "end", say("%.4g", ty));
      text(s, px(tx, x), HEIGHT - BOTTOM + 18, "middle", say("%.3g", tx));
    }
    StringBuilder line = new StringBuilder();
    for (double[] p : points) {
      line.append(say("%.1f,%.1f ", px(p[0], x), py(p[1], y)));
    }
    s.append("<polyline fill=\"none\" stroke=\"#1f5a7a\" stroke-width=\"1.5\" points=\"");
    s.append(line.toString().strip()).append("\"/>\n");
    for (double[] p : points) {
      s.append(say("<circle cx=\"%.1f\" cy=\"%.1f\"", px(p[0], x), py(p[2], y)));
      s.append(" r=\"3.5\" fill=\"none\" stroke=\"#a0341f\" stroke-width=\"1.5\"/>\n");
    }
    return s.append("</svg>\n").toString();
  }

  private double[] range(int from, int to) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] p : points) {
      for (int k = from; k <= to; k++) {
        low = Math.min(low, p[k]);
        high = Math.max(high, p[k]);
      }
    }
    double least = Math.max(1e-12, 0.01 * Math.abs(high));
    return new double[] {low, Math.max(high, low + least)};
  }

  private static double px(double v, double[] range) {
    return LEFT + (v - range[0]) / (range[1] - range[0]) * (WIDTH - LEFT - RIGHT);
  }

  private static double py(double v, double[] range) {
    return HEIGHT - BOTTOM - (v - range[0]) / (range[1] - range[0]) * (HEIGHT - TOP - BOTTOM);
  }

  private static void text(StringBuilder s, double x, double y, String anchor, String words) {
    String safe = words.replace("&", "&amp;").replace("<", "&lt;");
    s.append(say("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">", x, y, anchor));
    s.append(safe).append("</text>\n");
  }

  private static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}

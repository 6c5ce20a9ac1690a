// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.DentMap;
import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A value over two inputs as a drawing: colours between the runs by a bilinear surface, lines of
 * equal value, a line round what is safe, a mark for each run and for the case as it is.
 */
final class HeatMap {
  private static final int WIDTH = 640;
  private static final int HEIGHT = 470;
  private static final int LEFT = 84;
  private static final int RIGHT = 20;
  private static final int TOP = 20;
  private static final int BOTTOM = 74;
  private static final int FINE = 12;
  private static final String INK = "#1d2327";

  private final DentMap map;
  private final double[][] values;
  private final double[][] dents;
  private final Scale scale;
  private final Scale x;
  private final Scale y;

  /**
   * @param value what is shown, in the legend's unit
   */
  HeatMap(DentMap map, ToDoubleFunction<RunOutcome> value) {
    this.map = map;
    values = table(map, value);
    dents = table(map, RunOutcome::dentHigh);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] row : values) {
      for (double v : row) {
        low = Double.isFinite(v) ? Math.min(low, v) : low;
        high = Double.isFinite(v) ? Math.max(high, v) : high;
      }
    }
    scale = low <= high ? Scale.rounded(low, high, 5) : Scale.rounded(0, 1, 5);
    x = Scale.exact(map.x().low(), map.x().high(), 6);
    y = Scale.exact(map.y().low(), map.y().high(), 6);
  }

  private static double[][] table(DentMap map, ToDoubleFunction<RunOutcome> value) {
    return map.runs().stream().map(row -> row(row, value)).toArray(double[][]::new);
  }

  private static double[] row(List<Ran> row, ToDoubleFunction<RunOutcome> value) {
    return row.stream()
        .mapToDouble(r -> r.outcome().map(value::applyAsDouble).orElse(Double.NaN))
        .toArray();
  }

  /**
   * @param words what is shown, with its unit
   */
  void draw(Html h, String words) {
    String label = words + " over " + map.x().name() + " and " + map.y().name();
    Svg.open(h, WIDTH, HEIGHT, label);
    colours(h);
    lines(h);
    safe(h);
    axes(h);
    runs(h);
    present(h);
    h.close();
    Legend.draw(h, scale, words);
  }

  private void colours(Html h) {
    int rows = values.length - 1;
    int columns = values[0].length - 1;
    for (int r = 0; r < rows * FINE; r++) {
      for (int c = 0; c < columns * FINE; c++) {
        double v = at(values, (r + 0.5) / FINE, (c + 0.5) / FINE);
        double left = nodeX((double) c / FINE);
        double top = nodeY((double) (r + 1) / FINE);
        double w = nodeX((double) (c + 1) / FINE) - left;
        double high = nodeY((double) r / FINE) - top;
        String ink =
            Double.isFinite(v) ? Say.hex(ColourRamp.STANDARD.at(scale.share(v))) : "#cfcdc6";
        Svg.rect(h, left, top, w + 0.6, high + 0.6, ink);
      }
    }
  }

  /** Bilinear between runs; NaN beside one that failed. */
  static double at(double[][] values, double row, double column) {
    int r = Math.min((int) row, values.length - 2);
    int c = Math.min((int) column, values[0].length - 2);
    double s = row - r;
    double t = column - c;
    double below = values[r][c] + t * (values[r][c + 1] - values[r][c]);
    double above = values[r + 1][c] + t * (values[r + 1][c + 1] - values[r + 1][c]);
    return below + s * (above - below);
  }

  private void lines(Html h) {
    for (double level : scale.lines()) {
      contour(h, values, level, "#1d2327", "3");
      contour(h, values, level, "#ffffff", "1.4");
    }
  }

  /** What is safe ends here: drawn on every map, whatever it shows. */
  private void safe(Html h) {
    contour(h, dents, map.visible(), "#ffffff", "7");
    contour(h, dents, map.visible(), "#8f2416", "4");
  }

  private void contour(Html h, double[][] of, double level, String ink, String width) {
    StringBuilder d = new StringBuilder();
    for (double[] s : Contours.of(of, level, FINE)) {
      d.append('M').append(Say.fixed(nodeX(s[0]), 1)).append(' ');
      d.append(Say.fixed(nodeY(s[1]), 1)).append('L').append(Say.fixed(nodeX(s[2]), 1));
      d.append(' ').append(Say.fixed(nodeY(s[3]), 1));
    }
    if (d.length() > 0) {
      h.empty(
          "path",
          "d",
          d.toString(),
          "fill",
          "none",
          "stroke",
          ink,
          "stroke-width",
          width,
          "stroke-linecap",
          "round");
    }
  }

  private void axes(Html h) {
    for (double v : x.lines()) {
      double at = LEFT + x.share(v) * (WIDTH - LEFT - RIGHT);
      Svg.line(h, at, HEIGHT - BOTTOM, at, HEIGHT - BOTTOM + 6, INK, "1.5");
      Svg.text(h, at, HEIGHT - BOTTOM + 26, "middle", Say.tick(v, x.step()), INK);
    }
    for (double v : y.lines()) {
      double at = HEIGHT - BOTTOM - y.share(v) * (HEIGHT - TOP - BOTTOM);
      Svg.line(h, LEFT - 6, at, LEFT, at, INK, "1.5");
      Svg.text(h, LEFT - 12, at + 6, "end", Say.tick(v, y.step()), INK);
    }
    Svg.text(h, (LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 12, "middle", map.x().title(), INK);
    double middle = (TOP + HEIGHT - BOTTOM) / 2.0;
    h.element(
        "text",
        map.y().title(),
        "x",
        "22",
        "y",
        Say.fixed(middle, 1),
        "text-anchor",
        "middle",
        "fill",
        INK,
        "transform",
        "rotate(-90 22 " + Say.fixed(middle, 1) + ")");
  }

  /** Full: no dent is seen; open: one is; crossed: no result. */
  private void runs(Html h) {
    for (int r = 0; r < values.length; r++) {
      for (int c = 0; c < values[r].length; c++) {
        Ran ran = map.runs().get(r).get(c);
        double px = nodeX(c);
        double py = nodeY(r);
        if (ran.outcome().isEmpty()) {
          Svg.line(h, px - 6, py - 6, px + 6, py + 6, INK, "2.5");
          Svg.line(h, px - 6, py + 6, px + 6, py - 6, INK, "2.5");
        } else {
          Svg.circle(
              h,
              px,
              py,
              "5",
              map.safe(ran) ? INK : "#ffffff",
              map.safe(ran) ? "#ffffff" : INK,
              "2");
        }
      }
    }
  }

  private void present(Html h) {
    Optional<double[]> at = presentPlace();
    if (at.isEmpty()) {
      return;
    }
    double px = at.get()[0];
    double py = at.get()[1];
    Svg.circle(h, px, py, "13", "none", "#ffffff", "6");
    Svg.circle(h, px, py, "13", "none", "#8f2416", "3");
    boolean late = px > 0.7 * WIDTH;
    boolean low = py < TOP + 30;
    double ty = low ? py + 34 : py - 18;
    h.element(
        "text",
        "as it is",
        "x",
        Say.fixed(px + (late ? 8 : -8), 1),
        "y",
        Say.fixed(ty, 1),
        "text-anchor",
        late ? "end" : "start",
        "fill",
        "#8f2416",
        "stroke",
        "#ffffff",
        "stroke-width",
        "5",
        "paint-order",
        "stroke");
  }

  /** Absent where the case lies outside the map. */
  private Optional<double[]> presentPlace() {
    double u = map.x().present().orElse(Double.NaN);
    double v = map.y().present().orElse(Double.NaN);
    boolean inside =
        u >= map.x().low() && u <= map.x().high() && v >= map.y().low() && v <= map.y().high();
    return inside
        ? Optional.of(
            new double[] {
              LEFT + x.share(u) * (WIDTH - LEFT - RIGHT),
              HEIGHT - BOTTOM - y.share(v) * (HEIGHT - TOP - BOTTOM)
            })
        : Optional.empty();
  }

  private double nodeX(double column) {
    return LEFT + column / (values[0].length - 1) * (WIDTH - LEFT - RIGHT);
  }

  private double nodeY(double row) {
    return HEIGHT - BOTTOM - row / (values.length - 1) * (HEIGHT - TOP - BOTTOM);
  }
}

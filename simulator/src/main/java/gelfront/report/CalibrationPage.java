// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Calibrated;
import java.util.ArrayList;
import java.util.List;

/** A calibration as a page: what was found, curve and residuals. */
public final class CalibrationPage {
  private static final int WIDTH = 860;
  private static final int LEFT = 66;
  private static final int RIGHT = 24;
  private static final int TOP = 30;
  private static final String INK = "#1d2327";
  private static final String GREY = "#525c62";
  private static final String RULE = "#e4e1d8";
  private static final String RED = "#a0341f";
  private static final String BLUE = "#1f5a7a";

  private CalibrationPage() {}

  /** The page; loads nothing. */
  public static String of(Calibrated c) {
    return AnswerPage.of(c.name() + ": calibrated", h -> content(h, c));
  }

  /** In sentences. */
  public static List<String> words(Calibrated c) {
    List<String> said = new ArrayList<>();
    for (Calibrated.Found f : c.found()) {
      said.add(
          f.name()
              + ": "
              + DoubtWords.value(f.value())
              + " "
              + DoubtWords.unit(f.unit())
              + " ("
              + DoubtWords.value(f.low())
              + " to "
              + DoubtWords.value(f.high())
              + " with 90 %; it was "
              + DoubtWords.value(f.before())
              + ").");
    }
    for (Calibrated.Untold u : c.untold()) {
      said.add("Not told by this log: " + u.name() + "; " + u.why() + ". " + u.advice());
    }
    said.add("The model misses the readings by " + Say.fixed(c.rms(), 2) + " K in the mean.");
    if (c.patterned()) {
      said.add(
          "What it misses isn't chance: the residuals follow a pattern. Check that the case"
              + " describes cup, wall, bath and the thermometer's place as they were before you"
              + " believe the intervals.");
    }
    said.addAll(c.notes());
    return said;
  }

  private static void content(Html h, Calibrated c) {
    words(c).forEach(s -> h.element("p", s));
    h.open("section").element("h2", "Readings and model").open("figure");
    curve(h, c);
    h.close().close();
    h.open("section").element("h2", "What is left over");
    h.element(
        "p", "Reading less model. Without a pattern it is chance; a wave is something missing.");
    h.open("figure");
    residuals(h, c);
    h.close().close();
    h.element("p", "From " + c.log() + ", SHA-256 " + c.hash() + ".");
    Cautions.section(h);
  }

  private static void frame(Html h, int height, String words, Scale x, Scale y, String unit) {
    Svg.open(h, WIDTH, height, words);
    for (double v : y.lines()) {
      Svg.line(h, LEFT, py(y, v, height), WIDTH - RIGHT, py(y, v, height), RULE, "1.5");
      Svg.text(h, LEFT - 8, py(y, v, height) + 6, "end", Say.tick(v, y.step()), GREY);
    }
    for (double v : x.lines()) {
      Svg.text(h, px(x, v), height - 32, "middle", Say.tick(v, x.step()), GREY);
    }
    Svg.text(h, LEFT - 8, TOP - 10, "end", unit, GREY);
    Svg.text(h, WIDTH - RIGHT, height - 6, "end", "seconds since cooling began", GREY);
  }

  private static double px(Scale x, double v) {
    return LEFT + x.share(v) * (WIDTH - LEFT - RIGHT);
  }

  private static double py(Scale y, double v, int height) {
    return height - 60 - y.share(v) * (height - 60 - TOP);
  }

  private static Scale time(Calibrated c) {
    return Scale.exact(0, c.times()[c.times().length - 1], 8);
  }

  private static void curve(Html h, Calibrated c) {
    int height = 380;
    Scale x = time(c);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double v : c.readings()) {
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
    Scale y = Scale.rounded(low, high, 5);
    frame(h, height, "temperature over time, read and fitted", x, y, "°C");
    for (int i = 1; i < c.times().length; i++) {
      Svg.line(
          h,
          px(x, c.times()[i - 1]),
          py(y, c.fitted()[i - 1], height),
          px(x, c.times()[i]),
          py(y, c.fitted()[i], height),
          BLUE,
          "3");
    }
    for (int i = 0; i < c.times().length; i++) {
      Svg.circle(h, px(x, c.times()[i]), py(y, c.readings()[i], height), "4", "#ffffff", RED, "2");
    }
    h.close();
    h.element("p", "Rings: readings. Line: model.");
  }

  private static void residuals(Html h, Calibrated c) {
    int height = 260;
    Scale x = time(c);
    double most = 1e-6;
    for (int i = 0; i < c.times().length; i++) {
      most = Math.max(most, Math.abs(c.readings()[i] - c.fitted()[i]));
    }
    Scale y = Scale.rounded(-most, most, 4);
    frame(h, height, "residuals over time", x, y, "K");
    Svg.line(h, LEFT, py(y, 0, height), WIDTH - RIGHT, py(y, 0, height), INK, "1.5");
    for (int i = 0; i < c.times().length; i++) {
      double v = c.readings()[i] - c.fitted()[i];
      Svg.circle(h, px(x, c.times()[i]), py(y, v, height), "4", "#ffffff", RED, "2");
    }
    h.close();
  }
}

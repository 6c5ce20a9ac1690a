// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import java.util.Locale;
import java.util.Random;

/**
 * A body turned about its axis, drawn by chance within what hand-made soft parts are: 45 to 80 mm
 * long, 4 to 16 mm thick, gate of 2.5 to 4.5 mm at its nose, sprue of 7 to 10 mm.
 *
 * @param x mm of each station from the nose
 * @param d mm across there
 * @param gate mm
 * @param sprue mm
 * @param hold s that the plunger is held
 * @param atTail whether it is fed there instead
 */
record GeneratedDesign(
    double[] x, double[] d, double gate, double sprue, double hold, boolean atTail) {
  private static final int STATIONS = 6;

  /** The same design for the same number. */
  static GeneratedDesign of(int number) {
    Random random = new Random(7919L * number + 11);
    double length = 45 + 35 * random.nextDouble();
    double[] x = new double[STATIONS];
    double[] d = new double[STATIONS];
    for (int i = 0; i < STATIONS; i++) {
      x[i] = half(length * i / (STATIONS - 1.0));
      boolean end = i == 0 || i == STATIONS - 1;
      d[i] = half(end ? 5 + 3 * random.nextDouble() : 4 + 12 * random.nextDouble());
    }
    double gate = half(2.5 + 2 * random.nextDouble());
    double sprue = half(7 + 3 * random.nextDouble());
    return new GeneratedDesign(x, d, gate, sprue, 4 * random.nextInt(3), false);
  }

  private static double half(double mm) {
    return Math.rint(2 * mm) / 2;
  }

  GeneratedDesign gate(double mm) {
    return new GeneratedDesign(x, d, mm, Math.max(sprue, mm), hold, atTail);
  }

  GeneratedDesign sprue(double mm) {
    return new GeneratedDesign(x, d, gate, mm, hold, atTail);
  }

  GeneratedDesign fedAtOtherEnd() {
    return new GeneratedDesign(x, d, gate, sprue, hold, !atTail);
  }

  /** mm. */
  double thickest() {
    double most = 0;
    for (double one : d) {
      most = Math.max(most, one);
    }
    return most;
  }

  /** The case file, level quick. */
  String text() {
    StringBuilder s = new StringBuilder("up = [0, 0, 1]\nvisible_dent = \"0.2 mm\"\n");
    for (int i = 0; i < STATIONS; i++) {
      s.append(
          String.format(
              Locale.ROOT,
              "[[part.caliper]]%ndistance = \"%.1f mm\"%nwidth = \"%.1f mm\"%nheight = \"%.1f mm\"%n",
              x[i],
              d[i],
              d[i]));
    }
    return s.append(
            String.format(
                Locale.ROOT,
                """
                [gate]
                at = ["%.1f mm", "0 mm", "0 mm"]
                direction = [%d, 0, 0]
                size = "%.1f mm"
                land = "3 mm"
                [sprue]
                diameter = "%.1f mm"
                length = "25 mm"
                [block]
                wall = "12 mm"
                start = "35 degC"
                [plastisol]
                grade = "soft"
                [shot]
                temperature = "165 degC"
                hold_time = "%.0f s"
                [numerics]
                level = "quick"
                """,
                atTail ? x[STATIONS - 1] : 0,
                atTail ? 1 : -1,
                gate,
                sprue,
                hold))
        .toString();
  }
}

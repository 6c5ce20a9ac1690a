// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.base.Quantities;
import java.util.Arrays;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Sizes of end mills and ball cutters that shops have: common practice, no source. */
final class Cutters {
  private static final double[] MM = {
    1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 11, 12, 14, 16, 18, 20, 25
  };

  /** Thirty-seconds of an inch. */
  private static final int[] INCH = {2, 3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 24, 32};

  private Cutters() {}

  /**
   * @param size metres
   * @param words as a maker says it
   */
  record Size(double size, String words) {}

  /** The next size up in millimetres; the size itself where none is so large. */
  static Size mm(double size) {
    double up =
        Arrays.stream(MM).map(m -> m * 1e-3).filter(m -> m >= size - 1e-6).findFirst().orElse(size);
    return new Size(up, plainMm(up));
  }

  /** The next size up in inches; the size itself where none is so large. */
  static Size inch(double size) {
    OptionalInt n = IntStream.of(INCH).filter(i -> i * 0.0254 / 32 >= size - 1e-6).findFirst();
    return n.isEmpty()
        ? new Size(size, Quantities.say("%.3f in", size / 0.0254))
        : new Size(n.getAsInt() * 0.0254 / 32, fraction(n.getAsInt()) + " in");
  }

  static String plainMm(double metres) {
    return Range.plain(Math.round(metres * 1e5) / 1e2) + " mm";
  }

  private static String fraction(int thirtySeconds) {
    int top = thirtySeconds;
    int below = 32;
    while (top % 2 == 0 && below > 1) {
      top /= 2;
      below /= 2;
    }
    return below == 1 ? String.valueOf(top) : top + "/" + below;
  }
}

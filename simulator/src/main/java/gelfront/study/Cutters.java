// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.base.Quantities;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Sizes of end mills and ball cutters that shops have: common practice, no source. */
enum Cutters {
  MM(
      "cutters in mm",
      DoubleStream.of(
              1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 11, 12, 14, 16, 18, 20, 25)
          .mapToObj(mm -> new Size(mm * 1e-3, plainMm(mm * 1e-3)))
          .toList()),

  /** Thirty-seconds of an inch. */
  INCH(
      "cutters in inch",
      IntStream.of(2, 3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 24, 32)
          .mapToObj(n -> new Size(n * 0.0254 / 32, fraction(n) + " in"))
          .toList());

  /** Metres that a size may be missed by. */
  private static final double SAME = 1e-6;

  private final String label;

  @SuppressWarnings("ImmutableEnumChecker") // made by toList: nobody can change it
  private final List<Size> sizes;

  Cutters(String label, List<Size> sizes) {
    this.label = label;
    this.sizes = sizes;
  }

  /**
   * @param size metres
   * @param words as a maker says it
   */
  record Size(double size, String words) {}

  /** For people. */
  String label() {
    return label;
  }

  /** The next size up; the size itself where none is so large. */
  Size up(double size) {
    return sizes.stream()
        .filter(s -> s.size() >= size - SAME)
        .findFirst()
        .orElseGet(() -> new Size(size, said(size)));
  }

  /**
   * The next size up or, where that is too wide, the widest that isn't.
   *
   * @param least metres that will do
   * @param wanted metres
   * @param most metres that are accepted
   * @return absent where no cutter lies between least and most
   */
  Optional<Size> within(double least, double wanted, double most) {
    Size up = up(wanted);
    return up.size() <= most + SAME
        ? Optional.of(up)
        : sizes.stream()
            .filter(s -> s.size() >= least - SAME && s.size() <= most + SAME)
            .reduce((a, b) -> b);
  }

  private String said(double size) {
    return this == MM ? plainMm(size) : Quantities.say("%.3f in", size / 0.0254);
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

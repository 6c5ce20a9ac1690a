// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.base.Entries;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Where a quantity that mostly falls over a size passes zero, by few evaluations of which several
 * may be made at once. Kept is a bracket: the largest size known to be too small below the smallest
 * known to do, so that the answer is always a size that was evaluated. A step back up beyond a size
 * that does (levels and grids aren't smooth) moves nothing.
 *
 * <p>Asked next are sizes beside the root of the line through the bracket's ends, a guard's width
 * apart, and halving where that line has failed to halve the bracket before (after Dowell and
 * Jarratt's Illinois method, 1971, in what it cures: one end that stays).
 */
final class Bracket {
  private final TreeMap<Double, Double> known = new TreeMap<>();
  private final double tolerance;
  private final double step;
  private double before = Double.POSITIVE_INFINITY;

  /**
   * @param tolerance of the answer, in the size's unit
   * @param step that sizes are whole multiples of, but for the ends that others give
   */
  Bracket(double tolerance, double step) {
    this.tolerance = tolerance;
    this.step = step;
  }

  /**
   * @param excess what is too much at that size: 0 or less does; NaN counts as too much
   */
  void know(double size, double excess) {
    known.put(size, Double.isNaN(excess) ? Double.MAX_VALUE : excess);
  }

  /** The smallest size that does of those evaluated; NaN: none does. */
  double does() {
    return known.entrySet().stream()
        .filter(e -> e.getValue() <= 0)
        .mapToDouble(java.util.Map.Entry::getKey)
        .findFirst()
        .orElse(Double.NaN);
  }

  /** The largest below it that doesn't; NaN: none. */
  double tooSmall() {
    @Nullable Double below =
        Double.isNaN(does()) ? Double.valueOf(Double.NaN) : known.lowerKey(does());
    return below == null ? Double.NaN : below;
  }

  /** Whether there is a bracket to narrow, wider than the tolerance and with a step in it. */
  boolean open() {
    return does() - tooSmall() > tolerance * (1 + 1e-9) && lowest() <= highest();
  }

  private long lowest() {
    return (long) Math.floor(tooSmall() / step + 1e-6) + 1;
  }

  private long highest() {
    return (long) Math.ceil(does() / step - 1e-6) - 1;
  }

  /** Where the line through the bracket's ends passes zero. */
  double root() {
    double a = tooSmall();
    double b = does();
    double fa = Entries.of(known, a);
    double fb = Entries.of(known, b);
    return fa >= Double.MAX_VALUE ? 0.5 * (a + b) : a + (b - a) * fa / (fa - fb);
  }

  /**
   * What to evaluate next, rising.
   *
   * @param most sizes, one or more
   * @return none where the bracket is closed
   */
  List<Double> next(int most) {
    if (!open()) {
      return List.of();
    }
    double a = tooSmall();
    double b = does();
    double width = b - a;
    boolean slow = width > 0.5 * before;
    before = width;
    if (most == 1) {
      // beyond the root, so that the end that does comes nearer, too
      return List.of(
          whole(slow ? a + 0.5 * width : root() + Math.min(0.5 * tolerance, 0.1 * width)));
    }
    double guard = slow ? width / 6 : Math.max(0.5 * tolerance, width / 10);
    double middle = slow ? a + 0.5 * width : root();
    return List.of(whole(middle - guard), whole(middle + guard)).stream().distinct().toList();
  }

  /** The next whole multiple of the step within the bracket. */
  private double whole(double size) {
    long n = (long) Math.ceil(size / step - 1e-6);
    return Math.max(lowest(), Math.min(highest(), n)) * step;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

/**
 * When what is fed fell below half of what is needed, for good. A step's share is that of its
 * middle; between two middles it changes along a straight line. Where steps are suddenly short,
 * something has happened at their beginning, as the plunger's release: until then the share was
 * what it had been.
 */
public final class HalfFed {
  /** Share of what a place needs below which it counts as starved. */
  static final double HALF = 0.5;

  private double at = Double.POSITIVE_INFINITY;
  private double lastShare = 1;
  private double lastMiddle;

  /**
   * @param share of what was needed in a step that was fed
   * @param from s at which the step began
   * @param time s at which it ended
   * @return whether half or more was fed
   */
  public boolean after(double share, double from, double time) {
    double middle = 0.5 * (from + time);
    boolean fed = share >= HALF;
    if (fed) {
      at = Double.POSITIVE_INFINITY;
    } else if (lastShare >= HALF) {
      double known = Math.max(lastMiddle, from - (middle - from));
      at = known + (middle - known) * (lastShare - HALF) / (lastShare - share);
    }
    lastShare = share;
    lastMiddle = middle;
    return fed;
  }

  /** s; +infinity: half or more is fed. */
  public double at() {
    return at;
  }
}

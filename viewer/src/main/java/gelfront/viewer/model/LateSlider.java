// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.result.Fields;

/**
 * The slider's steps and the times they stand for: cells that set before that time are hidden. Step
 * 0 shows all cells, the last step those that set last.
 *
 * @param latest s at which the last cell sets; 0 if none does
 */
public record LateSlider(double latest) {
  /** Steps above 0. */
  public static final int STEPS = 400;

  public LateSlider {
    if (!(latest >= 0) || Double.isInfinite(latest)) {
      throw new IllegalArgumentException("latest set time must be 0 s or more, was " + latest);
    }
  }

  /** For the cells of a run; those that never set do not count. */
  public static LateSlider of(Fields f) {
    double most = 0;
    for (float t : f.setTime()) {
      most = Float.isInfinite(t) ? most : Math.max(most, t);
    }
    return new LateSlider(most);
  }

  /** s from which cells are shown. */
  public double from(int step) {
    return latest * Math.max(0, Math.min(STEPS, step)) / STEPS;
  }

  /**
   * The first step that hides all that sets before.
   *
   * @param seconds any; what is no number of this run gives the nearest end
   */
  public int stepAt(double seconds) {
    if (latest == 0 || !(seconds > 0)) {
      return 0;
    }
    return (int) Math.min(STEPS, Math.ceil(STEPS * (seconds / latest)));
  }
}

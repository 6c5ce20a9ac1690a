// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import java.util.ArrayList;
import java.util.List;

/**
 * How long the way to a pocket would have had to stay open: had it closed later, only what the
 * pocket contracts by from then on would be lost, under the thicker skin of that time.
 */
final class OpenLonger {
  private final List<Interval> intervals = new ArrayList<>();

  /**
   * @param from s
   * @param volume m3 that the pocket contracts by, high bound, nothing fed
   * @param share of each slice's area
   * @param skin metres, 0 where nothing is liquid
   * @param stiff modulus of the skin, Pa
   */
  private record Interval(
      double from, double volume, double[] share, double[] skin, double[] stiff) {}

  /** One interval of time, the next one after the last. */
  void add(double from, double volume, double[] share, double[] skin, double[] stiff) {
    intervals.add(new Interval(from, volume, share, skin, stiff));
  }

  /**
   * s of the earliest closing with which no dent reaches a depth, to an interval; its first time
   * where none does anyway.
   *
   * @param visible metres
   * @param fresh makes an empty bound
   */
  double until(double visible, java.util.function.Supplier<Lost> fresh, double end) {
    int dents = -1;
    int clean = intervals.size();
    while (clean - dents > 1) {
      int middle = (dents + clean) >>> 1;
      if (deepest(middle, fresh.get()) >= visible) {
        dents = middle;
      } else {
        clean = middle;
      }
    }
    return clean < intervals.size() ? intervals.get(clean).from : end;
  }

  private double deepest(int first, Lost lost) {
    double most = 0;
    for (Interval i : intervals.subList(first, intervals.size())) {
      lost.add(i.volume);
      for (int s = 0; s < i.share.length; s++) {
        if (i.skin[s] > 0) {
          lost.take(s, i.share[s], i.skin[s], i.stiff[s]);
        }
      }
      lost.deepen();
    }
    for (int s = 0; s < intervals.get(first).share.length; s++) {
      most = Math.max(most, lost.tacky(s));
    }
    return most;
  }
}

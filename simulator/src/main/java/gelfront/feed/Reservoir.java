// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The sprue as a vessel of finite size: what it feeds, its free surface sinks by.
 *
 * <pre>  sum of V over emptied cells = times * integral of Q dt,  to one cell; level: their depth
 * </pre>
 *
 * <p>Cells are emptied from the open end on; what has set there by then stays. Air in the last of
 * them ends feeding.
 */
public final class Reservoir {
  private final int[] order;
  private final double[] depth;
  private final double[] volume;
  private final boolean[] empty;
  private final double times;
  private int next;
  private double taken;
  private double level;

  /**
   * @param out unit vector at the open end, out of the mould
   * @param times as much as is calculated draws on it: cavities that are left out
   */
  public Reservoir(Cavity cavity, Vec3 out, double times) {
    this.times = times;
    volume = cavity.volumes();
    empty = new boolean[volume.length];
    double[] bottom = new double[volume.length];
    double top = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < bottom.length; c++) {
      double height = cavity.centre(c).dot(out);
      bottom[c] = height - 0.5 * cavity.edge(c);
      top = Math.max(top, isSprue(cavity, c) ? height + 0.5 * cavity.edge(c) : top);
    }
    order =
        IntStream.range(0, volume.length)
            .filter(c -> isSprue(cavity, c))
            .boxed()
            .sorted(Comparator.comparingDouble((Integer c) -> -bottom[c]))
            .mapToInt(Integer::intValue)
            .toArray();
    double open = top;
    depth = IntStream.of(order).mapToDouble(c -> open - bottom[c]).toArray();
  }

  private static boolean isSprue(Cavity cavity, int c) {
    return cavity.region()[c] == Cavity.Region.SPRUE.ordinal();
  }

  /** Whether there is a sprue to sink in; without one liquid comes from outside. */
  boolean finite() {
    return order.length > 0;
  }

  /** Cells that air is in; not to be modified. */
  boolean[] empty() {
    return empty;
  }

  /**
   * Takes what was drawn, for all cavities.
   *
   * @param flowing whether a cell's liquid can still be drawn
   * @param drawn m3
   */
  void take(boolean[] flowing, double drawn) {
    taken += drawn * times;
    while (next < order.length && (!flowing[order[next]] || taken >= volume[order[next]])) {
      int c = order[next];
      if (flowing[c]) {
        taken -= volume[c];
        empty[c] = true;
      }
      level = depth[next++];
    }
  }

  /** Filled up to the open end again. */
  void fill() {
    next = 0;
    taken = 0;
    level = 0;
    Arrays.fill(empty, false);
  }

  /** Cells that the free surface has passed. */
  int sunk() {
    return next;
  }

  /** Metres that the free surface lies below the open end. */
  public double level() {
    return level;
  }

  /** Whether air has reached the sprue's end. */
  public boolean dry() {
    return finite() && next == order.length;
  }
}

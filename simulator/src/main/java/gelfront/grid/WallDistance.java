// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import gelfront.base.Progress;
import java.util.Arrays;

/**
 * For every plastisol cell the nearest point of the true wall, the sprue's mouth apart.
 *
 * <p>Nearest points are passed from neighbour to neighbour, from the walls inwards, until nothing
 * changes (vector distances after Danielsson, Comput. Graph. Image Process. 14 (1980) 227; his
 * sweeps over all cells take twice as long). A cell whose nearest point has changed waits its turn
 * to offer it to those beside it.
 */
public final class WallDistance {
  /** Cells that have their turn between two questions whether to go on. */
  private static final int ASK = 1 << 16;

  private final Cavity cavity;
  private final int[] nearest;
  private final float[] distance;
  private final double[] points;
  private final double[][] centre;

  /** Cells that wait, in a ring; each stands there once at most. */
  private final int[] queue;

  private final boolean[] waits;
  private int head;
  private int waiting;

  private WallDistance(Cavity cavity) {
    this.cavity = cavity;
    nearest = new int[cavity.count()];
    distance = new float[cavity.count()];
    queue = new int[cavity.count()];
    waits = new boolean[cavity.count()];
    Cavity.Walls walls = cavity.walls();
    centre = cavity.centres();
    points = new double[3 * walls.count()];
    for (int w = 0; w < walls.count(); w++) {
      System.arraycopy(cavity.wallPoint(w), 0, points, 3 * w, 3);
    }
  }

  public static WallDistance of(Cavity cavity) {
    return of(cavity, Progress.NONE);
  }

  /**
   * As above, watched.
   *
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public static WallDistance of(Cavity cavity, Progress progress) {
    WallDistance d = new WallDistance(cavity);
    d.seed();
    for (int turn = 0; d.waiting > 0; turn++) {
      if (turn % ASK == 0) {
        progress.check("measuring to the walls", 0);
      }
      d.pass(d.next());
    }
    return d;
  }

  /** Metres from the cell's centre to the wall. */
  public float distance(int cell) {
    return distance[cell];
  }

  /** Number of the wall link nearest to the cell, -1 if the cavity has no wall. */
  public int nearestWall(int cell) {
    return nearest[cell];
  }

  private void seed() {
    Arrays.fill(nearest, -1);
    Arrays.fill(distance, Float.POSITIVE_INFINITY);
    Cavity.Walls walls = cavity.walls();
    for (int w = 0; w < walls.count(); w++) {
      if (!walls.mouth()[w]) {
        offer(walls.cell()[w], w);
      }
    }
  }

  private int next() {
    int c = queue[head];
    head = head + 1 == queue.length ? 0 : head + 1;
    waiting--;
    waits[c] = false;
    return c;
  }

  private void pass(int c) {
    int w = nearest[c];
    for (int f = cavity.faces(c) - 1; f >= 0; f--) {
      int other = cavity.across(c, f);
      if (nearest[other] != w) {
        offer(other, w);
      }
    }
  }

  private void offer(int c, int w) {
    double sum = 0;
    for (int a = 0; a < 3; a++) {
      double d = centre[a][c] - points[3 * w + a];
      sum += d * d;
    }
    float d = (float) Math.sqrt(sum);
    if (d < distance[c]) {
      distance[c] = d;
      nearest[c] = w;
      if (!waits[c]) {
        int at = head + waiting++;
        queue[at < queue.length ? at : at - queue.length] = c;
        waits[c] = true;
      }
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import gelfront.base.Progress;
import java.util.Arrays;

/**
 * For every plastisol cell the nearest point of the true wall, the sprue's mouth apart.
 *
 * <p>Nearest points are passed from neighbour to neighbour in sweeps forth and back until nothing
 * changes (vector distance transform after Danielsson, Comput. Graph. Image Process. 14 (1980)
 * 227).
 */
public final class WallDistance {
  private static final int MOST_SWEEPS = 20;

  private final Cavity cavity;
  private final int[] nearest;
  private final float[] distance;
  private final double[] points;
  private final double[][] centre;

  private WallDistance(Cavity cavity) {
    this.cavity = cavity;
    nearest = new int[cavity.count()];
    distance = new float[cavity.count()];
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
   * As above, watched: asks before every sweep.
   *
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public static WallDistance of(Cavity cavity, Progress progress) {
    WallDistance d = new WallDistance(cavity);
    d.seed();
    boolean changes = true;
    for (int sweep = 0; sweep < MOST_SWEEPS && changes; sweep++) {
      progress.check("measuring to the walls", (double) sweep / MOST_SWEEPS);
      changes = d.sweep();
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

  private boolean sweep() {
    boolean changed = false;
    int n = cavity.count();
    for (int c = 0; c < n; c++) {
      changed |= pull(c);
    }
    for (int c = n - 1; c >= 0; c--) {
      changed |= pull(c);
    }
    return changed;
  }

  private boolean pull(int c) {
    boolean changed = false;
    int faces = cavity.faces(c);
    for (int f = 0; f < faces; f++) {
      int w = nearest[cavity.across(c, f)];
      if (w >= 0 && w != nearest[c]) {
        changed |= offer(c, w);
      }
    }
    return changed;
  }

  private boolean offer(int c, int w) {
    double sum = 0;
    for (int a = 0; a < 3; a++) {
      double d = centre[a][c] - points[3 * w + a];
      sum += d * d;
    }
    float d = (float) Math.sqrt(sum);
    if (d < distance[c]) {
      distance[c] = d;
      nearest[c] = w;
      return true;
    }
    return false;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import gelfront.base.Progress;
import java.util.Arrays;

/**
 * For every plastisol cell the nearest point of the true wall, the sprue's mouth apart.
 *
 * <p>Nearest points are passed from neighbour to neighbour in sweeps forth and back until nothing
 * changes (vector distance transform after Danielsson, Comput. Graph. Image Process. 14 (1980)
 * 227). A cell asks a neighbour again only if that one has changed since: what was refused once is
 * refused for ever.
 */
public final class WallDistance {
  private static final int MOST_SWEEPS = 20;

  private final Cavity cavity;
  private final int[] nearest;
  private final float[] distance;
  private final double[] points;
  private final double[][] centre;

  /** By looks taken at neighbours so far: when a cell last changed, and when it last looked. */
  private final int[] changed;

  private final int[] looked;
  private int looks;

  private WallDistance(Cavity cavity) {
    this.cavity = cavity;
    nearest = new int[cavity.count()];
    distance = new float[cavity.count()];
    changed = new int[cavity.count()];
    looked = new int[cavity.count()];
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
    Arrays.fill(looked, -1);
    Cavity.Walls walls = cavity.walls();
    for (int w = 0; w < walls.count(); w++) {
      if (!walls.mouth()[w]) {
        offer(walls.cell()[w], w);
      }
    }
  }

  private boolean sweep() {
    boolean better = false;
    int n = cavity.count();
    for (int c = 0; c < n; c++) {
      better |= pull(c);
    }
    for (int c = n - 1; c >= 0; c--) {
      better |= pull(c);
    }
    return better;
  }

  private boolean pull(int c) {
    int since = looked[c];
    looked[c] = ++looks;
    boolean better = false;
    int faces = cavity.faces(c);
    for (int f = 0; f < faces; f++) {
      int other = cavity.across(c, f);
      int w = nearest[other];
      if (changed[other] > since && w >= 0 && w != nearest[c]) {
        better |= offer(c, w);
      }
    }
    return better;
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
      changed[c] = looks;
      return true;
    }
    return false;
  }
}

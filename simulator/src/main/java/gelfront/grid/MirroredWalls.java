// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

/**
 * Whether walls are like their images. Unlike triangles on the two sides of a mesh put single walls
 * a little off; where a file has taken metal off one side, walls side by side are off.
 */
final class MirroredWalls {
  /** Voxels, square to the wall, between it and its image in the mean, at most. */
  private static final double MEAN = 0.01;

  /** The same beyond which one is off. */
  private static final double OFF = 0.05;

  /** Walls that are off within so many voxels of one that is, itself counted, at most. */
  private static final int TOGETHER = 6;

  private static final int NEAR = 2;

  /** Walls that are off at all, at most. */
  private static final int MOST_OFF = 500;

  private final VoxelModel m;
  private final MirrorImage image;
  private final Cavity.Walls walls;
  private final double dx;

  /** First wall of each cell, and their number at the end. */
  private final int[] first;

  MirroredWalls(VoxelModel m, MirrorImage image) {
    this.m = m;
    this.image = image;
    walls = m.cavity().walls();
    dx = m.cavity().grid().spacing();
    first = new int[m.cavity().count() + 1];
    for (int c : walls.cell()) {
      first[c + 1]++;
    }
    for (int c = 1; c < first.length; c++) {
      first[c] += first[c - 1];
    }
  }

  boolean alike() {
    int[] off = new int[MOST_OFF];
    int n = 0;
    double sum = 0;
    for (int w = 0; w < walls.count(); w++) {
      int like = like(w);
      double apart = like < 0 ? 1 : apart(w, like);
      sum += apart;
      if (apart > OFF) {
        if (n == MOST_OFF) {
          return false;
        }
        off[n++] = walls.cell()[w];
      }
    }
    return sum <= MEAN * walls.count() && alone(off, n);
  }

  private boolean alone(int[] off, int n) {
    for (int i = 0; i < n; i++) {
      int near = 0;
      for (int j = 0; j < n; j++) {
        near += near(off[i], off[j]) ? 1 : 0;
      }
      if (near > TOGETHER) {
        return false;
      }
    }
    return true;
  }

  private boolean near(int c, int d) {
    boolean near = true;
    for (int a = 0; a < 3; a++) {
      near &= Math.abs(m.cavity().position(c, a) - m.cavity().position(d, a)) <= NEAR;
    }
    return near;
  }

  /** The wall on the other side that is nearest one's image; -1: there is none. */
  private int like(int w) {
    int other = image.cell()[walls.cell()[w]];
    int best = -1;
    for (int v = other < 0 ? 0 : first[other]; other >= 0 && v < first[other + 1]; v++) {
      if (comparable(w, v) && (best < 0 || apart(w, v) < apart(w, best))) {
        best = v;
      }
    }
    return best;
  }

  private boolean comparable(int w, int v) {
    int face = walls.face()[w];
    int mirrored = face / 2 == image.axis() ? face ^ 1 : face;
    int behind = m.mouldCell()[w];
    return walls.face()[v] == mirrored
        && walls.mouth()[v] == walls.mouth()[w]
        && walls.edge()[v] == walls.edge()[w]
        && m.mouldCell()[v] == (behind < 0 ? -1 : image.mould()[behind]);
  }

  /** Voxels between a wall and the image of another, square to it. */
  private double apart(int w, int v) {
    double square = Math.min(walls.cosine()[w], walls.cosine()[v]);
    return square * Math.abs(walls.distance()[v] - walls.distance()[w]) / dx;
  }
}

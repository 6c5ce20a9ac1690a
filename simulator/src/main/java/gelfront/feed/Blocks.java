// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.grid.Mirrors;
import gelfront.linear.Cubes;
import gelfront.linear.Edges;
import gelfront.linear.Graph;
import java.util.Arrays;

/**
 * Flowing cells gathered in cubes of 1, 2, 4 or 8 lattice steps, as wide as a third of the liquid's
 * half width: pressure changes little across wide liquid, and gates keep their cells.
 *
 * <pre>
 *   between middles   sum over faces of A / (distance of the blocks' middles along the face's axis)
 *   to a wall         A / (distance of the block's middle from it along the link's axis)
 * </pre>
 *
 * <p>Cells that have set since stay named in their block; whoever uses it passes over them.
 */
final class Blocks {
  private static final int MOST_LEVEL = 3;

  private final CellFaces faces;
  private final Mirrors mirrors;

  /** Block per cell, -1 where there was none. */
  final int[] of;

  final Cubes cubes;
  final Graph graph;

  /** Edge of the graph per face between cells, -1 within a block or at cells that have none. */
  final int[] edge;

  /** Metres per face: area over the way between the blocks' middles. */
  final float[] reach;

  /** Metres per wall link, from the block's middle. */
  final float[] wallDistance;

  /** First cell of each block. */
  final int[] first;

  /** Middles of the cells in each block, lattice steps; x, y and z. */
  private final double[][] middle;

  Blocks(Cavity cavity, CellFaces faces, boolean[] flowing, short[] width, Gathering gathering) {
    this.faces = faces;
    mirrors = cavity.mirrors();
    int[] level = levels(flowing, width, gathering);
    of = new int[level.length];
    first = number(flowing, level);
    cubes = cubes(level);
    middle = middles();
    edge = new int[faces.count()];
    reach = new float[faces.count()];
    graph = join();
    wallDistance = walls(cavity.walls());
  }

  int count() {
    return cubes.count();
  }

  private int[] levels(boolean[] flowing, short[] width, Gathering gathering) {
    int n = flowing.length;
    int[] level = new int[n];
    int[] root = new int[n];
    for (int c = 0; c < n; c++) {
      level[c] = ownLevel(c);
    }
    for (int l = 1; l <= MOST_LEVEL; l++) {
      byte[] fits = new byte[lattice(l)];
      Arrays.fill(fits, (byte) 1);
      for (int c = 0; c < n; c++) {
        if (flowing[c] && width[c] < gathering.from(l)) {
          fits[cube(c, l)] = 0;
        }
      }
      onlyWhole(flowing, l, root, fits);
      for (int c = 0; c < n; c++) {
        if (flowing[c] && level[c] < l && fits[cube(c, l)] > 0) {
          level[c] = l;
        }
      }
    }
    return level;
  }

  /** Of a cell alone. */
  private int ownLevel(int c) {
    return Integer.numberOfTrailingZeros(faces.size[c]);
  }

  private int lattice(int l) {
    int size = 1;
    for (int d = 0; d < 3; d++) {
      size *= ((faces.counts[d] - 1) >> l) + 1;
    }
    return size;
  }

  private int cube(int c, int l) {
    int nx = ((faces.counts[0] - 1) >> l) + 1;
    int ny = ((faces.counts[1] - 1) >> l) + 1;
    int[][] p = faces.place;
    return (p[0][c] >> l) + nx * ((p[1][c] >> l) + ny * (p[2][c] >> l));
  }

  /** Liquid on both sides of a thin wall must not share a block. */
  private void onlyWhole(boolean[] flowing, int l, int[] root, byte[] fits) {
    for (int c = 0; c < root.length; c++) {
      root[c] = c;
    }
    for (int f = 0; f < faces.count(); f++) {
      int a = faces.a[f];
      int b = faces.b[f];
      if (flowing[a] && flowing[b] && cube(a, l) == cube(b, l)) {
        root[find(root, a)] = find(root, b);
      }
    }
    int[] seen = new int[fits.length];
    for (int c = 0; c < root.length; c++) {
      if (flowing[c]) {
        int at = cube(c, l);
        int r = find(root, c) + 1;
        if (seen[at] == 0) {
          seen[at] = r;
        } else if (seen[at] != r) {
          fits[at] = 0;
        }
      }
    }
  }

  private static int find(int[] root, int c) {
    int r = c;
    while (root[r] != r) {
      root[r] = root[root[r]];
      r = root[r];
    }
    return r;
  }

  /** Numbers the blocks; returns the first cell of each. */
  private int[] number(boolean[] flowing, int[] level) {
    int[][] taken = new int[MOST_LEVEL + 1][];
    for (int l = 1; l <= MOST_LEVEL; l++) {
      taken[l] = new int[lattice(l)];
    }
    int[] firsts = new int[of.length];
    int count = 0;
    Arrays.fill(of, -1);
    for (int c = 0; c < of.length; c++) {
      if (flowing[c]) {
        int l = level[c];
        boolean alone = l == ownLevel(c);
        int known = alone ? 0 : taken[l][cube(c, l)];
        if (known == 0) {
          firsts[count++] = c;
          known = count;
        }
        if (!alone) {
          taken[l][cube(c, l)] = known;
        }
        of[c] = known - 1;
      }
    }
    return Arrays.copyOf(firsts, count);
  }

  private Cubes cubes(int[] level) {
    int[][] corner = new int[3][first.length];
    int[] size = new int[first.length];
    for (int b = 0; b < first.length; b++) {
      int l = level[first[b]];
      size[b] = 1 << l;
      for (int d = 0; d < 3; d++) {
        corner[d][b] = faces.place[d][first[b]] >> l << l;
      }
    }
    return new Cubes(corner[0], corner[1], corner[2], size);
  }

  private double[][] middles() {
    double[][] m = new double[3][count()];
    double[] volume = new double[count()];
    for (int c = 0; c < of.length; c++) {
      if (of[c] >= 0) {
        double v = Math.pow(faces.size[c], 3);
        volume[of[c]] += v;
        for (int d = 0; d < 3; d++) {
          m[d][of[c]] += v * faces.middle(c, d);
        }
      }
    }
    for (int b = 0; b < volume.length; b++) {
      for (int d = 0; d < 3; d++) {
        m[d][b] /= volume[b];
      }
    }
    return m;
  }

  /** Whether a block's own mirror image lies below it on an axis. */
  boolean mirrored(int b, int axis) {
    return mirrors.at(axis) && cubes.corner(axis)[b] == 0;
  }

  /** Metres from its block's middle to a cell's along an axis, upwards. */
  double offset(int cell, int axis) {
    return (faces.middle(cell, axis) - middle[axis][of[cell]]) * faces.step;
  }

  /**
   * How edges lie.
   *
   * @param side gets twice the axis, one more if the lower block has the higher number
   * @param length gets metres between middles along that axis
   */
  void measure(byte[] side, double[] length) {
    for (int f = 0; f < edge.length; f++) {
      int e = edge[f];
      if (e >= 0) {
        boolean falls = of[faces.a[f]] > of[faces.b[f]];
        side[e] = (byte) (2 * faces.axis[f] + (falls ? 1 : 0));
        length[e] = faces.area(f) / reach[f];
      }
    }
  }

  private Graph join() {
    long[] key = new long[faces.count()];
    for (int f = 0; f < key.length; f++) {
      int a = of[faces.a[f]];
      int b = of[faces.b[f]];
      key[f] = -1;
      if (a >= 0 && b >= 0 && a != b) {
        key[f] = Edges.key(a, b);
        double[] m = middle[faces.axis[f]];
        reach[f] = (float) (faces.area(f) / (faces.step * (m[b] - m[a])));
      }
    }
    return Edges.graph(count(), key, edge);
  }

  private float[] walls(Cavity.Walls walls) {
    float[] distance = walls.distance().clone();
    for (int w = 0; w < distance.length; w++) {
      int c = walls.cell()[w];
      if (of[c] >= 0) {
        double off = offset(c, walls.face()[w] / 2);
        distance[w] += (float) Math.max(0, walls.face()[w] % 2 == 0 ? -off : off);
      }
    }
    return distance;
  }
}

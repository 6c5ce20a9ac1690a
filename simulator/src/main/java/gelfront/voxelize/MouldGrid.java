// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.RectilinearGrid;
import gelfront.grid.UniformGrid;
import gelfront.mesh.Box;
import java.util.Arrays;

/**
 * Where the mould's cells lie: bricks of whole voxels round the cavity, stretched from there to the
 * block's faces.
 *
 * @param fine the cavity's grid
 * @param coarse the mould's
 * @param voxels per axis and voxel position, voxels along the edge of a brick there
 * @param of per axis, the mould position that holds the middle of each voxel position
 */
record MouldGrid(UniformGrid fine, RectilinearGrid coarse, int[][] voxels, int[][] of) {
  /** Growth from one stretched cell to the next. */
  private static final double STRETCH = 1.25;

  /** Share of a voxel that two edges keep apart. */
  private static final double APART = 0.3;

  static MouldGrid of(UniformGrid fine, Box box, int[][] voxels) {
    double[] lo = {box.min().x(), box.min().y(), box.min().z()};
    double[] hi = {box.max().x(), box.max().y(), box.max().z()};
    double[][] edges = new double[3][];
    for (int a = 0; a < 3; a++) {
      edges[a] = edges(fine, a, voxels[a], lo[a], hi[a]);
    }
    RectilinearGrid coarse = new RectilinearGrid(edges[0], edges[1], edges[2]);
    int[][] of = new int[3][];
    for (int a = 0; a < 3; a++) {
      of[a] = new int[fine.count(a)];
      for (int i = 0; i < fine.count(a); i++) {
        of[a][i] = coarse.find(a, fine.centre(a, i));
      }
    }
    return new MouldGrid(fine, coarse, voxels, of);
  }

  /** Mould grid cell that holds a plastisol cell. */
  int holding(Cavity cavity, int c) {
    return coarse.index(
        of[0][cavity.position(c, 0)], of[1][cavity.position(c, 1)], of[2][cavity.position(c, 2)]);
  }

  /** Mould grid cell that a wall link leads to. */
  int behind(Cavity cavity, int w) {
    int[] at = positionBehind(cavity, w);
    return coarse.index(at[0], at[1], at[2]);
  }

  /** Where that cell lies along each axis. */
  int[] positionBehind(Cavity cavity, int w) {
    int cell = cavity.walls().cell()[w];
    int face = cavity.walls().face()[w];
    int[] at = new int[3];
    for (int b = 0; b < 3; b++) {
      int step = b == face / 2 ? (face % 2 == 0 ? -1 : 1) : 0;
      at[b] = of[b][cavity.position(cell, b, step)];
    }
    return at;
  }

  /** Voxels that a brick behind a wall link is thick, along the link. */
  int thickness(Cavity cavity, int w) {
    int face = cavity.walls().face()[w];
    int step = face % 2 == 0 ? -1 : 1;
    return voxels[face / 2][cavity.position(cavity.walls().cell()[w], face / 2, step)];
  }

  /** From a mould grid cell to the next one along an axis. */
  int stride(int axis) {
    return axis == 0 ? 1 : axis == 1 ? coarse.count(0) : coarse.count(0) * coarse.count(1);
  }

  /** m2 of a mould grid cell's faces across an axis. */
  double area(int cell, int axis) {
    return coarse.volume(cell) / coarse.width(axis, coarse.position(cell, axis));
  }

  /** Edges of the bricks, laid from the middle outwards: both sides are alike. */
  private static double[] inner(UniformGrid fine, int a, int[] voxels) {
    int middle = voxels.length / 2;
    int[] down = laid(voxels, middle, -1);
    int[] up = laid(voxels, middle, 1);
    double[] inner = new double[down.length + 1 + up.length];
    for (int i = 0; i < down.length; i++) {
      inner[i] = fine.edge(a, down[down.length - 1 - i]);
    }
    inner[down.length] = fine.edge(a, middle);
    for (int i = 0; i < up.length; i++) {
      inner[down.length + 1 + i] = fine.edge(a, up[i]);
    }
    return inner;
  }

  /** Ends of bricks from an edge on, up (1) or down (-1), none of which reaches into finer ones. */
  private static int[] laid(int[] voxels, int from, int way) {
    int[] ends = new int[voxels.length];
    int n = 0;
    int last = way > 0 ? voxels.length : 0;
    int at = from;
    while (at != last) {
      int whole = ahead(voxels, at, way);
      int length = 1;
      while (length < whole
          && at + way * length != last
          && ahead(voxels, at + way * length, way) >= whole) {
        length++;
      }
      at += way * length;
      ends[n++] = at;
    }
    return Arrays.copyOf(ends, n);
  }

  /** Voxels of a brick that begins at an edge. */
  private static int ahead(int[] voxels, int edge, int way) {
    return voxels[way > 0 ? edge : edge - 1];
  }

  private static double[] edges(UniformGrid fine, int a, int[] voxels, double lo, double hi) {
    double dx = fine.spacing();
    double[] inner = inner(fine, a, voxels);
    double[] all = new double[inner.length + 400];
    int m = 0;
    all[m++] = lo;
    m = stretch(all, m, lo, inner[0], voxels[0] * dx, true);
    for (double edge : inner) {
      if (edge > all[m - 1] + APART * dx && edge < hi - APART * dx) {
        all[m++] = edge;
      }
    }
    m = stretch(all, m, inner[inner.length - 1], hi, voxels[voxels.length - 1] * dx, false);
    all[m++] = hi;
    return Arrays.copyOf(all, m);
  }

  /** Adds edges strictly between from and to, growing away from the cavity. */
  private static int stretch(
      double[] all, int m, double from, double to, double first, boolean towards) {
    double length = to - from;
    if (length <= 1.5 * first) {
      return m;
    }
    double growth = STRETCH - 1;
    int n = (int) Math.max(1, Math.round(Math.log1p(length / first * growth) / Math.log(STRETCH)));
    double sum = (Math.pow(STRETCH, n) - 1) / growth;
    for (int i = 1; i < n; i++) {
      double part = length * (Math.pow(STRETCH, i) - 1) / growth / sum;
      all[towards ? m + n - 1 - i : m + i - 1] = towards ? to - part : from + part;
    }
    return m + n - 1;
  }
}

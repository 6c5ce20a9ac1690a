// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.grid.Joints;
import java.util.Arrays;

/**
 * The plastisol's cells as the flow sees them: cubes on a lattice as fine as the smallest cells,
 * and each face once.
 */
final class CellFaces {
  private static final int FACES = 6;

  /** Cells on either side of each face; {@code b} lies further along {@code axis}. */
  final int[] a;

  final int[] b;
  final byte[] axis;

  /** Lower corner per cell, lattice steps; x, y and z. */
  final int[][] place = new int[3][];

  /** Edge per cell, lattice steps, a power of two. */
  final int[] size;

  /** Cubes along each axis of the lattice. */
  final int[] counts;

  /** One lattice step, metres. */
  final double step;

  private final int count;

  /**
   * @throws IllegalArgumentException if voxels are not 1, 2, 4 ... of the smallest cells wide
   */
  CellFaces(Cavity cavity) {
    int factor = cavity.refinement().factor();
    if (Integer.bitCount(factor) != 1) {
      throw new IllegalArgumentException("voxels " + factor + " small cells wide");
    }
    step = cavity.smallEdge();
    int n = cavity.count();
    size = new int[n];
    Arrays.fill(size, 0, cavity.voxels(), factor);
    Arrays.fill(size, cavity.voxels(), n, 1);
    counts = new int[3];
    for (int d = 0; d < 3; d++) {
      counts[d] = factor * cavity.grid().count(d);
      place[d] = new int[n];
      for (int c = 0; c < n; c++) {
        place[d][c] = corner(cavity, c, d, factor);
      }
    }
    Joints joints = cavity.refinement().joints();
    int most = 3 * n + joints.count() / 2;
    a = new int[most];
    b = new int[most];
    axis = new byte[most];
    count = list(cavity);
  }

  private int corner(Cavity cavity, int c, int d, int factor) {
    double middle = factor * (cavity.place(c, d) + 0.5);
    return (int) Math.round(middle - 0.5 * size[c]);
  }

  private int list(Cavity cavity) {
    Joints joints = cavity.refinement().joints();
    int m = 0;
    for (int c = 0; c < size.length; c++) {
      for (int f = 1; f < FACES; f += 2) {
        int to = cavity.neighbours()[FACES * c + f];
        m = to == c ? m : add(m, c, to, f);
      }
      for (int i = joints.first(c); i < joints.end(c); i++) {
        m = joints.face()[i] % 2 == 0 ? m : add(m, c, joints.other()[i], joints.face()[i]);
      }
    }
    return m;
  }

  private int add(int m, int c, int to, int face) {
    a[m] = c;
    b[m] = to;
    axis[m] = (byte) (face / 2);
    return m + 1;
  }

  int cells() {
    return size.length;
  }

  int count() {
    return count;
  }

  /** Of a face, m2. */
  double area(int face) {
    double edge = step * Math.min(size[a[face]], size[b[face]]);
    return edge * edge;
  }

  /** Between the middles of a face's cells along its axis, metres. */
  double apart(int face) {
    return 0.5 * step * (size[a[face]] + size[b[face]]);
  }

  /** Middle of a cell from the lattice's first corner, steps. */
  double middle(int cell, int d) {
    return place[d][cell] + 0.5 * size[cell];
  }
}

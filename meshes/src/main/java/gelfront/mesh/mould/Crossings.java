// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.mould;

import gelfront.mesh.TriangleMesh;
import java.util.Arrays;
import java.util.List;

/**
 * Where the lattice's lines along one axis go in and out of solids. A line stands a hair beside its
 * samples, so that it meets no edge of a drawing in round numbers.
 */
final class Crossings {
  private static final double[] ASIDE = {1.37e-5, 2.71e-5};

  private final Lattice lattice;
  private final int axis;
  private final int u;
  private final int v;
  private final double[][] where;

  /** Number of the solid, from 1; negative on the way in. */
  private final int[][] solid;

  private final int[] count;

  Crossings(Lattice lattice, int axis, List<TriangleMesh> solids) {
    this.lattice = lattice;
    this.axis = axis;
    this.u = (axis + 1) % 3;
    this.v = (axis + 2) % 3;
    int lines = lattice.n()[u] * lattice.n()[v];
    where = new double[lines][0];
    solid = new int[lines][0];
    count = new int[lines];
    for (int s = 0; s < solids.size(); s++) {
      TriangleMesh m = solids.get(s);
      for (int t = 0; t < m.triangleCount(); t++) {
        triangle(m, t, s + 1);
      }
    }
    for (int l = 0; l < lines; l++) {
      sort(l);
    }
  }

  private void triangle(TriangleMesh m, int t, int number) {
    double[] a = new double[3];
    double[] b = new double[3];
    double[] p = new double[3];
    for (int c = 0; c < 3; c++) {
      a[c] = m.coordinate(m.corner(t, c), u);
      b[c] = m.coordinate(m.corner(t, c), v);
      p[c] = m.coordinate(m.corner(t, c), axis);
    }
    double twice = (a[1] - a[0]) * (b[2] - b[0]) - (a[2] - a[0]) * (b[1] - b[0]);
    if (twice == 0) {
      return;
    }
    int[] i = range(u, a, ASIDE[0]);
    int[] j = range(v, b, ASIDE[1]);
    for (int y = j[0]; y <= j[1]; y++) {
      double q = lattice.at(v, y) + ASIDE[1] * lattice.step(v);
      for (int x = i[0]; x <= i[1]; x++) {
        double o = lattice.at(u, x) + ASIDE[0] * lattice.step(u);
        double w1 = ((a[2] - o) * (b[0] - q) - (a[0] - o) * (b[2] - q)) / twice;
        double w2 = ((a[0] - o) * (b[1] - q) - (a[1] - o) * (b[0] - q)) / twice;
        if (w1 >= 0 && w2 >= 0 && w1 + w2 <= 1) {
          add(
              x + lattice.n()[u] * y,
              p[0] + w1 * (p[1] - p[0]) + w2 * (p[2] - p[0]),
              twice > 0 ? number : -number);
        }
      }
    }
  }

  private int[] range(int across, double[] c, double aside) {
    double low = Math.min(c[0], Math.min(c[1], c[2])) - lattice.low(across);
    double high = Math.max(c[0], Math.max(c[1], c[2])) - lattice.low(across);
    double step = lattice.step(across);
    return new int[] {
      Math.max(0, (int) Math.floor(low / step - 0.5 - aside)),
      Math.min(lattice.n()[across] - 1, (int) Math.ceil(high / step - 0.5 - aside))
    };
  }

  private void add(int line, double at, int number) {
    if (count[line] == where[line].length) {
      where[line] = Arrays.copyOf(where[line], 4 + 2 * count[line]);
      solid[line] = Arrays.copyOf(solid[line], 4 + 2 * count[line]);
    }
    where[line][count[line]] = at;
    solid[line][count[line]++] = number;
  }

  /** By place; where two solids touch, out of the one before into the other. */
  private void sort(int line) {
    double[] w = where[line];
    int[] s = solid[line];
    for (int i = 1; i < count[line]; i++) {
      double at = w[i];
      int number = s[i];
      int j = i;
      while (j > 0 && w[j - 1] > at) {
        w[j] = w[j - 1];
        s[j] = s[j - 1];
        j--;
      }
      w[j] = at;
      s[j] = number;
    }
  }

  /**
   * Marks samples in metal, and those in slits between two different solids.
   *
   * @param slit widest of them, metres
   */
  void mark(boolean[] metal, double slit) {
    for (int line = 0; line < count.length; line++) {
      int inside = 0;
      double from = Double.NaN;
      int left = 0;
      for (int c = 0; c < count[line]; c++) {
        int number = solid[line][c];
        double at = where[line][c];
        if (inside > 0) {
          fill(metal, line, from, at);
        } else if (left != 0 && left != Math.abs(number) && at - from <= slit) {
          fill(metal, line, from, at);
        }
        inside += number < 0 ? 1 : -1;
        left = Math.abs(number);
        from = at;
      }
    }
  }

  private void fill(boolean[] metal, int line, double from, double to) {
    int[] at = new int[3];
    at[u] = line % lattice.n()[u];
    at[v] = line / lattice.n()[u];
    double step = lattice.step(axis);
    int first = Math.max(0, (int) Math.ceil((from - lattice.low(axis)) / step - 0.5));
    int last =
        Math.min(lattice.n()[axis] - 1, (int) Math.floor((to - lattice.low(axis)) / step - 0.5));
    for (int i = first; i <= last; i++) {
      at[axis] = i;
      metal[lattice.number(at[0], at[1], at[2])] = true;
    }
  }

  /**
   * The wall between a sample and the next along the axis that is nearest to the first; halfway
   * where there is none.
   *
   * @param i position of the first along u
   * @param j position of the first along v
   * @param k position of the first along the axis
   * @param up whether the next lies higher
   */
  double wall(int i, int j, int k, boolean up) {
    int line = i + lattice.n()[u] * j;
    double from = lattice.at(axis, k);
    double to = lattice.at(axis, up ? k + 1 : k - 1);
    double slack = 1e-6 * lattice.step(axis); // a sample may lie in the wall itself
    double best = Double.NaN;
    for (int c = 0; c < count[line]; c++) {
      double at = where[line][c];
      boolean between = at >= Math.min(from, to) - slack && at <= Math.max(from, to) + slack;
      if (between && !(Math.abs(at - from) >= Math.abs(best - from))) {
        best = at;
      }
    }
    return Double.isNaN(best) ? 0.5 * (from + to) : best;
  }
}

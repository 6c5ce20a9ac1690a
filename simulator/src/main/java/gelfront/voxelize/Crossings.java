// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.UniformGrid;
import gelfront.mesh.TriangleMesh;
import java.util.Arrays;
import java.util.Objects;

/**
 * Where the lines through the cell centres along one axis cross a mesh.
 *
 * <p>Lines that meet an edge or a vertex are given to exactly one of the triangles that share it:
 * each edge is tested in one canonical direction, and zero counts as positive there. So a closed
 * mesh has a watertight set of crossings, without jitter.
 */
final class Crossings {
  /** Triangles, some milliseconds. */
  private static final int BETWEEN_CHECKS = 1 << 14;

  /** Positions that a line may lie beside a cell's centre, and more. */
  private static final double BESIDE = 1e-3;

  /** Start of each column's crossings; length columns + 1. Column = e + countE * f. */
  private final int[] start;

  /** Coordinate along the axis, metres, rising inside a column. */
  private final double[] at;

  /** Normal's component along the axis, length-one normal: positive where the line leaves. */
  private final float[] normal;

  private Crossings(int[] start, double[] at, float[] normal) {
    this.start = start;
    this.at = at;
    this.normal = normal;
  }

  int first(int column) {
    return start[column];
  }

  int end(int column) {
    return start[column + 1];
  }

  double at(int crossing) {
    return at[crossing];
  }

  float normal(int crossing) {
    return normal[crossing];
  }

  /**
   * @param grid whose lines along {@code axis} are taken
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  static Crossings of(TriangleMesh mesh, UniformGrid grid, int axis, Progress progress) {
    Scan scan = new Scan(mesh, grid, axis);
    for (int t = 0; t < mesh.triangleCount(); t++) {
      if (t % BETWEEN_CHECKS == BETWEEN_CHECKS - 1) {
        progress.check("crossing the mesh", (double) t / mesh.triangleCount());
      }
      scan.triangle(t);
    }
    return scan.sorted();
  }

  /**
   * The same crossings numbered by the columns of another grid of the same lattice.
   *
   * @param from the grid they were found on
   * @param to a grid that holds all columns which cross something
   */
  Crossings placed(UniformGrid from, UniformGrid to, int axis) {
    int e = (axis + 1) % 3;
    int f = (axis + 2) % 3;
    int offsetE = offset(from, to, e);
    int offsetF = offset(from, to, f);
    int[] moved = new int[to.count(e) * to.count(f) + 1];
    for (int column = 0; column < start.length - 1; column++) {
      int n = start[column + 1] - start[column];
      if (n > 0) {
        int je = column % from.count(e) + offsetE;
        int jf = column / from.count(e) + offsetF;
        moved[Objects.checkIndex(je, to.count(e)) + to.count(e) * jf + 1] = n;
      }
    }
    for (int column = 1; column < moved.length; column++) {
      moved[column] += moved[column - 1];
    }
    return new Crossings(moved, at, normal);
  }

  private static int offset(UniformGrid from, UniformGrid to, int a) {
    return (int) Math.rint((from.edge(a, 0) - to.edge(a, 0)) / to.spacing());
  }

  /** Collects crossings triangle by triangle, then sorts them by column. */
  private static final class Scan {
    private final TriangleMesh mesh;
    private final UniformGrid grid;
    private final int axis;
    private final int e;
    private final int f;
    private int n;
    private int[] column = new int[1 << 12];
    private double[] at = new double[1 << 12];
    private float[] normal = new float[1 << 12];
    private final double[][] p = new double[3][3];

    Scan(TriangleMesh mesh, UniformGrid grid, int axis) {
      this.mesh = mesh;
      this.grid = grid;
      this.axis = axis;
      this.e = (axis + 1) % 3;
      this.f = (axis + 2) % 3;
    }

    void triangle(int t) {
      for (int c = 0; c < 3; c++) {
        int v = mesh.corner(t, c);
        for (int a = 0; a < 3; a++) {
          p[c][a] = mesh.coordinate(v, a);
        }
      }
      double nd = cross(e, f);
      if (nd != 0) { // else seen edge-on: its neighbours carry the crossing
        lines(nd, cross(f, axis), cross(axis, e));
      }
    }

    /** Those that cross it; its normal, twice its area long, by axis, e and f. */
    private void lines(double nd, double ne, double nf) {
      float unit = (float) (nd / Math.sqrt(nd * nd + ne * ne + nf * nf));
      int e0 = firstCentre(e, Math.min(p[0][e], Math.min(p[1][e], p[2][e])));
      int e1 = lastCentre(e, Math.max(p[0][e], Math.max(p[1][e], p[2][e])));
      int f0 = firstCentre(f, Math.min(p[0][f], Math.min(p[1][f], p[2][f])));
      int f1 = lastCentre(f, Math.max(p[0][f], Math.max(p[1][f], p[2][f])));
      for (int jf = f0; jf <= f1; jf++) {
        double cf = grid.probe(f, jf);
        for (int je = e0; je <= e1; je++) {
          double ce = grid.probe(e, je);
          if (covers(ce, cf, nd > 0)) {
            double d = p[0][axis] - (ne * (ce - p[0][e]) + nf * (cf - p[0][f])) / nd;
            add(je + grid.count(e) * jf, clampToTriangle(d), unit);
          }
        }
      }
    }

    /** A steep sliver's plane may be far off between its corners: keep to the triangle. */
    private double clampToTriangle(double d) {
      double lo = Math.min(p[0][axis], Math.min(p[1][axis], p[2][axis]));
      double hi = Math.max(p[0][axis], Math.max(p[1][axis], p[2][axis]));
      return Math.max(lo, Math.min(hi, d));
    }

    /** Component of the normal (twice the area long) along the axis that follows a and b. */
    private double cross(int a, int b) {
      return (p[1][a] - p[0][a]) * (p[2][b] - p[0][b]) - (p[1][b] - p[0][b]) * (p[2][a] - p[0][a]);
    }

    private boolean covers(double ce, double cf, boolean counterClockwise) {
      for (int c = 0; c < 3; c++) {
        if (left(p[c], p[(c + 1) % 3], ce, cf) != counterClockwise) {
          return false;
        }
      }
      return true;
    }

    /** Whether the point lies left of a to b; on the line: left of its canonical direction. */
    private boolean left(double[] a, double[] b, double ce, double cf) {
      boolean canonical = a[e] < b[e] || (a[e] == b[e] && a[f] < b[f]);
      double[] s = canonical ? a : b;
      double[] t = canonical ? b : a;
      double turn = (t[e] - s[e]) * (cf - s[f]) - (t[f] - s[f]) * (ce - s[e]);
      return (turn >= 0) == canonical;
    }

    private int firstCentre(int a, double coordinate) {
      double at0 = (coordinate - grid.edge(a, 0)) / grid.spacing() - 0.5;
      return (int) Math.max(0, Math.ceil(at0 - BESIDE));
    }

    private int lastCentre(int a, double coordinate) {
      double at0 = (coordinate - grid.edge(a, 0)) / grid.spacing() - 0.5;
      return (int) Math.min(grid.count(a) - 1, Math.floor(at0 + BESIDE));
    }

    private void add(int c, double d, float unit) {
      if (n == column.length) {
        column = Arrays.copyOf(column, 2 * n);
        at = Arrays.copyOf(at, 2 * n);
        normal = Arrays.copyOf(normal, 2 * n);
      }
      column[n] = c;
      at[n] = d;
      normal[n++] = unit;
    }

    Crossings sorted() {
      int columns = grid.count(e) * grid.count(f);
      int[] start = new int[columns + 1];
      for (int i = 0; i < n; i++) {
        start[column[i] + 1]++;
      }
      for (int c = 0; c < columns; c++) {
        start[c + 1] += start[c];
      }
      double[] d = new double[n];
      float[] u = new float[n];
      int[] next = start.clone();
      for (int i = 0; i < n; i++) {
        int to = next[column[i]]++;
        int from = start[column[i]];
        while (to > from && d[to - 1] > at[i]) { // columns hold a handful: insertion is quickest
          d[to] = d[to - 1];
          u[to] = u[to - 1];
          to--;
        }
        d[to] = at[i];
        u[to] = normal[i];
      }
      return new Crossings(start, d, u);
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.linear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.grid.UniformGrid;
import gelfront.mesh.Vec3;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class MultigridTest {
  /** A box with a narrow neck, coefficients over five decades, tied to zero at one end. */
  private static final class Problem {
    final Multigrid grid;
    final double[] between;
    final double[] own;
    final int n;

    Problem(int size, double decades) {
      UniformGrid box = new UniformGrid(Vec3.ZERO, 1, 3 * size, size, size);
      int[] number = new int[box.cellCount()];
      int count = 0;
      for (int c = 0; c < number.length; c++) {
        number[c] = inside(box, c, size) ? count++ : -1;
      }
      n = count;
      int[][] corner = new int[3][n];
      int[] edge = new int[n];
      java.util.Arrays.fill(edge, 1);
      own = new double[n];
      double[] log = new double[n];
      Random random = new Random(4);
      for (int c = 0; c < number.length; c++) {
        if (number[c] >= 0) {
          for (int d = 0; d < 3; d++) {
            corner[d][number[c]] = box.position(c, d);
          }
          double across = (double) box.position(c, 1) / size - 0.5;
          log[number[c]] = decades * (across * across * 4 + 0.05 * random.nextDouble());
        }
      }
      int[] from = new int[3 * n];
      int[] to = new int[3 * n];
      double[] link = new double[3 * n];
      int m = 0;
      for (int at = 0; at < number.length; at++) {
        int c = number[at];
        if (c < 0) {
          continue;
        }
        own[c] = corner[0][c] == 0 ? Math.pow(10, -log[c]) : 0;
        for (int f = 1; f < 6; f += 2) {
          int beyond = beyond(box, at, f, number);
          if (beyond >= 0) {
            from[m] = c;
            to[m] = beyond;
            link[m++] = Math.pow(10, -0.5 * (log[c] + log[beyond]));
          }
        }
      }
      between = java.util.Arrays.copyOf(link, m);
      Graph graph = Graph.of(n, java.util.Arrays.copyOf(from, m), java.util.Arrays.copyOf(to, m));
      grid = new Multigrid(graph, new Cubes(corner[0], corner[1], corner[2], edge));
    }

    private static boolean inside(UniformGrid box, int c, int size) {
      boolean neck = box.position(c, 0) / size == 1;
      int j = box.position(c, 1);
      return !neck || (j >= 3 * size / 8 && j < 5 * size / 8);
    }

    private static int beyond(UniformGrid box, int c, int face, int[] number) {
      int at = box.position(c, face / 2) + (face % 2 == 0 ? -1 : 1);
      boolean out = at < 0 || at >= box.count(face / 2);
      return out ? -1 : number[c + (face % 2 == 0 ? -1 : 1) * box.stride(face / 2)];
    }

    double[] random(long seed) {
      return new Random(seed).doubles(n, -1, 1).toArray();
    }
  }

  @Test
  void solvesToTheAskedResidualWithinFewIterationsWhateverTheGrid() {
    StopRule stop = new StopRule(1e-6, 1e-6, 40);
    for (int size : new int[] {8, 16, 32}) {
      Problem p = new Problem(size, 5);
      double[] b = new double[p.n];
      java.util.Arrays.fill(b, 1);
      double[] x = new double[p.n];
      p.grid.refresh(p.between, p.own);
      int iterations = new ConjugateGradients(p.grid).solve(b, x, stop);
      double[] ax = new double[p.n];
      p.grid.multiply(x, ax);
      double off = 0;
      for (int c = 0; c < p.n; c++) {
        off += (b[c] - ax[c]) * (b[c] - ax[c]);
      }
      assertTrue(Math.sqrt(off / p.n) < 1.1e-6, "residual " + Math.sqrt(off / p.n));
      assertTrue(iterations <= 30, size + ": " + iterations);
    }
  }

  @Test
  void operatorAndCycleAreSymmetricAndPositive() {
    Problem p = new Problem(16, 5);
    p.grid.refresh(p.between, p.own);
    double[] u = p.random(1);
    double[] v = p.random(2);
    double[] au = new double[p.n];
    double[] av = new double[p.n];
    p.grid.multiply(u, au);
    p.grid.multiply(v, av);
    assertEquals(dot(u, av), dot(v, au), 1e-10 * Math.sqrt(dot(au, au) * dot(v, v)));
    p.grid.cycle(u, au);
    p.grid.cycle(v, av);
    assertEquals(dot(u, av), dot(v, au), 1e-10 * Math.sqrt(dot(au, au) * dot(v, v)));
    assertTrue(dot(u, au) > 0);
  }

  @Test
  void cellsWithoutCoefficientsTakeNoPart() {
    Problem p = new Problem(8, 1);
    int[] out = {p.n - 1, p.n / 2};
    p.grid.refresh(p.between, p.own);
    int all = p.grid.active();
    p.own[0] = 1;
    java.util.Arrays.fill(p.between, 0);
    java.util.Arrays.fill(p.own, 1, p.n, 0);
    p.grid.refresh(p.between, p.own);
    assertEquals(p.n, all);
    assertEquals(1, p.grid.active());
    double[] x = new double[p.n];
    double[] b = new double[p.n];
    b[0] = 3;
    b[out[0]] = 7;
    new ConjugateGradients(p.grid).solve(b, x, new StopRule(1e-9, 1e-9, 5));
    assertEquals(3, x[0], 1e-12);
    assertEquals(0, x[out[0]]);
    assertEquals(0, x[out[1]]);
  }

  @Test
  void solvingAgainAllocatesNothing() {
    Problem p = new Problem(16, 5);
    ConjugateGradients solver = new ConjugateGradients(p.grid);
    double[] b = p.random(5);
    double[] x = new double[p.n];
    StopRule stop = new StopRule(1e-6, 1e-6, 60);
    com.sun.management.ThreadMXBean threads =
        (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
    long taken = Long.MAX_VALUE;
    for (int i = 0; i < 3; i++) {
      java.util.Arrays.fill(x, 0);
      long before = threads.getCurrentThreadAllocatedBytes();
      p.grid.refresh(p.between, p.own);
      solver.solve(b, x, stop);
      taken = Math.min(taken, threads.getCurrentThreadAllocatedBytes() - before);
    }
    assertTrue(taken < 8 * p.n / 10, "bytes " + taken);
  }

  @Test
  void theCeilingIsAnError() {
    Problem p = new Problem(16, 5);
    p.grid.refresh(p.between, p.own);
    ConjugateGradients solver = new ConjugateGradients(p.grid);
    StopRule stop = new StopRule(1e-12, 1e-12, 2);
    assertThrows(
        IllegalStateException.class, () -> solver.solve(p.random(3), new double[p.n], stop));
  }

  private static double dot(double[] a, double[] b) {
    double s = 0;
    for (int i = 0; i < a.length; i++) {
      s += a[i] * b[i];
    }
    return s;
  }
}

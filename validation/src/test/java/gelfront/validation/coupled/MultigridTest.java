// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.coupled;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MultigridTest {
  /**
   * A cube of cells, those with i under half of one kind and conductance 1, the rest of another.
   */
  private record Cube(Graph graph, int[] places, double[] g) {
    static Cube of(int n, double otherConductance) {
      int[] from = new int[3 * n * n * n];
      int[] to = new int[from.length];
      double[] g = new double[from.length];
      int[] places = new int[4 * n * n * n];
      int[] stride = {1, n, n * n};
      int e = 0;
      for (int c = 0; c < n * n * n; c++) {
        int[] at = {c % n, c / n % n, c / n / n};
        places[4 * c] = at[0] < n / 2 ? 0 : 1;
        for (int a = 0; a < 3; a++) {
          places[4 * c + 1 + a] = at[a];
          if (at[a] + 1 < n) {
            from[e] = c;
            to[e] = c + stride[a];
            g[e++] = at[0] + (a == 0 ? 1 : 0) < n / 2 ? 1 : otherConductance;
          }
        }
      }
      Graph graph = Graph.of(n * n * n, Arrays.copyOf(from, e), Arrays.copyOf(to, e));
      return new Cube(graph, places, Arrays.copyOf(g, e));
    }

    Multigrid hierarchy(double mass) {
      double[] m = new double[graph.nodes()];
      Arrays.fill(m, mass);
      Multigrid multigrid = new Multigrid(graph, places);
      multigrid.refresh(m, g);
      return multigrid;
    }
  }

  private static double[] random(int n, long seed) {
    return new Random(seed).doubles(n, -1, 1).toArray();
  }

  private static double dot(double[] a, double[] b) {
    double s = 0;
    for (int i = 0; i < a.length; i++) {
      s += a[i] * b[i];
    }
    return s;
  }

  @Test
  void aCycleIsSymmetricAndPositive() {
    Multigrid m = Cube.of(13, 300).hierarchy(0.01);
    double[] a = random(13 * 13 * 13, 1);
    double[] b = random(13 * 13 * 13, 2);
    double[] za = new double[a.length];
    double[] zb = new double[b.length];

    m.cycle(a, za);
    m.cycle(b, zb);

    assertEquals(dot(a, zb), dot(za, b), 1e-11 * Math.sqrt(dot(a, za) * dot(b, zb)));
    assertTrue(dot(a, za) > 0 && dot(b, zb) > 0);
  }

  /** For nine digits; eight times the cells take no more. */
  @ParameterizedTest
  @CsvSource({"16, 1, 15", "32, 1, 15", "16, 1000, 25", "32, 1000, 25"})
  void fewIterations(int n, double contrast, int ceiling) {
    Cube cube = Cube.of(n, contrast);
    Multigrid m = cube.hierarchy(1e-3);
    double[] wanted = random(n * n * n, 3);
    double[] r = new double[wanted.length];
    double[] x = new double[wanted.length];
    ConjugateGradients solver = new ConjugateGradients(r.length);
    m.multiply(wanted, r);

    solver.solve(m, r, x, 1e-9);

    for (int i = 0; i < x.length; i++) {
      assertEquals(wanted[i], x[i], 1e-6);
    }
    assertTrue(solver.iterations() <= ceiling, n + " cells a side: " + solver.iterations());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.coupled;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One symmetric V-cycle for (mass + conduction) x = r: Gauss-Seidel forth, the coarse cells, and
 * Gauss-Seidel back. Coarse cells are those of {@link Aggregation}; their conductances are sums
 * times 0.5, since the way from middle to middle doubles (Braess, Computing 55 (1995) 379, from
 * memory, overcorrects in the same spirit).
 */
final class Multigrid {
  private static final int COARSEST = 60;
  private static final int MOST_LEVELS = 20;
  private static final int COARSEST_SWEEPS = 12;

  private final List<Level> levels = new ArrayList<>();

  /** A grid of the hierarchy; {@code up} leads to the next coarser one and is null on the last. */
  private static final class Level {
    final Graph graph;
    final Aggregation up;
    final double[] g;
    final double[] mass;
    final double[] diagonal;
    final double[] r;
    final double[] x;

    Level(Graph graph, Aggregation up) {
      this.graph = graph;
      this.up = up;
      g = new double[graph.edges()];
      mass = new double[graph.nodes()];
      diagonal = new double[graph.nodes()];
      r = new double[graph.nodes()];
      x = new double[graph.nodes()];
    }
  }

  /**
   * @param places kind, i, j, k of each cell, 4 by turns
   */
  Multigrid(Graph finest, int[] places) {
    Graph graph = finest;
    int[] at = places;
    while (true) {
      boolean last = graph.nodes() <= COARSEST || levels.size() == MOST_LEVELS;
      Aggregation up = last ? null : Aggregation.of(graph, at);
      levels.add(new Level(graph, up));
      if (last) {
        return;
      }
      graph = up.graph();
      at = up.places();
    }
  }

  /**
   * New coefficients; to be called before the first cycle.
   *
   * @param mass W/K per cell; not modified
   * @param g W/K per edge; not modified
   */
  void refresh(double[] mass, double[] g) {
    Level finest = levels.get(0);
    System.arraycopy(mass, 0, finest.mass, 0, mass.length);
    System.arraycopy(g, 0, finest.g, 0, g.length);
    for (int l = 0; l < levels.size(); l++) {
      Level level = levels.get(l);
      level.graph.diagonal(level.mass, level.g, level.diagonal);
      if (level.up != null) {
        coarsen(level, levels.get(l + 1));
      }
    }
  }

  private static void coarsen(Level fine, Level coarse) {
    Arrays.fill(coarse.mass, 0);
    Arrays.fill(coarse.g, 0);
    for (int i = 0; i < fine.mass.length; i++) {
      coarse.mass[fine.up.of()[i]] += fine.mass[i];
    }
    for (int e = 0; e < fine.g.length; e++) {
      int c = fine.up.edgeOf()[e];
      if (c >= 0) {
        coarse.g[c] += 0.5 * fine.g[e];
      }
    }
  }

  /** out = A x with the finest level's coefficients. */
  void multiply(double[] x, double[] out) {
    Level finest = levels.get(0);
    finest.graph.multiply(finest.diagonal, finest.g, x, out);
  }

  /** z from r by one cycle; r is not modified. */
  void cycle(double[] r, double[] z) {
    Level finest = levels.get(0);
    System.arraycopy(r, 0, finest.r, 0, r.length);
    cycle(0);
    System.arraycopy(finest.x, 0, z, 0, z.length);
  }

  private void cycle(int l) {
    Level level = levels.get(l);
    Arrays.fill(level.x, 0);
    if (level.up == null) {
      for (int s = 0; s < COARSEST_SWEEPS; s++) {
        forth(level);
        back(level);
      }
      return;
    }
    forth(level);
    Level coarse = levels.get(l + 1);
    Arrays.fill(coarse.r, 0);
    for (int i = 0; i < level.x.length; i++) {
      double left =
          level.r[i]
              - level.diagonal[i] * level.x[i]
              + level.graph.fromNeighbours(i, level.g, level.x);
      coarse.r[level.up.of()[i]] += left;
    }
    cycle(l + 1);
    for (int i = 0; i < level.x.length; i++) {
      level.x[i] += coarse.x[level.up.of()[i]];
    }
    back(level);
  }

  private static void forth(Level level) {
    for (int i = 0; i < level.x.length; i++) {
      relax(level, i);
    }
  }

  private static void back(Level level) {
    for (int i = level.x.length - 1; i >= 0; i--) {
      relax(level, i);
    }
  }

  private static void relax(Level level, int i) {
    level.x[i] = (level.r[i] + level.graph.fromNeighbours(i, level.g, level.x)) / level.diagonal[i];
  }
}

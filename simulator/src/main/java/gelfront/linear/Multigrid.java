// SPDX-License-Identifier: Apache-2.0
package gelfront.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A symmetric positive operator on cubes of several sizes, and one symmetric V-cycle for it:
 * Gauss-Seidel forth, cubes of twice the edge as the coarse grid, Gauss-Seidel back. Coarse edges
 * carry the sum of the fine ones times the fine way over the coarse one, a half where both ends
 * double (Braess, Computing 55 (1995) 379, from memory, overcorrects in the same spirit). Not for
 * several threads at once.
 */
public final class Multigrid {
  private static final int COARSEST = 8;
  private static final int COARSEST_SWEEPS = 12;

  private final List<Level> levels = new ArrayList<>();

  /**
   * @param graph whose nodes are the cubes
   */
  public Multigrid(Graph graph, Cubes cubes) {
    Graph g = graph;
    Cubes at = cubes;
    int edge = Math.max(1, cubes.smallest());
    while (at.count() > COARSEST && edge < 1 << 20) {
      edge *= 2;
      int[] up = new int[at.count()];
      Cubes coarse = at.gathered(edge, up);
      if (coarse.count() == at.count()) {
        continue;
      }
      Coarsening c = new Coarsening(g, at, up, coarse);
      levels.add(new Level(g, up, c.edgeUp, c.share));
      g = c.graph;
      at = coarse;
    }
    levels.add(new Level(g, new int[0], new int[0], new double[0]));
    for (int l = 1; l < levels.size(); l++) {
      levels.get(l).allocate();
    }
  }

  /** How the edges of one grid go into those of the next. */
  private static final class Coarsening {
    final int[] edgeUp;
    final double[] share;
    final Graph graph;

    Coarsening(Graph fine, Cubes from, int[] up, Cubes to) {
      int edges = fine.edges();
      edgeUp = new int[edges];
      share = new double[edges];
      long[] key = new long[edges];
      Arrays.fill(key, -1);
      for (int c = 0; c < fine.nodes(); c++) {
        for (int k = fine.start()[c]; k < fine.start()[c + 1]; k++) {
          int o = fine.other()[k];
          if (c < o && up[c] != up[o]) {
            key[fine.edge()[k]] = Edges.key(up[c], up[o]);
            double way = from.size()[c] + from.size()[o];
            share[fine.edge()[k]] = way / (to.size()[up[c]] + to.size()[up[o]]);
          }
        }
      }
      graph = Edges.graph(to.count(), key, edgeUp);
    }
  }

  /** Nodes of the finest grid. */
  public int nodes() {
    return levels.get(0).diagonal.length;
  }

  /** Nodes that take part: those with any coefficient. */
  public int active() {
    return levels.get(0).count;
  }

  /**
   * New coefficients.
   *
   * @param between per edge, not negative; kept, not modified
   * @param own per node, what ties it to zero, not negative; kept, not modified
   */
  public void refresh(double[] between, double[] own) {
    Level finest = levels.get(0);
    finest.between = between;
    finest.own = own;
    finest.prepare();
    for (int l = 0; l + 1 < levels.size(); l++) {
      levels.get(l).coarsenInto(levels.get(l + 1));
      levels.get(l + 1).prepare();
    }
  }

  /** out = A x on the nodes that take part; returns x A x. */
  double multiply(double[] x, double[] out) {
    return levels.get(0).multiply(x, out);
  }

  /** The nodes that take part are the first {@link #active()} of these. */
  int[] activeNodes() {
    return levels.get(0).active;
  }

  /** One cycle for A z = r from z = 0; r is not modified. Returns r z. */
  double cycle(double[] r, double[] z) {
    levels.get(0).take(r);
    int last = levels.size() - 1;
    for (int l = 0; l < last; l++) {
      levels.get(l).down(levels.get(l + 1));
    }
    levels.get(last).settle(COARSEST_SWEEPS);
    for (int l = last - 1; l >= 0; l--) {
      levels.get(l).up(levels.get(l + 1));
    }
    return levels.get(0).give(r, z);
  }
}

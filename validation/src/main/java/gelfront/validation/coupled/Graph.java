// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.coupled;

import java.util.Arrays;

/**
 * Cells and the faces between them, each face once as an edge and listed with both of its cells.
 *
 * @param nodes cells
 * @param from one cell of each edge; length edges
 * @param to the other one; length edges
 * @param start where a cell's faces begin in the next two; length nodes + 1
 * @param other the cell beyond each of a cell's faces; length 2 edges
 * @param edge its edge; length 2 edges
 */
record Graph(int nodes, int[] from, int[] to, int[] start, int[] other, int[] edge) {

  static Graph of(int nodes, int[] from, int[] to) {
    int[] start = new int[nodes + 1];
    for (int e = 0; e < from.length; e++) {
      start[from[e] + 1]++;
      start[to[e] + 1]++;
    }
    for (int i = 0; i < nodes; i++) {
      start[i + 1] += start[i];
    }
    int[] next = Arrays.copyOf(start, nodes);
    int[] other = new int[2 * from.length];
    int[] edge = new int[2 * from.length];
    for (int e = 0; e < from.length; e++) {
      other[next[from[e]]] = to[e];
      edge[next[from[e]]++] = e;
      other[next[to[e]]] = from[e];
      edge[next[to[e]]++] = e;
    }
    return new Graph(nodes, from, to, start, other, edge);
  }

  int edges() {
    return from.length;
  }

  /** W into each cell: out += sum of g (t_other - t). What one side gains the other one loses. */
  void addFluxes(double[] g, double[] t, double[] out) {
    for (int e = 0; e < from.length; e++) {
      double w = g[e] * (t[to[e]] - t[from[e]]);
      out[from[e]] += w;
      out[to[e]] -= w;
    }
  }

  /** Per cell, mass plus the sum of its conductances. */
  void diagonal(double[] mass, double[] g, double[] out) {
    System.arraycopy(mass, 0, out, 0, nodes);
    for (int e = 0; e < from.length; e++) {
      out[from[e]] += g[e];
      out[to[e]] += g[e];
    }
  }

  /** out = (diagonal - conductances) x. */
  void multiply(double[] diagonal, double[] g, double[] x, double[] out) {
    for (int i = 0; i < nodes; i++) {
      out[i] = diagonal[i] * x[i] - fromNeighbours(i, g, x);
    }
  }

  double fromNeighbours(int i, double[] g, double[] x) {
    double s = 0;
    for (int at = start[i]; at < start[i + 1]; at++) {
      s += g[edge[at]] * x[other[at]];
    }
    return s;
  }
}

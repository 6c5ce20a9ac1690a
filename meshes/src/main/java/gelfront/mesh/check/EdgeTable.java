// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import gelfront.mesh.TriangleMesh;

/**
 * Which triangles meet at which edge. Half-edge h = 3 t + c runs from corner c of triangle t to its
 * next corner; the half-edges of one undirected edge form a ring.
 */
final class EdgeTable {
  private final TriangleMesh mesh;
  private final int[] ring;
  private final int[] uses;

  EdgeTable(TriangleMesh mesh) {
    this.mesh = mesh;
    int n = 3 * mesh.triangleCount();
    ring = new int[n];
    uses = new int[n];
    int[] byHigh = new int[n];
    for (int h = 0; h < n; h++) {
      byHigh[h] = h;
    }
    byHigh = sorted(byHigh, false);
    link(sorted(byHigh, true));
  }

  /** Half-edges in rising order of their lower or higher vertex, ties in the order given. */
  private int[] sorted(int[] order, boolean byLower) {
    int[] next = new int[mesh.vertexCount() + 1];
    for (int h : order) {
      next[end(h, byLower) + 1]++;
    }
    for (int v = 0; v < mesh.vertexCount(); v++) {
      next[v + 1] += next[v];
    }
    int[] out = new int[order.length];
    for (int h : order) {
      out[next[end(h, byLower)]++] = h;
    }
    return out;
  }

  private int end(int h, boolean lower) {
    return lower ? Math.min(from(h), to(h)) : Math.max(from(h), to(h));
  }

  /** Rings the neighbours in the list that share both ends. */
  private void link(int[] order) {
    int first = 0;
    for (int i = 1; i <= order.length; i++) {
      if (i < order.length
          && end(order[i], true) == end(order[first], true)
          && end(order[i], false) == end(order[first], false)) {
        continue;
      }
      for (int k = first; k < i; k++) {
        ring[order[k]] = order[k + 1 < i ? k + 1 : first];
        uses[order[k]] = i - first;
      }
      first = i;
    }
  }

  int from(int h) {
    return mesh.corner(h / 3, h % 3);
  }

  int to(int h) {
    return mesh.corner(h / 3, (h + 1) % 3);
  }

  int count() {
    return uses.length;
  }

  /** Number of triangles at this half-edge's edge. */
  int uses(int h) {
    return uses[h];
  }

  /** The next half-edge of the same edge; itself where it is alone. */
  int other(int h) {
    return ring[h];
  }
}

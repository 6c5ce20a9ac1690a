// SPDX-License-Identifier: Apache-2.0
package gelfront.linear;

import java.util.Arrays;

/**
 * Nodes and the edges between them. A node's entries stand together: entry {@code k} from {@code
 * start[node]} on leads to {@code other[k]} along edge {@code edge[k]}, first to all nodes before
 * the node itself, from {@code after[node]} on to those behind it. Every edge has two entries.
 *
 * @param start first entry per node, and their number at the end; length nodes + 1
 * @param after first entry per node that leads to a node of a higher number; length nodes
 * @param other node at the far end, per entry
 * @param edge number of the edge, per entry
 */
public record Graph(int[] start, int[] after, int[] other, int[] edge) {
  /**
   * @param a one end per edge
   * @param b the other end, never the same node
   */
  public static Graph of(int nodes, int[] a, int[] b) {
    int[] start = new int[nodes + 1];
    int[] before = new int[nodes];
    for (int e = 0; e < a.length; e++) {
      start[a[e] + 1]++;
      start[b[e] + 1]++;
      before[Math.max(a[e], b[e])]++;
    }
    for (int n = 0; n < nodes; n++) {
      start[n + 1] += start[n];
    }
    int[] lower = Arrays.copyOf(start, nodes);
    int[] after = new int[nodes];
    Arrays.setAll(after, n -> start[n] + before[n]);
    int[] higher = after.clone();
    int[] other = new int[2 * a.length];
    int[] edge = new int[2 * a.length];
    for (int e = 0; e < a.length; e++) {
      int low = Math.min(a[e], b[e]);
      int high = Math.max(a[e], b[e]);
      other[higher[low]] = high;
      edge[higher[low]++] = e;
      other[lower[high]] = low;
      edge[lower[high]++] = e;
    }
    return new Graph(start, after, other, edge);
  }

  public int nodes() {
    return start.length - 1;
  }

  public int edges() {
    return edge.length / 2;
  }
}

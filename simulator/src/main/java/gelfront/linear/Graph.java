package gelfront.linear;

import java.util.Arrays;

/**
 * Nodes and the edges between them. A node's entries stand together: entry {@code k} from {@code
 * start[node]} on leads to {@code other[k]} along edge {@code edge[k]}. Every edge has two entries.
 *
 * @param start first entry per node, and their number at the end; length nodes + 1
 * @param other node at the far end, per entry
 * @param edge number of the edge, per entry
 */
public record Graph(int[] start, int[] other, int[] edge) {
  /**
   * @param a one end per edge
   * @param b the other end, never the same node
   */
  public static Graph of(int nodes, int[] a, int[] b) {
    int[] start = new int[nodes + 1];
    for (int e = 0; e < a.length; e++) {
      start[a[e] + 1]++;
      start[b[e] + 1]++;
    }
    for (int n = 0; n < nodes; n++) {
      start[n + 1] += start[n];
    }
    int[] at = Arrays.copyOf(start, nodes);
    int[] other = new int[2 * a.length];
    int[] edge = new int[2 * a.length];
    for (int e = 0; e < a.length; e++) {
      other[at[a[e]]] = b[e];
      edge[at[a[e]]++] = e;
      other[at[b[e]]] = a[e];
      edge[at[b[e]]++] = e;
    }
    return new Graph(start, other, edge);
  }

  public int nodes() {
    return start.length - 1;
  }

  public int edges() {
    return edge.length / 2;
  }
}

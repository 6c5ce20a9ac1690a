// SPDX-License-Identifier: Apache-2.0
package gelfront.linear;

import java.util.Arrays;

/** Edges found several times over, as pairs of nodes in one long each, made into a graph. */
public final class Edges {
  private Edges() {}

  /** The pair as one number; a < b. */
  public static long key(int a, int b) {
    return (long) Math.min(a, b) << 32 | Math.max(a, b);
  }

  /**
   * @param keys pairs as {@link #key} gives them, in any order, any number of times; -1 for none
   * @param number gets the edge of each, -1 for none; as long as {@code keys}
   */
  public static Graph graph(int nodes, long[] keys, int[] number) {
    long[] sorted = keys.clone();
    Arrays.sort(sorted);
    int n = 0;
    for (int i = 0; i < sorted.length; i++) {
      if (sorted[i] >= 0 && (n == 0 || sorted[i] != sorted[n - 1])) {
        sorted[n++] = sorted[i];
      }
    }
    int[] a = new int[n];
    int[] b = new int[n];
    for (int e = 0; e < n; e++) {
      a[e] = (int) (sorted[e] >>> 32);
      b[e] = (int) sorted[e];
    }
    for (int i = 0; i < keys.length; i++) {
      number[i] = keys[i] < 0 ? -1 : Arrays.binarySearch(sorted, 0, n, keys[i]);
    }
    return Graph.of(nodes, a, b);
  }
}

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
   * Edges are numbered by their lower node, then by the other.
   *
   * @param keys pairs as {@link #key} gives them, in any order, any number of times; -1 for none
   * @param number gets the edge of each, -1 for none; as long as {@code keys}
   */
  public static Graph graph(int nodes, long[] keys, int[] number) {
    int[] from = starts(nodes, keys);
    long[] found = byLowerNode(from, keys, number);
    int[] a = new int[found.length];
    int[] b = new int[found.length];
    int n = 0;
    for (int node = 0; node < nodes; node++) {
      Arrays.sort(found, from[node], from[node + 1]);
      for (int i = from[node]; i < from[node + 1]; i++) {
        int other = (int) (found[i] >>> 32);
        if (n == 0 || a[n - 1] != node || b[n - 1] != other) {
          a[n] = node;
          b[n++] = other;
        }
        number[(int) found[i]] = n - 1;
      }
    }
    return Graph.of(nodes, Arrays.copyOf(a, n), Arrays.copyOf(b, n));
  }

  /** Where each lower node's pairs begin; length nodes + 1. */
  private static int[] starts(int nodes, long[] keys) {
    int[] from = new int[nodes + 1];
    for (long key : keys) {
      if (key >= 0) {
        from[(int) (key >>> 32) + 1]++;
      }
    }
    for (int node = 0; node < nodes; node++) {
      from[node + 1] += from[node];
    }
    return from;
  }

  /** Of each pair its higher node, and below that its place in {@code keys}. */
  private static long[] byLowerNode(int[] from, long[] keys, int[] number) {
    int[] next = from.clone();
    long[] found = new long[from[from.length - 1]];
    for (int i = 0; i < keys.length; i++) {
      number[i] = -1;
      if (keys[i] >= 0) {
        found[next[(int) (keys[i] >>> 32)]++] = (keys[i] & 0xffffffffL) << 32 | i;
      }
    }
    return found;
  }
}

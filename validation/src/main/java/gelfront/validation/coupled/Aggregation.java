// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.coupled;

import java.util.Arrays;

/**
 * A graph whose cells are those of a finer one put together, two by two by two where they lie side
 * by side; plastisol and mould stay apart.
 *
 * @param graph the coarse cells and their faces
 * @param places kind, i, j, k of each coarse cell, 4 by turns
 * @param of coarse cell of each fine cell
 * @param edgeOf coarse edge of each fine edge, -1 inside a coarse cell
 */
record Aggregation(Graph graph, int[] places, int[] of, int[] edgeOf) {

  /**
   * @param places kind, i, j, k of each fine cell, 4 by turns; not negative, under 2^20
   */
  static Aggregation of(Graph fine, int[] places) {
    long[] keys = new long[fine.nodes()];
    for (int i = 0; i < keys.length; i++) {
      keys[i] = key(places, i);
    }
    long[] distinct = distinct(keys);
    int[] of = new int[keys.length];
    int[] coarse = new int[4 * distinct.length];
    for (int i = 0; i < keys.length; i++) {
      of[i] = Arrays.binarySearch(distinct, keys[i]);
      coarse[4 * of[i]] = places[4 * i];
      for (int a = 1; a < 4; a++) {
        coarse[4 * of[i] + a] = places[4 * i + a] >> 1;
      }
    }
    int[] edgeOf = new int[fine.edges()];
    return new Aggregation(joined(fine, of, distinct.length, edgeOf), coarse, of, edgeOf);
  }

  private static long key(int[] places, int i) {
    long key = places[4 * i];
    for (int a = 3; a > 0; a--) {
      key = key << 20 | places[4 * i + a] >> 1;
    }
    return key;
  }

  private static long[] distinct(long[] keys) {
    long[] sorted = keys.clone();
    Arrays.sort(sorted);
    int n = 0;
    for (int i = 0; i < sorted.length; i++) {
      if (i == 0 || sorted[i] != sorted[i - 1]) {
        sorted[n++] = sorted[i];
      }
    }
    return Arrays.copyOf(sorted, n);
  }

  private static Graph joined(Graph fine, int[] of, int nodes, int[] edgeOf) {
    long[] pairs = new long[fine.edges()];
    int crossing = 0;
    for (int e = 0; e < pairs.length; e++) {
      if (of[fine.from()[e]] != of[fine.to()[e]]) {
        pairs[crossing++] = pair(fine, of, e);
      }
    }
    long[] distinct = distinct(Arrays.copyOf(pairs, crossing));
    for (int e = 0; e < edgeOf.length; e++) {
      boolean inside = of[fine.from()[e]] == of[fine.to()[e]];
      edgeOf[e] = inside ? -1 : Arrays.binarySearch(distinct, pair(fine, of, e));
    }
    int[] from = new int[distinct.length];
    int[] to = new int[distinct.length];
    for (int e = 0; e < from.length; e++) {
      from[e] = (int) (distinct[e] >> 32);
      to[e] = (int) distinct[e];
    }
    return Graph.of(nodes, from, to);
  }

  private static long pair(Graph fine, int[] of, int e) {
    int a = of[fine.from()[e]];
    int b = of[fine.to()[e]];
    return (long) Math.min(a, b) << 32 | Math.max(a, b);
  }
}

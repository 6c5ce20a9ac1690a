// SPDX-License-Identifier: Apache-2.0
package gelfront.linear;

import java.util.Arrays;

/**
 * One grid of a hierarchy. Nodes without any coefficient take no part. Cubes that are already as
 * wide as those of the next grid are smoothed there and not here, unless they lie beside smaller
 * ones: on flowing liquid of the standard case that takes a fifth more iterations, each at half the
 * cost.
 *
 * <pre>  (A x)_c = own_c x_c + sum over edges of between_e (x_c - x_other)</pre>
 */
final class Level {
  private static final byte SMOOTHED = 0;
  private static final byte BESIDE = 1;
  private static final byte FAR = 2;

  final Graph graph;

  /** Node of the next coarser grid; none on the coarsest. */
  final int[] up;

  /** Edge of the next coarser grid that an edge goes into, -1 within a coarse node. */
  private final int[] edgeUp;

  /** What an edge counts there: its length over the coarse one's. */
  private final double[] share;

  final double[] diagonal;

  /** One over it, where it is positive. */
  private final double[] inverse;

  private final double[] r;
  private final double[] x;
  final int[] active;
  int count;

  /** How a node is worked on here; the lists below are the active ones of each kind. */
  private final byte[] kind;

  private final int[] smoothed;
  private int smoothedCount;

  /** Not smoothed, but next to nodes that are. */
  private final int[] beside;

  private int besideCount;
  private final int[] far;
  private int farCount;
  double[] between = {};
  double[] own = {};

  /** Coefficient per entry of the graph. */
  private final double[] value;

  Level(Graph graph, int[] up, int[] edgeUp, double[] share) {
    int n = graph.nodes();
    this.graph = graph;
    this.up = up;
    this.edgeUp = edgeUp;
    this.share = share;
    diagonal = new double[n];
    inverse = new double[n];
    r = new double[n];
    x = new double[n];
    active = new int[n];
    value = new double[graph.other().length];
    kind = kinds();
    smoothed = new int[n];
    beside = new int[n];
    far = new int[n];
  }

  /** Nodes that are gathered on the next grid, and those next to them, are smoothed on this one. */
  private byte[] kinds() {
    byte[] kinds = new byte[diagonal.length];
    if (up.length == 0) {
      return kinds;
    }
    int[] gathered = new int[kinds.length];
    for (int to : up) {
      gathered[to]++;
    }
    for (int c = 0; c < kinds.length; c++) {
      kinds[c] = gathered[up[c]] > 1 ? SMOOTHED : FAR;
    }
    markBeside(kinds);
    for (int c = 0; c < kinds.length; c++) {
      kinds[c] = kinds[c] == BESIDE ? SMOOTHED : kinds[c];
    }
    markBeside(kinds);
    return kinds;
  }

  private void markBeside(byte[] kinds) {
    for (int c = 0; c < kinds.length; c++) {
      for (int k = graph.start()[c]; kinds[c] == FAR && k < graph.start()[c + 1]; k++) {
        kinds[c] = kinds[graph.other()[k]] == SMOOTHED ? BESIDE : FAR;
      }
    }
  }

  void allocate() {
    between = new double[graph.edges()];
    own = new double[diagonal.length];
  }

  /** Diagonal and list of the nodes that take part. */
  void prepare() {
    count = 0;
    smoothedCount = 0;
    besideCount = 0;
    farCount = 0;
    int[] start = graph.start();
    int[] edge = graph.edge();
    for (int c = 0; c < diagonal.length; c++) {
      double sum = own[c];
      for (int k = start[c]; k < start[c + 1]; k++) {
        value[k] = between[edge[k]];
        sum += value[k];
      }
      diagonal[c] = sum;
      if (sum > 0) {
        inverse[c] = 1 / sum;
        active[count++] = c;
        switch (kind[c]) {
          case SMOOTHED -> smoothed[smoothedCount++] = c;
          case BESIDE -> beside[besideCount++] = c;
          default -> far[farCount++] = c;
        }
      } else {
        x[c] = 0;
      }
    }
  }

  /** Galerkin sums, edges by their length: from middle to middle the way is longer. */
  void coarsenInto(Level coarse) {
    Arrays.fill(coarse.between, 0);
    Arrays.fill(coarse.own, 0);
    for (int a = 0; a < count; a++) {
      coarse.own[up[active[a]]] += own[active[a]];
    }
    for (int e = 0; e < between.length; e++) {
      if (edgeUp[e] >= 0) {
        coarse.between[edgeUp[e]] += share[e] * between[e];
      }
    }
  }

  /** out = A v on the nodes that take part; returns v A v. */
  double multiply(double[] v, double[] out) {
    double product = 0;
    for (int a = 0; a < count; a++) {
      int c = active[a];
      out[c] = diagonal[c] * v[c] - fromNeighbours(v, c);
      product += v[c] * out[c];
    }
    return product;
  }

  /** Residuals that a cycle starts from; not modified. */
  void take(double[] residuals) {
    for (int a = 0; a < count; a++) {
      int c = active[a];
      r[c] = residuals[c];
    }
  }

  /** What a cycle came to; returns residuals times z. */
  double give(double[] residuals, double[] z) {
    double product = 0;
    for (int a = 0; a < count; a++) {
      int c = active[a];
      z[c] = x[c];
      product += residuals[c] * z[c];
    }
    return product;
  }

  /** On the way to coarser grids. */
  void down(Level coarse) {
    forthFromZero();
    restrictInto(coarse);
  }

  /** On the way back from them. */
  void up(Level coarse) {
    addFrom(coarse);
    back();
  }

  /** On the coarsest grid: sweeps forth and back from x = 0. */
  void settle(int sweeps) {
    forthFromZero();
    back();
    for (int s = 1; s < sweeps; s++) {
      forth();
      back();
    }
  }

  private double fromNeighbours(double[] v, int c) {
    return from(v, graph.start()[c], graph.start()[c + 1]);
  }

  private double from(double[] v, int first, int end) {
    int[] other = graph.other();
    double sum = 0;
    for (int k = first; k < end; k++) {
      sum += value[k] * v[other[k]];
    }
    return sum;
  }

  /** Forth from x = 0, when nodes further on count for nothing. */
  private void forthFromZero() {
    int[] start = graph.start();
    int[] after = graph.after();
    for (int a = 0; a < besideCount; a++) {
      x[beside[a]] = 0;
    }
    for (int a = 0; a < farCount; a++) {
      x[far[a]] = 0;
    }
    for (int a = 0; a < smoothedCount; a++) {
      int c = smoothed[a];
      x[c] = upTo(c, r[c], start[c], after[c]);
    }
  }

  private void forth() {
    int[] start = graph.start();
    int[] after = graph.after();
    for (int a = 0; a < smoothedCount; a++) {
      int c = smoothed[a];
      x[c] = upTo(c, r[c] + from(x, after[c], start[c + 1]), start[c], after[c]);
    }
  }

  private void back() {
    int[] start = graph.start();
    int[] after = graph.after();
    for (int a = smoothedCount - 1; a >= 0; a--) {
      int c = smoothed[a];
      x[c] = downTo(c, r[c] + from(x, start[c], after[c]), after[c], start[c + 1]);
    }
  }

  // A node waits for the one before it, so that one is added last, and one over the diagonal is
  // multiplied by: without both a sweep took a third longer.

  /** A node's new value on the way forth; entries from first to end. */
  private double upTo(int c, double known, int first, int end) {
    int[] other = graph.other();
    double sum = known;
    for (int k = first; k < end; k++) {
      sum += value[k] * x[other[k]];
    }
    return sum * inverse[c];
  }

  /** A node's new value on the way back; entries from end to first. */
  private double downTo(int c, double known, int first, int end) {
    int[] other = graph.other();
    double sum = known;
    for (int k = end - 1; k >= first; k--) {
      sum += value[k] * x[other[k]];
    }
    return sum * inverse[c];
  }

  /** What {@link #forthFromZero} leaves: each node is right but for the nodes after it. */
  private void restrictInto(Level coarse) {
    int[] start = graph.start();
    int[] after = graph.after();
    for (int a = 0; a < coarse.count; a++) {
      coarse.r[coarse.active[a]] = 0;
    }
    for (int a = 0; a < smoothedCount; a++) {
      int c = smoothed[a];
      coarse.r[up[c]] += from(x, after[c], start[c + 1]);
    }
    for (int a = 0; a < besideCount; a++) {
      int c = beside[a];
      coarse.r[up[c]] += r[c] + fromNeighbours(x, c);
    }
    for (int a = 0; a < farCount; a++) {
      coarse.r[up[far[a]]] += r[far[a]];
    }
  }

  private void addFrom(Level coarse) {
    for (int a = 0; a < smoothedCount; a++) {
      int c = smoothed[a];
      x[c] += coarse.x[up[c]];
    }
    for (int a = 0; a < besideCount; a++) {
      x[beside[a]] = coarse.x[up[beside[a]]];
    }
    for (int a = 0; a < farCount; a++) {
      x[far[a]] = coarse.x[up[far[a]]];
    }
  }
}

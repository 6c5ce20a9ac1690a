package gelfront.linear;

import java.util.Arrays;

/**
 * One grid of a hierarchy. Nodes without any coefficient take no part.
 *
 * <pre>  (A x)_c = own_c x_c + sum over edges of between_e (x_c - x_other)</pre>
 */
final class Level {
  final Graph graph;

  /** Node of the next coarser grid; null on the coarsest. */
  final int[] up;

  /** Edge of the next coarser grid that an edge goes into, -1 within a coarse node. */
  private final int[] edgeUp;

  /** What an edge counts there: its length over the coarse one's. */
  private final double[] share;

  final double[] diagonal;
  final double[] r;
  final double[] x;
  final int[] active;
  int count;
  double[] between;
  double[] own;

  /** Coefficient per entry of the graph. */
  private final double[] value;

  Level(Graph graph, int[] up, int[] edgeUp, double[] share) {
    int n = graph.nodes();
    this.graph = graph;
    this.up = up;
    this.edgeUp = edgeUp;
    this.share = share;
    diagonal = new double[n];
    r = new double[n];
    x = new double[n];
    active = new int[n];
    value = new double[graph.other().length];
  }

  void allocate() {
    between = new double[graph.edges()];
    own = new double[diagonal.length];
  }

  /** Diagonal and list of the nodes that take part. */
  void prepare() {
    count = 0;
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
        active[count++] = c;
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

  double fromNeighbours(double[] v, int c) {
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
  void forthFromZero() {
    int[] start = graph.start();
    int[] after = graph.after();
    for (int a = 0; a < count; a++) {
      int c = active[a];
      x[c] = (r[c] + from(x, start[c], after[c])) / diagonal[c];
    }
  }

  void forth() {
    for (int a = 0; a < count; a++) {
      int c = active[a];
      x[c] = (r[c] + fromNeighbours(x, c)) / diagonal[c];
    }
  }

  void back() {
    for (int a = count - 1; a >= 0; a--) {
      int c = active[a];
      x[c] = (r[c] + fromNeighbours(x, c)) / diagonal[c];
    }
  }

  /** What {@link #forthFromZero} leaves: each node is right but for the nodes after it. */
  void restrictInto(Level coarse) {
    int[] start = graph.start();
    int[] after = graph.after();
    for (int a = 0; a < coarse.count; a++) {
      coarse.r[coarse.active[a]] = 0;
    }
    for (int a = 0; a < count; a++) {
      int c = active[a];
      coarse.r[up[c]] += from(x, after[c], start[c + 1]);
    }
  }

  void addFrom(Level coarse) {
    for (int a = 0; a < count; a++) {
      int c = active[a];
      x[c] += coarse.x[up[c]];
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.material.HeatCurves;
import java.util.ArrayList;
import java.util.List;

/**
 * Where two fronts met: full blocks side by side that were filled at about the same time by liquid
 * that came towards each other.
 */
final class Welds {
  /** Cosine between both ways, below which they came against each other. */
  private static final double AGAINST = -0.3;

  private final FillNet net;
  private final Front front;
  private final HeatCurves curves;

  Welds(FillNet net, Front front, HeatCurves curves) {
    this.net = net;
    this.front = front;
    this.curves = curves;
  }

  /** Largest first. */
  List<FillRecord.Weld> find() {
    int[] root = new int[net.count()];
    boolean[] at = new boolean[root.length];
    for (int b = 0; b < root.length; b++) {
      root[b] = b;
    }
    for (int e = 0; e < net.low.length; e++) {
      if (meets(net.low[e], net.high[e])) {
        at[net.low[e]] = true;
        at[net.high[e]] = true;
      }
    }
    for (int b = 0; b < at.length; b++) {
      at[b] |= meetsImage(b);
    }
    for (int e = 0; e < net.low.length; e++) {
      if (at[net.low[e]] && at[net.high[e]]) {
        root[root(root, net.low[e])] = root(root, net.high[e]);
      }
    }
    return gather(root, at);
  }

  private static int root(int[] root, int b) {
    int r = b;
    while (root[r] != r) {
      root[r] = root[root[r]];
      r = root[r];
    }
    return r;
  }

  private boolean meets(int a, int b) {
    if (!front.full[a] || !front.full[b]) {
      return false;
    }
    double[] d = new double[3];
    double dot = 0;
    double la = 0;
    double lb = 0;
    double toB = 0;
    double toA = 0;
    for (int k = 0; k < 3; k++) {
      d[k] = net.middle[k][b] - net.middle[k][a];
      double wa = front.way[k][a];
      double wb = front.way[k][b];
      dot += wa * wb;
      la += wa * wa;
      lb += wb * wb;
      toB += wa * d[k];
      toA -= wb * d[k];
    }
    return toB > 0 && toA > 0 && dot < AGAINST * Math.sqrt(la * lb);
  }

  /** Comes against its own image in a plane of symmetry. */
  private boolean meetsImage(int b) {
    double squared = 0;
    for (int k = 0; k < 3; k++) {
      squared += front.way[k][b] * front.way[k][b];
    }
    boolean meets = false;
    for (int k = 0; k < 3 && front.full[b]; k++) {
      double w = front.way[k][b];
      boolean against = w < 0 && squared - 2 * w * w < AGAINST * squared;
      meets |= against && net.mirrored(b, k);
    }
    return meets;
  }

  private List<FillRecord.Weld> gather(int[] root, boolean[] at) {
    List<FillRecord.Weld> found = new ArrayList<>();
    for (int r = 0; r < root.length; r++) {
      List<Integer> cells = new ArrayList<>();
      double area = 0;
      double coldest = Double.POSITIVE_INFINITY;
      double time = 0;
      for (int b = 0; at[r] && root(root, r) == r && b < root.length; b++) {
        if (at[b] && root(root, b) == r) {
          area += 0.5 * net.area(b);
          coldest = Math.min(coldest, curves.temperature(front.arrived[b]));
          time = Math.max(time, front.filled[b]);
          for (int i = net.first[b]; i < net.first[b + 1]; i++) {
            cells.add(net.cells[i]);
          }
        }
      }
      if (!cells.isEmpty()) {
        int[] all = cells.stream().mapToInt(Integer::intValue).toArray();
        found.add(new FillRecord.Weld(all, area, coldest, time));
      }
    }
    found.sort((x, y) -> Double.compare(y.area(), x.area()));
    return found;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;

/**
 * Cells that hold air, or some of it, at the end: cooling takes them for plastisol as warm as the
 * liquid beside them.
 */
final class Remainder {
  private final FillNet net;
  private final Front front;
  private final HeatCurves curves;

  Remainder(FillNet net, Front front, HeatCurves curves) {
    this.net = net;
    this.front = front;
    this.curves = curves;
  }

  /**
   * @param state modified
   */
  void warm(ThermalState state) {
    int n = net.count();
    boolean[] known = new boolean[n];
    double[] h = new double[n];
    int[] queue = new int[n];
    int tail = 0;
    for (int b = 0; b < n; b++) {
      if (front.full[b] || front.content[b] > 0) {
        known[b] = true;
        h[b] = front.full[b] ? ofCells(b, state) : front.heat[b] / front.content[b];
        queue[tail++] = b;
      }
    }
    for (int head = 0; head < tail; head++) {
      int b = queue[head];
      for (int k = net.graph.start()[b]; k < net.graph.start()[b + 1]; k++) {
        int to = net.graph.other()[k];
        if (!known[to]) {
          known[to] = true;
          h[to] = h[b];
          queue[tail++] = to;
        }
      }
      if (!front.full[b]) {
        give(b, h[b], state);
      }
    }
  }

  private double ofCells(int b, ThermalState state) {
    double sum = 0;
    for (int i = net.first[b]; i < net.first[b + 1]; i++) {
      sum += net.cellVolume[net.cells[i]] * state.enthalpy[net.cells[i]];
    }
    return sum / net.volume[b];
  }

  private void give(int b, double h, ThermalState state) {
    double t = curves.temperature(h);
    for (int i = net.first[b]; i < net.first[b + 1]; i++) {
      state.enthalpy[net.cells[i]] = h;
      state.temperature[net.cells[i]] = t;
    }
  }
}

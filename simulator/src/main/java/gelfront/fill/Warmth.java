// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.feed.HeatCarry;
import gelfront.linear.Graph;
import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;
import java.util.Arrays;

/** The heat that liquid behind the front takes along; what has set in a block stays as it is. */
final class Warmth {
  private final FillNet net;
  private final HeatCurves curves;
  private final double noFlow;
  private final HeatCarry carry;
  private final double[] flux;
  private final double[] leaving;
  private final double[] entering;
  private final double[] enteringHeat;
  private final double[] mass;
  private final double[] heat;

  /**
   * @param enters J/m3 of what comes from outside
   */
  Warmth(FillNet net, HeatCurves curves, double noFlow, double enters) {
    this.net = net;
    this.curves = curves;
    this.noFlow = noFlow;
    carry = new HeatCarry(net.graph);
    int n = net.count();
    flux = new double[net.graph.other().length];
    leaving = new double[n];
    entering = new double[n];
    enteringHeat = new double[n];
    Arrays.fill(enteringHeat, enters);
    mass = new double[n];
    heat = new double[n];
  }

  /**
   * One step behind the front.
   *
   * @param state modified: temperature and enthalpy of full blocks
   * @param through m3/s from the lower block of an edge to the higher
   * @param enters m3/s from outside per block
   * @param warm gets W that come to each block which isn't full
   */
  void step(
      ThermalState state,
      Front front,
      double[] through,
      double[] enters,
      double dt,
      double[] warm) {
    sums(state, front);
    flows(front, through, enters);
    carry.carry(flux, entering, enteringHeat, leaving, dt, mass, heat);
    mix(state, front);
    Arrays.fill(warm, 0);
    for (int e = 0; e < through.length; e++) {
      int from = through[e] > 0 ? net.low[e] : net.high[e];
      int to = through[e] > 0 ? net.high[e] : net.low[e];
      if (!front.full[to] && through[e] != 0) {
        warm[to] += Math.abs(through[e]) * heat[from];
        front.cameFrom(from, to, Math.abs(through[e]) * dt);
      }
    }
    for (int b = 0; b < warm.length; b++) {
      warm[b] += front.full[b] ? 0 : enters[b] * enteringHeat[b];
    }
  }

  private void sums(ThermalState state, Front front) {
    Arrays.fill(mass, 0);
    Arrays.fill(heat, 0);
    for (int c = 0; c < net.of.length; c++) {
      int b = net.of[c];
      if (front.full[b] && state.temperature[c] > noFlow) {
        mass[b] += net.cellVolume[c];
        heat[b] += net.cellVolume[c] * state.enthalpy[c];
      }
    }
    for (int b = 0; b < mass.length; b++) {
      heat[b] = mass[b] > 0 ? heat[b] / mass[b] : 0;
    }
  }

  private void flows(Front front, double[] through, double[] enters) {
    Graph g = net.graph;
    for (int b = 0; b < leaving.length; b++) {
      leaving[b] = 0;
      entering[b] = front.full[b] ? Math.max(0, enters[b]) : 0;
      for (int k = g.start()[b]; k < g.start()[b + 1]; k++) {
        double q = through[g.edge()[k]];
        double out = g.other()[k] > b ? q : -q;
        boolean within = front.full[b] && front.full[g.other()[k]];
        flux[k] = within ? out : 0;
        leaving[b] += !within && front.full[b] ? Math.max(0, out) : 0;
      }
    }
  }

  private void mix(ThermalState state, Front front) {
    for (int c = 0; c < net.of.length; c++) {
      int b = net.of[c];
      if (front.full[b] && state.temperature[c] > noFlow) {
        double h = carry.mixed(b, state.enthalpy[c]);
        if (h != state.enthalpy[c]) {
          state.enthalpy[c] = h;
          state.temperature[c] = curves.temperature(h);
        }
      }
    }
  }
}

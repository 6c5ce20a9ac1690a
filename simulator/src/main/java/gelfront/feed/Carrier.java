// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.linear.Graph;
import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;
import java.util.Arrays;
import java.util.OptionalDouble;

/** Takes a step's flow from blocks to cells: their heat and mass, and the ledger. */
final class Carrier {
  private final Cavity cavity;
  private final HeatCurves curves;
  private final double[] volume;
  private final double[] mass;

  // taken before any use
  @SuppressWarnings("NullAway.Init")
  private Blocks blocks;

  @SuppressWarnings("NullAway.Init")
  private HeatCarry heatCarry;

  private double[] flux = {};
  private double[] entering = {};
  private double[] enteringHeat = {};
  private double[] leaving = {};
  private double[] blockMass = {};
  private double[] blockHeat = {};

  /**
   * @param mass of each cell, per mass at the start of the shot; modified
   */
  Carrier(Cavity cavity, HeatCurves curves, double[] volume, double[] mass) {
    this.cavity = cavity;
    this.curves = curves;
    this.volume = volume;
    this.mass = mass;
  }

  /**
   * @param shot J/m3 of what enters; absent: it is the surface's own
   */
  void carry(
      ThermalState state,
      Liquid liquid,
      Reach reach,
      Suction suction,
      double[] shrinks,
      Draw draw,
      OptionalDouble shot,
      double dt) {
    boolean[] joined = reach.joined();
    take(liquid.blocks());
    sums(joined, state.enthalpy);
    flows(suction, shot);
    double old = heat(state.enthalpy);
    double in = dt * heatEntering();
    toSet(reach, suction, shrinks, draw);
    heatCarry.carry(flux, entering, enteringHeat, leaving, dt, blockMass, blockHeat);
    setCells(reach, suction, shrinks, draw, dt, state);
    joinedCells(joined, state);
    state.ledger.add(heat(state.enthalpy) - old, 0, 0, -in);
  }

  private void change(ThermalState state, int c, double h) {
    if (h != state.enthalpy[c]) {
      state.enthalpy[c] = h;
      state.temperature[c] = curves.temperature(h);
    }
  }

  private void take(Blocks fresh) {
    if (fresh != blocks) {
      blocks = fresh;
      int n = fresh.count();
      heatCarry = new HeatCarry(fresh.graph);
      flux = new double[fresh.graph.other().length];
      entering = new double[n];
      enteringHeat = new double[n];
      leaving = new double[n];
      blockMass = new double[n];
      blockHeat = new double[n];
    }
  }

  private void sums(boolean[] joined, double[] h) {
    Arrays.fill(blockMass, 0);
    Arrays.fill(blockHeat, 0);
    for (int c = 0; c < joined.length; c++) {
      if (joined[c]) {
        double m = mass[c] * volume[c];
        blockMass[blocks.of[c]] += m;
        blockHeat[blocks.of[c]] += m * h[c];
      }
    }
    for (int b = 0; b < blockMass.length; b++) {
      blockHeat[b] = blockMass[b] > 0 ? blockHeat[b] / blockMass[b] : 0;
    }
  }

  private void flows(Suction suction, OptionalDouble shot) {
    Graph g = blocks.graph;
    for (int b = 0; b < entering.length; b++) {
      double in = suction.entering(b);
      entering[b] = Math.max(0, in);
      enteringHeat[b] = shot.orElse(blockHeat[b]);
      leaving[b] = Math.max(0, -in);
      for (int k = g.start()[b]; k < g.start()[b + 1]; k++) {
        flux[k] = suction.through(b, k);
      }
    }
  }

  /** What cells that set in this step still draw leaves the blocks beside them. */
  private void toSet(Reach reach, Suction suction, double[] shrinks, Draw draw) {
    boolean[] joined = reach.joined();
    for (int c = 0; c < joined.length; c++) {
      if (!joined[c] && shrinks[c] > 0) {
        double each = shrinks[c] / reach.joinedBeside(c);
        for (int f = cavity.faces(c) - 1; f >= 0; f--) {
          int to = cavity.across(c, f);
          if (joined[to]) {
            int b = blocks.of[to];
            leaving[b] += each * (1 - draw.givenShare(suction, b));
          }
        }
      }
    }
  }

  private void setCells(
      Reach reach, Suction suction, double[] shrinks, Draw draw, double dt, ThermalState state) {
    boolean[] joined = reach.joined();
    for (int c = 0; c < joined.length; c++) {
      if (joined[c] || !(shrinks[c] > 0)) {
        continue;
      }
      double each = dt * shrinks[c] / reach.joinedBeside(c);
      double m = mass[c] * volume[c];
      double heat = m * state.enthalpy[c];
      for (int f = cavity.faces(c) - 1; f >= 0; f--) {
        int from = cavity.across(c, f);
        if (joined[from]) {
          int b = blocks.of[from];
          double got = each * (1 - draw.givenShare(suction, b));
          m += got;
          heat += got * blockHeat[b];
        }
      }
      change(state, c, heat / m);
      mass[c] = m / volume[c];
    }
  }

  private void joinedCells(boolean[] joined, ThermalState state) {
    for (int c = 0; c < joined.length; c++) {
      if (joined[c]) {
        change(state, c, heatCarry.mixed(blocks.of[c], state.enthalpy[c]));
        mass[c] *= heatCarry.grows(blocks.of[c]);
      }
    }
  }

  /** J/s. */
  private double heatEntering() {
    double sum = 0;
    for (int b = 0; b < entering.length; b++) {
      sum += entering[b] * enteringHeat[b];
    }
    return sum;
  }

  private double heat(double[] h) {
    double sum = 0;
    for (int c = 0; c < h.length; c++) {
      sum += mass[c] * volume[c] * h[c];
    }
    return sum;
  }

  /** Air takes the place of what has sunk: its heat has gone on with the flow. */
  void empty(ThermalState state, boolean[] empty) {
    double gone = 0;
    for (int c = 0; c < empty.length; c++) {
      if (empty[c] && mass[c] > 0) {
        gone += mass[c] * volume[c] * state.enthalpy[c];
        mass[c] = 0;
      }
    }
    state.ledger.add(-gone, 0, 0, gone);
  }

  /** Liquid of enthalpy {@code shot} takes the place of the air. */
  void fill(ThermalState state, boolean[] empty, double shot) {
    double come = 0;
    for (int c = 0; c < empty.length; c++) {
      if (empty[c]) {
        mass[c] = 1;
        change(state, c, shot);
        come += volume[c] * shot;
      }
    }
    state.ledger.add(come, 0, 0, -come);
  }
}

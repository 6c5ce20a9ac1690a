// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.state.ThermalState;
import java.util.Arrays;

/**
 * What each cell contracts by, and what of it no liquid came for.
 *
 * <pre>  S = beta (max(T0, Tnf) - max(T1, Tnf)) V m / dt</pre>
 *
 * <p>m is a cell's mass, per mass at the start of the shot. A cell that conduction heated draws
 * nothing.
 */
final class Contraction {
  private final FeedLaw law;
  private final double[] volume;
  private final double[] mass;
  private final double[] rate;
  private final double[] demand;
  private final double[] unfed;
  private final float[] starved;
  private double dt;
  private float middle;

  /**
   * @param volume m3 per cell
   * @param mass per cell; read at each step
   */
  Contraction(FeedLaw law, double[] volume, double[] mass) {
    this.law = law;
    this.volume = volume;
    this.mass = mass;
    int n = volume.length;
    rate = new double[n];
    demand = new double[n];
    unfed = new double[n];
    starved = new float[n];
    Arrays.fill(starved, Float.POSITIVE_INFINITY);
  }

  /** Takes a step that began at {@code from} with {@code state.previous}. */
  void over(ThermalState state, double from) {
    dt = state.time - from;
    middle = (float) (0.5 * (from + state.time));
    double[] t0 = state.previous;
    double[] t1 = state.temperature;
    double noFlow = law.noFlow();
    for (int c = 0; c < rate.length; c++) {
      double fall = Math.max(t0[c], noFlow) - Math.max(t1[c], noFlow);
      rate[c] = Math.max(0, law.expansion() * fall * volume[c] * mass[c] / dt);
      demand[c] += rate[c] * dt;
    }
  }

  /** m3/s per cell over the step; not to be modified by others. */
  double[] rate() {
    return rate;
  }

  /** No liquid comes for a share of what a cell contracts by. */
  void lacks(int c, double share) {
    unfed[c] += rate[c] * share * dt;
    if (share < 1 - HalfFed.HALF) {
      starved[c] = Float.POSITIVE_INFINITY;
    } else if (rate[c] > 0) {
      starved[c] = Math.min(starved[c], middle);
    }
  }

  /** No liquid comes to a cell at all, and it asks for none. */
  void withdraw(int c) {
    lacks(c, 1);
    rate[c] = 0;
  }

  /** No liquid comes to any. */
  void allLack() {
    for (int c = 0; c < rate.length; c++) {
      lacks(c, 1);
    }
  }

  /** m3 above no-flow, per cell, so far. */
  double[] demand() {
    return demand;
  }

  /** m3 of that which no liquid came for, per cell, so far. */
  double[] unfed() {
    return unfed;
  }

  /** s since when less than half of what a place needs has come, per cell; +infinity: it is fed. */
  float[] starved() {
    return starved;
  }
}

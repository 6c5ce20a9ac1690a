// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.linear.Graph;
import java.util.Arrays;

/**
 * Heat that the liquid takes along: implicit upwind, block by block in the order of the flow.
 *
 * <pre>
 *   m1 h1 = m0 h0 + dt (sum of inflows h_upstream - sum of outflows h1),  m1 = m0 + dt (in - out)
 *   per cell of a block:  h += a (h_in - h),  a = dt in / (m0 + dt in),  m times m1 / m0
 * </pre>
 *
 * <p>A flow along falling pressure has no circles, so that a block's inflows are all known when its
 * turn comes: no limit to the step, and one pass. Every value is a mean of old ones and of what
 * enters, so there are no new extrema; sum m h is kept to rounding.
 */
public final class HeatCarry {
  private final Graph graph;
  private final int[] waits;
  private final int[] queue;
  private final double[] share;
  private final double[] inflow;
  private final double[] grows;

  public HeatCarry(Graph graph) {
    this.graph = graph;
    int n = graph.nodes();
    waits = new int[n];
    queue = new int[n];
    share = new double[n];
    inflow = new double[n];
    grows = new double[n];
  }

  /**
   * One step, for blocks.
   *
   * @param flux m3/s out of a node along each entry of the graph, the opposite from the other side;
   *     free of circles
   * @param entering m3/s into a node from outside; not negative
   * @param enteringHeat J/m3 of that, per node
   * @param leaving m3/s that leave a node otherwise
   * @param mass m3 of the start of the shot, per node; not modified
   * @param heat J/m3 per node; modified: after the step
   * @throws IllegalStateException if the flow runs in a circle
   */
  public void carry(
      double[] flux,
      double[] entering,
      double[] enteringHeat,
      double[] leaving,
      double dt,
      double[] mass,
      double[] heat) {
    int waiting = countInflows(flux);
    int tail = 0;
    for (int n = 0; n < waits.length; n++) {
      if (waits[n] == 0) {
        queue[tail++] = n;
      }
    }
    for (int head = 0; head < tail; head++) {
      int n = queue[head];
      mix(n, flux, entering[n], enteringHeat[n], leaving[n], dt, mass[n], heat);
      for (int k = graph.start()[n]; k < graph.start()[n + 1]; k++) {
        if (flux[k] > 0 && --waits[graph.other()[k]] == 0) {
          queue[tail++] = graph.other()[k];
        }
      }
    }
    if (tail < waits.length) {
      throw new IllegalStateException("liquid runs in a circle among " + waiting + " inflows");
    }
  }

  private int countInflows(double[] flux) {
    Arrays.fill(waits, 0);
    int all = 0;
    for (int n = 0; n < waits.length; n++) {
      for (int k = graph.start()[n]; k < graph.start()[n + 1]; k++) {
        if (flux[k] < 0) {
          waits[n]++;
          all++;
        }
      }
    }
    return all;
  }

  private void mix(
      int n,
      double[] flux,
      double entering,
      double enteringHeat,
      double leaving,
      double dt,
      double mass,
      double[] heat) {
    double in = entering;
    double out = leaving;
    double warm = entering * enteringHeat;
    for (int k = graph.start()[n]; k < graph.start()[n + 1]; k++) {
      double f = flux[k];
      if (f < 0) {
        in -= f;
        warm -= f * heat[graph.other()[k]];
      } else {
        out += f;
      }
    }
    share[n] = in > 0 ? dt * in / (mass + dt * in) : 0;
    inflow[n] = in > 0 ? warm / in : heat[n];
    grows[n] = mass > 0 ? 1 + dt * (in - out) / mass : 1;
    heat[n] += share[n] * (inflow[n] - heat[n]);
  }

  /** J/m3 of a cell of block {@code n} after the step that had {@code h} before it. */
  public double mixed(int n, double h) {
    return h + share[n] * (inflow[n] - h);
  }

  /** What the mass of a block has been multiplied by. */
  public double grows(int n) {
    return grows[n];
  }
}

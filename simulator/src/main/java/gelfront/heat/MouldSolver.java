// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import gelfront.grid.MouldCells;
import java.util.Arrays;

/**
 * Conduction in the mould: C dT/dt = sum G (T_j - T_i) + G_air (T_air - T_i) + q, conjugate
 * gradients with a symmetric Gauss-Seidel preconditioner for the change dT.
 *
 * <p>In time each face takes its flux at a weight theta between the step's ends, 0 its start and 1
 * its end:
 *
 * <pre>  theta = max(1/2, 1 - 2 C / (dt sum G))  of the cell beside it that needs more</pre>
 *
 * <p>So cells that a step hardly moves, as those of resin, are stepped by the trapezoidal rule,
 * second order; those that follow at once, as those of metal, by nearly backward Euler; and no mode
 * keeps more than 3/5 of its size while it changes its sign.
 *
 * <p>The energy is then taken from the fluxes that the solution implies, not from the solution: so
 * what the iteration leaves over stays in the state and is worked off in the next step, and heat is
 * conserved to rounding.
 */
final class MouldSolver {
  private static final double TOLERANCE = 3e-4;
  private static final int CEILING = 2000;

  /** Part of a cell's exchange that is taken at the step's start, at most; in capacities. */
  private static final double EXPLICIT = 2;

  private final MouldCells cells;
  private final int n;
  private final double[] theta;

  /** Weighted W/K to the cells across +x, +y, +z, and across -x, -y, -z; 0 where there is none. */
  private final double[] toUpper;

  private final double[] toLower;
  private final double[] air;
  private final double[] diagonal;
  private final double[] inverse;
  private final double[] r;
  private final double[] z;
  private final double[] p;
  private final double[] q;

  /** Cells across, n where there is none: one entry more, always 0, saves asking. */
  private final int[] upper;

  private final int[] lower;
  private int iterations;

  MouldSolver(MouldCells cells) {
    this.cells = cells;
    n = cells.count();
    theta = new double[n];
    toUpper = new double[3 * n];
    toLower = new double[3 * n];
    air = new double[n];
    diagonal = new double[n];
    inverse = new double[n];
    r = new double[n];
    z = new double[n + 1];
    p = new double[n + 1];
    q = new double[n];
    upper = new int[3 * n];
    lower = new int[3 * n];
    Arrays.fill(lower, n);
    for (int e = 0; e < 3 * n; e++) {
      int j = cells.neighbour()[e];
      upper[e] = j < 0 ? n : j;
      if (j >= 0) {
        lower[3 * j + e % 3] = e / 3;
      }
    }
  }

  /** Iterations of the last solve. */
  int iterations() {
    return iterations;
  }

  /**
   * Solves for the change over a step.
   *
   * @param t °C before the step; not modified
   * @param heat J put into each cell during the step; not modified
   * @param change °C; in: a guess, out: the solution
   */
  void solve(double[] t, double[] heat, double dt, double[] change) {
    assemble(dt);
    double[] flux = q;
    fluxes(t, flux);
    double norm = 0;
    for (int i = 0; i < n; i++) {
      r[i] = heat[i] / dt + flux[i];
      norm += r[i] * r[i];
    }
    System.arraycopy(change, 0, p, 0, n);
    multiply(p, q);
    double rest = 0;
    for (int i = 0; i < n; i++) {
      r[i] -= q[i];
      rest += r[i] * r[i];
    }
    Arrays.fill(p, 0);
    double rz = 1;
    double stop = TOLERANCE * TOLERANCE * norm;
    for (iterations = 0; rest > stop && iterations < CEILING; iterations++) {
      double next = precondition();
      double beta = next / rz;
      rz = next;
      for (int i = 0; i < n; i++) {
        p[i] = z[i] + beta * p[i];
      }
      rest = advance(change, rz / multiply(p, q));
    }
  }

  /** One step along p; returns r r. */
  private double advance(double[] change, double alpha) {
    double rest = 0;
    for (int i = 0; i < n; i++) {
      change[i] += alpha * p[i];
      r[i] -= alpha * q[i];
      rest += r[i] * r[i];
    }
    return rest;
  }

  /**
   * Takes the step.
   *
   * @param t °C; modified
   * @param heat J put into each cell during the step
   * @param change °C as solved
   * @return J gained by the mould, and J given to the air
   */
  double[] apply(double[] t, double[] heat, double dt, double[] change) {
    fluxes(t, q);
    addWeighted(change, q);
    double gain = 0;
    double toAir = 0;
    for (int i = 0; i < n; i++) {
      double e = heat[i] + dt * q[i];
      double above = cells.airConductance()[i] * (t[i] - cells.airTemperature()[i]);
      toAir += dt * (above + air[i] * change[i]);
      t[i] += e / cells.capacity()[i];
      gain += e;
    }
    return new double[] {gain, toAir};
  }

  private void assemble(double dt) {
    double[] g = cells.conductance();
    for (int i = 0; i < n; i++) {
      double sum = cells.airConductance()[i];
      for (int e = 3 * i; e < 3 * i + 3; e++) {
        sum += upper[e] < n ? g[e] : 0;
        sum += lower[e] < n ? g[3 * lower[e] + e % 3] : 0;
      }
      theta[i] = Math.max(0.5, 1 - EXPLICIT * cells.capacity()[i] / (dt * sum));
      air[i] = theta[i] * cells.airConductance()[i];
      diagonal[i] = cells.capacity()[i] / dt + air[i];
    }
    for (int e = 0; e < 3 * n; e++) {
      int j = upper[e];
      if (j < n) {
        double weighted = Math.max(theta[e / 3], theta[j]) * g[e];
        toUpper[e] = weighted;
        toLower[3 * j + e % 3] = weighted;
        diagonal[e / 3] += weighted;
        diagonal[j] += weighted;
      }
    }
    for (int i = 0; i < n; i++) {
      inverse[i] = 1 / diagonal[i];
    }
  }

  /** W into each cell on top, for what the change adds to the fluxes; each face both ways. */
  private void addWeighted(double[] change, double[] out) {
    for (int i = 0; i < n; i++) {
      out[i] -= air[i] * change[i];
    }
    exchange(toUpper, change, out);
  }

  /** W into each cell from its neighbours and the air; every face counted once, both ways. */
  private void fluxes(double[] t, double[] out) {
    for (int i = 0; i < n; i++) {
      out[i] = cells.airConductance()[i] * (cells.airTemperature()[i] - t[i]);
    }
    exchange(cells.conductance(), t, out);
  }

  private void exchange(double[] conductance, double[] t, double[] out) {
    for (int e = 0; e < 3 * n; e++) {
      int j = upper[e];
      if (j < n) {
        double w = conductance[e] * (t[j] - t[e / 3]);
        out[e / 3] += w;
        out[j] -= w;
      }
    }
  }

  /** out = A x; x has an entry n, of 0. Returns x A x. */
  private double multiply(double[] x, double[] out) {
    double product = 0;
    for (int i = 0; i < n; i++) {
      int e = 3 * i;
      double s =
          diagonal[i] * x[i]
              - toUpper[e] * x[upper[e]]
              - toUpper[e + 1] * x[upper[e + 1]]
              - toUpper[e + 2] * x[upper[e + 2]]
              - toLower[e] * x[lower[e]]
              - toLower[e + 1] * x[lower[e + 1]]
              - toLower[e + 2] * x[lower[e + 2]];
      out[i] = s;
      product += x[i] * s;
    }
    return product;
  }

  /** z from r by one forward and one backward Gauss-Seidel sweep; returns r z. */
  private double precondition() {
    for (int i = 0; i < n; i++) {
      int e = 3 * i;
      double s =
          r[i]
              + toLower[e + 2] * z[lower[e + 2]]
              + toLower[e + 1] * z[lower[e + 1]]
              + toLower[e] * z[lower[e]];
      z[i] = s * inverse[i];
    }
    double product = 0;
    for (int i = n - 1; i >= 0; i--) {
      int e = 3 * i;
      double s =
          toUpper[e + 2] * z[upper[e + 2]]
              + toUpper[e + 1] * z[upper[e + 1]]
              + toUpper[e] * z[upper[e]];
      z[i] += s * inverse[i];
      product += r[i] * z[i];
    }
    return product;
  }
}

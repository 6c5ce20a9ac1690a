// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import gelfront.grid.MouldCells;
import java.util.Arrays;

/**
 * Conduction in the mould: C dT/dt = sum G (T_j - T_i) + G_air (T_air - T_i) + q, by conjugate
 * gradients for the change dT. The matrix is L + D + U; the preconditioner (L + P) P^-1 (P + U) has
 * pivots P such that its rows have the matrix's sums (modified incomplete factorization;
 * Gustafsson, BIT 18 (1978) 142): what is smooth, and that is most of it, it gets right. Residuals
 * are kept as r' = (L + P)^-1 r and directions p come with p' = (P + U) p, so that its two half
 * sweeps make the product with the matrix, too (Eisenstat, SIAM J. Sci. Stat. Comput. 2 (1981) 1;
 * both from memory):
 *
 * <pre>
 *   P_i = D_i - sum over j before i of L_ij U_j / P_j,   U_j = sum over k behind j of U_jk
 *   p' = P r' + beta p',   p = (P + U)^-1 p',   p A p = p (2 p' + (D - 2 P) p)
 *   dT += alpha p,   r' -= alpha (p + (L + P)^-1 (p' + (D - 2 P) p)),   r z = r' P r'
 * </pre>
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
  /**
   * Root of r z that may be left, of the same of what drives the step. With this no cell of three
   * examples, one of them in resin, sets more than 0.005 % otherwise than with 1e-9.
   */
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

  /** P, and one over it. */
  private final double[] pivot;

  private final double[] inverse;

  /** D - 2 P. */
  private final double[] rest;

  /** W/K to neighbours and air, unweighted. */
  private final double[] all;

  /** W into each cell at the start of the step. */
  private final double[] flux;

  /** Residuals as the first half sweep leaves them. */
  private final double[] r;

  /** Direction; one entry more, always 0. */
  private final double[] p;

  /** p', of which the second half sweep makes p. */
  private final double[] q;

  /** What the first half sweep makes; one entry more, always 0. */
  private final double[] s;

  /** Cells across, n where there is none: one entry more, always 0, saves asking. */
  private final int[] upper;

  private final int[] lower;

  /** What r z would be if nothing changed. */
  private double norm;

  private int iterations;

  MouldSolver(MouldCells cells) {
    this.cells = cells;
    n = cells.count();
    theta = new double[n];
    toUpper = new double[3 * n];
    toLower = new double[3 * n];
    air = new double[n];
    diagonal = new double[n];
    pivot = new double[n];
    inverse = new double[n];
    rest = new double[n];
    all = cells.airConductance().clone();
    flux = new double[n];
    r = new double[n];
    p = new double[n + 1];
    q = new double[n];
    s = new double[n + 1];
    upper = new int[3 * n];
    lower = new int[3 * n];
    Arrays.fill(lower, n);
    for (int e = 0; e < 3 * n; e++) {
      int j = cells.neighbour()[e];
      upper[e] = j < 0 ? n : j;
      if (j >= 0) {
        lower[3 * j + e % 3] = e / 3;
        all[j] += cells.conductance()[e];
        all[e / 3] += cells.conductance()[e];
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
    fluxes(t);
    double rz = begin(heat, dt, change);
    double before = 1;
    double stop = TOLERANCE * TOLERANCE * norm;
    for (iterations = 0; rz > stop && iterations < CEILING; iterations++) {
      double alpha = rz / turn(rz / before);
      before = rz;
      rz = advance(change, alpha);
    }
  }

  /** The residuals of the guess; returns r z. */
  private double begin(double[] heat, double dt, double[] guess) {
    System.arraycopy(guess, 0, p, 0, n);
    norm = 0;
    double rz = 0;
    for (int i = 0; i < n; i++) {
      int e = 3 * i;
      double drive = heat[i] / dt + flux[i];
      norm += drive * drive * inverse[i];
      double known =
          drive
              + (pivot[i] - diagonal[i]) * p[i]
              + toUpper[e] * p[upper[e]]
              + toUpper[e + 1] * p[upper[e + 1]]
              + toUpper[e + 2] * p[upper[e + 2]];
      s[i] = (known + fromLower(s, e)) * inverse[i];
      r[i] = s[i] - p[i];
      rz += r[i] * r[i] * pivot[i];
    }
    Arrays.fill(q, 0);
    return rz;
  }

  /** The next direction; returns p A p. */
  private double turn(double beta) {
    double product = 0;
    for (int i = n - 1; i >= 0; i--) {
      int e = 3 * i;
      q[i] = pivot[i] * r[i] + beta * q[i];
      double known =
          q[i]
              + toUpper[e + 2] * p[upper[e + 2]]
              + toUpper[e + 1] * p[upper[e + 1]]
              + toUpper[e] * p[upper[e]];
      p[i] = known * inverse[i];
      product += p[i] * (2 * q[i] + rest[i] * p[i]);
    }
    return product;
  }

  /** One step along p; returns r z. */
  private double advance(double[] change, double alpha) {
    double rz = 0;
    for (int i = 0; i < n; i++) {
      s[i] = (q[i] + rest[i] * p[i] + fromLower(s, 3 * i)) * inverse[i];
      change[i] += alpha * p[i];
      r[i] -= alpha * (p[i] + s[i]);
      rz += r[i] * r[i] * pivot[i];
    }
    return rz;
  }

  /** The nearest, which has only just been worked out, comes last. */
  private double fromLower(double[] x, int e) {
    return toLower[e + 2] * x[lower[e + 2]]
        + toLower[e + 1] * x[lower[e + 1]]
        + toLower[e] * x[lower[e]];
  }

  /**
   * Takes the step that was solved for.
   *
   * @param t °C; modified
   * @param heat J put into each cell during the step
   * @param change °C as solved
   * @return J gained by the mould, and J given to the air
   */
  double[] apply(double[] t, double[] heat, double dt, double[] change) {
    addWeighted(change);
    double gain = 0;
    double toAir = 0;
    for (int i = 0; i < n; i++) {
      double e = heat[i] + dt * flux[i];
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
      theta[i] = Math.max(0.5, 1 - EXPLICIT * cells.capacity()[i] / (dt * all[i]));
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
    factor();
  }

  /** Pivots stay above the sum of what their rows have behind them, as capacities are positive. */
  private void factor() {
    for (int i = 0; i < n; i++) {
      int e = 3 * i;
      pivot[i] = diagonal[i] - fromLower(s, e);
      inverse[i] = 1 / pivot[i];
      rest[i] = diagonal[i] - 2 * pivot[i];
      s[i] = (toUpper[e] + toUpper[e + 1] + toUpper[e + 2]) * inverse[i];
    }
  }

  /** What the change adds to the fluxes; each face both ways. */
  private void addWeighted(double[] change) {
    for (int i = 0; i < n; i++) {
      flux[i] -= air[i] * change[i];
    }
    exchange(toUpper, change);
  }

  /** From neighbours and the air; every face counted once, both ways. */
  private void fluxes(double[] t) {
    for (int i = 0; i < n; i++) {
      flux[i] = cells.airConductance()[i] * (cells.airTemperature()[i] - t[i]);
    }
    exchange(cells.conductance(), t);
  }

  private void exchange(double[] conductance, double[] t) {
    for (int e = 0; e < 3 * n; e++) {
      int j = upper[e];
      if (j < n) {
        double w = conductance[e] * (t[j] - t[e / 3]);
        flux[e / 3] += w;
        flux[j] -= w;
      }
    }
  }
}

package gelfront.heat;

import gelfront.grid.MouldCells;

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
  private static final double TOLERANCE = 1e-5;
  private static final int CEILING = 2000;

  /** Part of a cell's exchange that is taken at the step's start, at most; in capacities. */
  private static final double EXPLICIT = 2;

  private final MouldCells cells;
  private final int n;
  private final double[] theta;
  private final double[] face;
  private final double[] air;
  private final double[] diagonal;
  private final double[] r;
  private final double[] z;
  private final double[] p;
  private final double[] q;
  private final int[] lower;
  private int iterations;

  MouldSolver(MouldCells cells) {
    this.cells = cells;
    n = cells.count();
    theta = new double[n];
    face = new double[3 * n];
    air = new double[n];
    diagonal = new double[n];
    r = new double[n];
    z = new double[n];
    p = new double[n];
    q = new double[n];
    lower = new int[3 * n];
    java.util.Arrays.fill(lower, -1);
    for (int i = 0; i < n; i++) {
      for (int a = 0; a < 3; a++) {
        int j = cells.neighbour()[3 * i + a];
        if (j >= 0) {
          lower[3 * j + a] = i;
        }
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
    multiply(change, q);
    for (int i = 0; i < n; i++) {
      r[i] -= q[i];
    }
    precondition();
    System.arraycopy(z, 0, p, 0, n);
    double rz = dot(r, z);
    double stop = TOLERANCE * TOLERANCE * norm;
    iterations = 0;
    while (dot(r, r) > stop && iterations++ < CEILING) {
      multiply(p, q);
      double alpha = rz / dot(p, q);
      for (int i = 0; i < n; i++) {
        change[i] += alpha * p[i];
        r[i] -= alpha * q[i];
      }
      precondition();
      double next = dot(r, z);
      double beta = next / rz;
      rz = next;
      for (int i = 0; i < n; i++) {
        p[i] = z[i] + beta * p[i];
      }
    }
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
    int[] nb = cells.neighbour();
    double[] g = cells.conductance();
    for (int i = 0; i < n; i++) {
      double sum = cells.airConductance()[i];
      for (int a = 0; a < 3; a++) {
        sum += nb[3 * i + a] >= 0 ? g[3 * i + a] : 0;
        sum += lower[3 * i + a] >= 0 ? g[3 * lower[3 * i + a] + a] : 0;
      }
      theta[i] = Math.max(0.5, 1 - EXPLICIT * cells.capacity()[i] / (dt * sum));
      air[i] = theta[i] * cells.airConductance()[i];
      diagonal[i] = cells.capacity()[i] / dt + air[i];
    }
    for (int i = 0; i < n; i++) {
      for (int a = 0; a < 3; a++) {
        int j = nb[3 * i + a];
        if (j >= 0) {
          face[3 * i + a] = Math.max(theta[i], theta[j]) * g[3 * i + a];
          diagonal[i] += face[3 * i + a];
          diagonal[j] += face[3 * i + a];
        }
      }
    }
  }

  /** W into each cell on top, for what the change adds to the fluxes; each face both ways. */
  private void addWeighted(double[] change, double[] out) {
    int[] nb = cells.neighbour();
    for (int i = 0; i < n; i++) {
      out[i] -= air[i] * change[i];
      for (int a = 0; a < 3; a++) {
        int j = nb[3 * i + a];
        if (j >= 0) {
          double w = face[3 * i + a] * (change[j] - change[i]);
          out[i] += w;
          out[j] -= w;
        }
      }
    }
  }

  /** W into each cell from its neighbours and the air; every face counted once, both ways. */
  private void fluxes(double[] t, double[] out) {
    int[] nb = cells.neighbour();
    double[] g = cells.conductance();
    for (int i = 0; i < n; i++) {
      out[i] = cells.airConductance()[i] * (cells.airTemperature()[i] - t[i]);
    }
    for (int i = 0; i < n; i++) {
      for (int a = 0; a < 3; a++) {
        int j = nb[3 * i + a];
        if (j >= 0) {
          double w = g[3 * i + a] * (t[j] - t[i]);
          out[i] += w;
          out[j] -= w;
        }
      }
    }
  }

  private void multiply(double[] x, double[] out) {
    int[] nb = cells.neighbour();
    for (int i = 0; i < n; i++) {
      double s = diagonal[i] * x[i];
      for (int a = 0; a < 3; a++) {
        int up = nb[3 * i + a];
        int down = lower[3 * i + a];
        if (up >= 0) {
          s -= face[3 * i + a] * x[up];
        }
        if (down >= 0) {
          s -= face[3 * down + a] * x[down];
        }
      }
      out[i] = s;
    }
  }

  /** z from r by one forward and one backward Gauss-Seidel sweep. */
  private void precondition() {
    int[] nb = cells.neighbour();
    for (int i = 0; i < n; i++) {
      double s = r[i];
      for (int a = 0; a < 3; a++) {
        int down = lower[3 * i + a];
        if (down >= 0) {
          s += face[3 * down + a] * z[down];
        }
      }
      z[i] = s / diagonal[i];
    }
    for (int i = n - 1; i >= 0; i--) {
      double s = 0;
      for (int a = 0; a < 3; a++) {
        int up = nb[3 * i + a];
        if (up >= 0) {
          s += face[3 * i + a] * z[up];
        }
      }
      z[i] += s / diagonal[i];
    }
  }

  private double dot(double[] a, double[] b) {
    double s = 0;
    for (int i = 0; i < n; i++) {
      s += a[i] * b[i];
    }
    return s;
  }
}

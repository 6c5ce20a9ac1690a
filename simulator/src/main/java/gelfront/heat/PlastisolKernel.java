package gelfront.heat;

import gelfront.base.Workers;
import gelfront.grid.Cavity;

/**
 * Conduction in the plastisol over one step with frozen capacities and wall temperatures:
 *
 * <pre>  C V dT/dt = sum over faces of k dx (T_j - T) + sum over walls of U (T_wall - T)</pre>
 *
 * by the second-order Runge-Kutta-Legendre method (Meyer, Balsara and Aslam, J. Comput. Phys. 257
 * (2014) 594): s stages reach (s^2 + s - 2) / 4 times as far as one explicit step.
 */
final class PlastisolKernel {
  /** Cells worked on at once: what two loops in a row find still in the cache. */
  private static final int BLOCK = 2048;

  /** Share of the stable reach that is used. */
  private static final double SAFETY = 0.95;

  private final Workers workers;
  private final int n;
  private final int[] neighbours;
  private final double spacing;
  private final double[] volume;
  private final int[] wallCells;

  /** W/m K per cell where it varies, else null. */
  private final double[] cellConductivity;

  private final CellRuns runs;
  private final MovedMiddles moved;

  private final double[] perCapacity;
  private final double[] rate0;
  private final double[] flux;
  private double[] stage1;
  private double[] stage2;
  private double[] mean1;
  private double[] mean2;
  private int stages;

  /**
   * @param wallCells cells that have a wall, rising
   * @param variable whether conductivity varies with temperature
   */
  PlastisolKernel(Cavity cavity, int[] wallCells, boolean variable, Workers workers) {
    this.workers = workers;
    this.n = cavity.count();
    this.neighbours = cavity.neighbours();
    this.spacing = cavity.grid().spacing();
    this.volume = cavity.volumes();
    this.wallCells = wallCells;
    this.cellConductivity = variable ? new double[n] : null;
    runs = CellRuns.of(neighbours);
    moved = MovedMiddles.of(cavity);
    perCapacity = new double[n];
    rate0 = new double[n];
    flux = new double[n];
    stage1 = new double[n];
    stage2 = new double[n];
    mean1 = new double[wallCells.length];
    mean2 = new double[wallCells.length];
  }

  /** Where conductivity varies: W/m K per cell, filled by the caller before a step; else null. */
  double[] cellConductivity() {
    return cellConductivity;
  }

  /** Stages of the last step. */
  int stages() {
    return stages;
  }

  /**
   * @param t0 °C before; not modified
   * @param capacity J/m3 K per cell
   * @param k W/m K where it does not vary
   * @param wall W/K, sum of U over the walls of each cell
   * @param wallSource W, sum of U T_wall over the walls of each cell
   * @param out °C after; modified
   * @param mean °C, mean over the step as the walls saw it, per entry of wallCells; modified
   */
  void step(
      double[] t0,
      double[] capacity,
      double k,
      double[] wall,
      double[] wallSource,
      double dt,
      double[] out,
      double[] mean) {
    double explicit = explicitLimit(capacity, k, wall);
    int s = stagesFor(dt / (SAFETY * explicit));
    stages = s;
    double w1 = 4.0 / ((double) s * s + s - 2);
    double first = w1 / 3;
    double g = k * spacing;
    workers.over(n, (a, b) -> rates(t0, g, wall, wallSource, rate0, a, b));
    double[] before = stage2;
    double[] last = stage1;
    System.arraycopy(t0, 0, before, 0, n);
    double step1 = first * dt;
    double[] l1 = last;
    workers.over(
        n,
        (a, b) -> {
          for (int i = a; i < b; i++) {
            l1[i] = t0[i] + step1 * rate0[i];
          }
        });
    java.util.Arrays.fill(mean2, 0);
    for (int i = 0; i < wallCells.length; i++) {
      mean1[i] = first * t0[wallCells[i]];
    }
    for (int j = 2; j <= s; j++) {
      double mu = (2.0 * j - 1) / j * b(j) / b(j - 1);
      double nu = -(j - 1.0) / j * b(j) / b(j - 2);
      double muRate = mu * w1;
      double gamma = -(1 - b(j - 1)) * muRate;
      meanStage(mu, nu, muRate, gamma, t0, last);
      double[] y = last;
      double[] y2 = before;
      workers.over(
          n,
          (from, to) -> {
            for (int a = from; a < to; a += BLOCK) {
              int b = Math.min(to, a + BLOCK);
              stage(t0, y, y2, g, wall, wallSource, mu, nu, muRate * dt, gamma * dt, a, b);
            }
          });
      before = last;
      last = y2;
    }
    System.arraycopy(last, 0, out, 0, n);
    System.arraycopy(mean1, 0, mean, 0, wallCells.length);
    stage1 = last;
    stage2 = before;
  }

  private static double b(int j) {
    return j < 2 ? 1.0 / 3 : (j * (double) j + j - 2) / (2.0 * j * (j + 1));
  }

  /** The integral of a wall cell's temperature obeys the same recursion as the temperature. */
  private void meanStage(
      double mu, double nu, double muRate, double gamma, double[] t0, double[] last) {
    for (int i = 0; i < wallCells.length; i++) {
      int c = wallCells[i];
      mean2[i] = mu * mean1[i] + nu * mean2[i] + muRate * last[c] + gamma * t0[c];
    }
    double[] swap = mean1;
    mean1 = mean2;
    mean2 = swap;
  }

  private double explicitLimit(double[] capacity, double k, double[] wall) {
    double least = Double.POSITIVE_INFINITY;
    int m = 0;
    for (int i = 0; i < n; i++) {
      double sum = wall[i];
      for (; m < moved.count() && moved.cell(m) == i; m++) {
        sum += spacing * moved.excess(m) * between(i, moved.other(m), k);
      }
      for (int f = 0; f < 6; f++) {
        int j = neighbours[6 * i + f];
        sum += j == i ? 0 : cellConductivity == null ? k * spacing : face(i, j) * spacing;
      }
      perCapacity[i] = 1 / (capacity[i] * volume[i]);
      least = Math.min(least, 1 / (sum * perCapacity[i]));
    }
    return least;
  }

  static int stagesFor(double reach) {
    int s = (int) Math.ceil(0.5 * (Math.sqrt(9 + 16 * reach) - 1));
    s = Math.max(3, s);
    return s % 2 == 0 ? s + 1 : s;
  }

  private double between(int i, int j, double k) {
    return cellConductivity == null ? k : face(i, j);
  }

  private double face(int i, int j) {
    return 2
        * cellConductivity[i]
        * cellConductivity[j]
        / (cellConductivity[i] + cellConductivity[j]);
  }

  private void rates(
      double[] t, double g, double[] wall, double[] source, double[] out, int from, int to) {
    conduction(t, g, out, from, to);
    for (int i = from; i < to; i++) {
      out[i] = (out[i] + source[i] - wall[i] * t[i]) * perCapacity[i];
    }
  }

  /** W into each cell from its neighbours. */
  private void conduction(double[] t, double g, double[] out, int from, int to) {
    even(t, g, out, from, to);
    for (int m = moved.from(from); m < moved.count() && moved.cell(m) < to; m++) {
      int i = moved.cell(m);
      int j = moved.other(m);
      double face = cellConductivity == null ? g : spacing * face(i, j);
      out[i] += face * moved.excess(m) * (t[j] - t[i]);
    }
  }

  /** As if all middles were one voxel apart. */
  private void even(double[] t, double g, double[] out, int from, int to) {
    if (cellConductivity != null) {
      for (int i = from; i < to; i++) {
        double sum = 0;
        for (int f = 0; f < 6; f++) {
          int j = neighbours[6 * i + f];
          sum += j == i ? 0 : spacing * face(i, j) * (t[j] - t[i]);
        }
        out[i] = sum;
      }
      return;
    }
    for (int run = runs.holding(from); run < runs.count() && runs.start(run) < to; run++) {
      int a = Math.max(from, runs.start(run));
      int b = Math.min(to, runs.start(run + 1));
      int x0 = runs.offset(run, 0);
      int x1 = runs.offset(run, 1);
      int y0 = runs.offset(run, 2);
      int y1 = runs.offset(run, 3);
      int z0 = runs.offset(run, 4);
      int z1 = runs.offset(run, 5);
      for (int i = a; i < b; i++) {
        double own = t[i];
        out[i] =
            g
                * ((t[i + x0] - own)
                    + (t[i + x1] - own)
                    + (t[i + y0] - own)
                    + (t[i + y1] - own)
                    + (t[i + z0] - own)
                    + (t[i + z1] - own));
      }
    }
  }

  private void stage(
      double[] t0,
      double[] y,
      double[] y2,
      double g,
      double[] wall,
      double[] source,
      double mu,
      double nu,
      double muStep,
      double gammaStep,
      int from,
      int to) {
    double rest = 1 - mu - nu;
    conduction(y, g, flux, from, to);
    for (int i = from; i < to; i++) {
      double rate = (flux[i] + source[i] - wall[i] * y[i]) * perCapacity[i];
      y2[i] = mu * y[i] + nu * y2[i] + rest * t0[i] + muStep * rate + gammaStep * rate0[i];
    }
  }
}

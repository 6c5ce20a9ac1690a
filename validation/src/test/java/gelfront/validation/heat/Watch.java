package gelfront.validation.heat;

import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import gelfront.run.StepObserver;
import gelfront.state.ThermalState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Keeps what probes see, and the mean over the volume, step by step.
 *
 * <p>In space a probe is a cubic through 4 x 4 x 4 cells, so that a centre that lies between cells
 * is not read too cold, and each cell counts by its middle, not by its mean; near a wall, linear
 * through 2 x 2 x 2, else the cell that holds it. In time a smooth cubic through the steps.
 */
final class Watch implements StepObserver {
  private final List<int[]> cells = new ArrayList<>();
  private final List<double[]> weights = new ArrayList<>();
  private final List<double[]> record = new ArrayList<>();
  private final List<Double> times = new ArrayList<>();
  private final Cavity cavity;
  private final double[] volumes;

  Watch(Cavity cavity, List<Vec3> probes) {
    this.cavity = cavity;
    this.volumes = cavity.volumes();
    probes.forEach(this::add);
  }

  private void add(Vec3 p) {
    if (!(stencil(p, 4) || stencil(p, 2) || stencil(p, 1))) {
      throw new IllegalArgumentException("a probe outside the plastisol: " + p);
    }
  }

  /** Lagrange weights through {@code n} cells along each axis that has more than one. */
  private boolean stencil(Vec3 p, int n) {
    double[] at = {p.x(), p.y(), p.z()};
    int[][] index = new int[3][];
    double[][] weight = new double[3][];
    for (int a = 0; a < 3; a++) {
      int m = cavity.grid().count(a) == 1 ? 1 : n;
      double s = (at[a] - cavity.grid().centre(a, 0)) / cavity.grid().spacing();
      int first = (int) Math.floor(m == 1 ? s + 0.5 : s) - (m - 1) / 2;
      index[a] = new int[m];
      weight[a] = new double[m];
      for (int i = 0; i < m; i++) {
        index[a][i] = first + i;
        weight[a][i] = 1;
        for (int j = 0; j < m; j++) {
          weight[a][i] *= i == j ? 1 : (s - first - j) / (i - j);
        }
      }
    }
    return keep(index, weight);
  }

  private boolean keep(int[][] index, double[][] weight) {
    int[] c = new int[index[0].length * index[1].length * index[2].length];
    double[] w = new double[c.length];
    int n = 0;
    for (int k = 0; k < index[2].length; k++) {
      for (int j = 0; j < index[1].length; j++) {
        for (int i = 0; i < index[0].length; i++) {
          c[n] = cell(index[0][i], index[1][j], index[2][k]);
          w[n] = weight[0][i] * weight[1][j] * weight[2][k];
          if (c[n++] < 0) {
            return false;
          }
        }
      }
    }
    cells.add(c);
    weights.add(w);
    return true;
  }

  private int cell(int i, int j, int k) {
    int[] at = {i, j, k};
    for (int a = 0; a < 3; a++) {
      if (at[a] < 0 || at[a] >= cavity.grid().count(a)) {
        return -1;
      }
    }
    return Math.max(-1, Arrays.binarySearch(cavity.cells(), cavity.grid().index(i, j, k)));
  }

  /** Keeps a state, the first one too. */
  void see(ThermalState state) {
    double[] now = new double[cells.size() + 2];
    for (int p = 0; p < cells.size(); p++) {
      for (int i = 0; i < cells.get(p).length; i++) {
        now[p] += weights.get(p)[i] * cavity.inMiddle(state.temperature, cells.get(p)[i]);
      }
    }
    double sum = 0;
    double whole = 0;
    double hottest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < volumes.length; i++) {
      sum += volumes[i] * state.temperature[i];
      whole += volumes[i];
      hottest = Math.max(hottest, state.temperature[i]);
    }
    now[cells.size()] = sum / whole;
    now[cells.size() + 1] = hottest;
    times.add(state.time);
    record.add(now);
  }

  @Override
  public void after(ThermalState state, double from) {
    see(state);
  }

  /** °C of probe {@code p} at a time inside the record. */
  double at(int p, double time) {
    return curve(p).value(time);
  }

  /** °C, mean over the volume, at a time inside the record. */
  double mean(double time) {
    return curve(cells.size()).value(time);
  }

  /** s at which probe {@code p} fell through a temperature. */
  double crossing(int p, double level) {
    UnivariateFunction f = curve(p);
    int after = 0;
    while (record.get(after)[p] > level) {
      after++;
    }
    double from = times.get(after - 1);
    return new BrentSolver(1e-12, 1e-10)
        .solve(200, t -> f.value(t) - level, from, times.get(after));
  }

  /** s at which the last cell fell through a temperature. */
  double lastBelow(double level) {
    return crossing(cells.size() + 1, level);
  }

  private UnivariateFunction curve(int p) {
    double[] t = times.stream().mapToDouble(Double::doubleValue).toArray();
    double[] v = record.stream().mapToDouble(r -> r[p]).toArray();
    return new AkimaSplineInterpolator().interpolate(t, v);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import gelfront.state.ThermalState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;

/**
 * Keeps what a thermometer at a place sees, step by step.
 *
 * <p>In space a cubic through 4 x 4 x 4 cells, so that a centre that lies between cells is not read
 * too cold, and each cell counts by its middle, not by its mean; near a wall, linear through 2 x 2
 * x 2, else the cell that holds it. In time a smooth cubic through the steps.
 */
public final class Sensor implements StepObserver {
  private final Cavity cavity;
  private final List<Double> times = new ArrayList<>();
  private final List<Double> seen = new ArrayList<>();
  private int[] cells = {};
  private double[] weights = {};

  /**
   * @param place metres
   * @throws IllegalArgumentException if it lies outside the plastisol
   */
  public Sensor(Cavity cavity, Vec3 place) {
    this.cavity = cavity;
    if (!(stencil(place, 4) || stencil(place, 2) || stencil(place, 1))) {
      throw new IllegalArgumentException("a probe outside the plastisol: " + place);
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
    cells = c;
    weights = w;
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
  public void see(ThermalState state) {
    double now = 0;
    for (int i = 0; i < cells.length; i++) {
      now += weights[i] * cavity.inMiddle(state.temperature, cells[i]);
    }
    times.add(state.time);
    seen.add(now);
  }

  @Override
  public void after(ThermalState state, double from) {
    see(state);
  }

  /** s, of each step. */
  public double[] times() {
    return times.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** °C, at each step. */
  public double[] temperatures() {
    return seen.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** °C over time, within what was seen: five steps at least. */
  public UnivariateFunction curve() {
    return new AkimaSplineInterpolator().interpolate(times(), temperatures());
  }
}

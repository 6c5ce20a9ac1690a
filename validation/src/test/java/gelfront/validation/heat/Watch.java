// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import gelfront.run.Sensor;
import gelfront.run.StepObserver;
import gelfront.state.ThermalState;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Keeps what probes see, and the mean over the volume, step by step. */
final class Watch implements StepObserver {
  private final List<Sensor> probes = new ArrayList<>();
  private final List<Double> mean = new ArrayList<>();
  private final List<Double> hottest = new ArrayList<>();
  private final List<Double> times = new ArrayList<>();
  private final double[] volumes;

  Watch(Cavity cavity, List<Vec3> places) {
    this.volumes = cavity.volumes();
    places.forEach(p -> probes.add(new Sensor(cavity, p)));
  }

  /** Keeps a state, the first one too. */
  void see(ThermalState state) {
    probes.forEach(p -> p.see(state));
    double sum = 0;
    double whole = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < volumes.length; i++) {
      sum += volumes[i] * state.temperature[i];
      whole += volumes[i];
      most = Math.max(most, state.temperature[i]);
    }
    mean.add(sum / whole);
    hottest.add(most);
    times.add(state.time);
  }

  @Override
  public void after(ThermalState state, double from) {
    see(state);
  }

  /** °C of probe {@code p} at a time inside the record. */
  double at(int p, double time) {
    return probes.get(p).curve().value(time);
  }

  /** °C, mean over the volume, at a time inside the record. */
  double mean(double time) {
    return curve(values(mean)).value(time);
  }

  /** s at which probe {@code p} fell through a temperature. */
  double crossing(int p, double level) {
    return crossing(probes.get(p).temperatures(), level);
  }

  /** s at which the last cell fell through a temperature. */
  double lastBelow(double level) {
    return crossing(values(hottest), level);
  }

  private double crossing(double[] v, double level) {
    UnivariateFunction f = curve(v);
    int after = 0;
    while (v[after] > level) {
      after++;
    }
    return new BrentSolver(1e-12, 1e-10)
        .solve(200, t -> f.value(t) - level, times.get(after - 1), times.get(after));
  }

  private UnivariateFunction curve(double[] v) {
    return new AkimaSplineInterpolator().interpolate(values(times), v);
  }

  private static double[] values(List<Double> of) {
    return of.stream().mapToDouble(Double::doubleValue).toArray();
  }
}

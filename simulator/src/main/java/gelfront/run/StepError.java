// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.state.ThermalState;

/**
 * How far a step led from where the rates of the step before would have: e = |T(n+1) - T(n) - r
 * (T(n) - T(n-1))| r / (1 + r) with r = dt(n+1) / dt(n), which is the second-order term dt² |T''| /
 * 2. The step itself is right to that order, so e is no error bar but a measure that shrinks with
 * dt² and grows with all that makes a step wrong: rates and capacities that change within it.
 *
 * <p>Over the cells the fourth root of the mean fourth power is taken: while only the skin moves,
 * it is few cells that count. Plastisol and mould each have their mean; the greater one counts.
 */
final class StepError {
  private final float[] older;
  private final double[] mould;
  private final double[] mouldRate;
  private double last;

  /**
   * @param state before the first step
   */
  StepError(ThermalState state) {
    older = new float[state.temperature.length];
    mould = state.mould.clone();
    mouldRate = new double[mould.length];
  }

  /** Forgets the rates. */
  void restart() {
    last = 0;
  }

  /**
   * @param state after a step
   * @param dt s that it took
   * @return K; NaN after a first step, which has no rates to be held against
   */
  double after(ThermalState state, double dt) {
    double ratio = last > 0 ? dt / last : Double.NaN;
    double off = Math.max(plastisol(state, ratio), mould(state, dt));
    last = dt;
    return off * ratio / (1 + ratio);
  }

  private double plastisol(ThermalState state, double ratio) {
    double[] now = state.temperature;
    double[] then = state.previous;
    double sum = 0;
    for (int i = 0; i < now.length; i++) {
      double off = now[i] - then[i] - ratio * (then[i] - older[i]);
      sum += off * off * off * off;
      older[i] = (float) then[i];
    }
    return Math.pow(sum / now.length, 0.25);
  }

  private double mould(ThermalState state, double dt) {
    double sum = 0;
    for (int m = 0; m < mould.length; m++) {
      double rate = (state.mould[m] - mould[m]) / dt;
      double off = dt * (rate - mouldRate[m]);
      sum += off * off * off * off;
      mould[m] = state.mould[m];
      mouldRate[m] = rate;
    }
    return Math.pow(sum / Math.max(1, mould.length), 0.25);
  }
}

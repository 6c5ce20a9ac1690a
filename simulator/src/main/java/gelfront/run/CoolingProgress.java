// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.state.ThermalState;

/**
 * How far cooling has come, 0 to 1: half by the mean temperature, which moves from the first step,
 * half by the hottest cell's, which says when it is over. Never falls.
 */
final class CoolingProgress {
  private final double until;
  private final double startMean;
  private final double startHottest;
  private double mean;
  private double hottest;
  private double fraction;

  /**
   * @param until °C that all must pass
   */
  CoolingProgress(ThermalState state, double until) {
    this.until = until;
    look(state);
    startMean = mean;
    startHottest = hottest;
  }

  /** Whether all plastisol is as cool as wanted. */
  boolean done() {
    return hottest <= until;
  }

  /** Takes the state as it is now. */
  double after(ThermalState state) {
    look(state);
    double now = 0.5 * (share(startMean, mean) + share(startHottest, hottest));
    fraction = Math.max(fraction, now);
    return fraction;
  }

  /** As of the last state taken. */
  double fraction() {
    return fraction;
  }

  private double share(double start, double now) {
    return start <= until ? 1 : Math.max(0, Math.min(1, (start - now) / (start - until)));
  }

  private void look(ThermalState state) {
    double sum = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (double t : state.temperature) {
      sum += t;
      most = Math.max(most, t);
    }
    mean = sum / state.temperature.length;
    hottest = most;
  }
}

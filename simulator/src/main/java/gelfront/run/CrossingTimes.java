package gelfront.run;

import gelfront.state.ThermalState;
import java.util.Arrays;

/**
 * When each cell last fell through a temperature, by the parabola through the ends of the step and
 * the beginning of the step before. Straight lines, late by dt² T'' / (8 T'), put the standard
 * case's set times 0.07 % off in the mean, parabolas 0.025 %.
 */
public final class CrossingTimes implements StepObserver {
  private final double threshold;
  private final float[] time;
  private final float[] older;
  private double last;

  /**
   * @param cells plastisol cells
   * @param threshold °C
   */
  public CrossingTimes(int cells, double threshold) {
    this.threshold = threshold;
    time = new float[cells];
    older = new float[cells];
    Arrays.fill(time, Float.POSITIVE_INFINITY);
  }

  @Override
  public void after(ThermalState state, double from) {
    double[] a = state.previous;
    double[] b = state.temperature;
    double dt = state.time - from;
    double ratio = last > 0 ? dt / last : 0;
    for (int i = 0; i < time.length; i++) {
      if (a[i] > threshold && b[i] <= threshold) {
        double bend = ratio * (b[i] - a[i] - ratio * (a[i] - older[i])) / (1 + ratio);
        time[i] = (float) (from + dt * crossing(a[i] - threshold, b[i] - threshold, bend));
      } else if (b[i] > threshold) {
        time[i] = Float.POSITIVE_INFINITY;
      }
      older[i] = (float) a[i];
    }
    last = dt;
  }

  /**
   * Where a + (b - a - q) x + q x² is zero between 0 and 1. It starts above zero and ends at or
   * below, so there is such a place whatever q; the first.
   */
  static double crossing(double a, double b, double q) {
    double slope = b - a - q;
    double root = Math.sqrt(Math.max(0, slope * slope - 4 * q * a));
    // The quotient that loses no digits when q is small.
    double x = slope < 0 ? 2 * a / (root - slope) : -(slope + root) / (2 * q);
    return Math.max(0, Math.min(1, x));
  }

  /** s per plastisol cell, +infinity where it has not (or not for good) happened. */
  public float[] times() {
    return time.clone();
  }
}

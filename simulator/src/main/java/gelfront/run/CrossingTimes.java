package gelfront.run;

import gelfront.state.ThermalState;
import java.util.Arrays;

/** When each cell last fell through a temperature; linear inside the step. */
public final class CrossingTimes implements StepObserver {
  private final double threshold;
  private final float[] time;

  /**
   * @param cells plastisol cells
   * @param threshold °C
   */
  public CrossingTimes(int cells, double threshold) {
    this.threshold = threshold;
    time = new float[cells];
    Arrays.fill(time, Float.POSITIVE_INFINITY);
  }

  @Override
  public void after(ThermalState state, double from) {
    double[] a = state.previous;
    double[] b = state.temperature;
    double dt = state.time - from;
    for (int i = 0; i < time.length; i++) {
      if (a[i] > threshold && b[i] <= threshold) {
        time[i] = (float) (from + dt * (a[i] - threshold) / (a[i] - b[i]));
      } else if (b[i] > threshold) {
        time[i] = Float.POSITIVE_INFINITY;
      }
    }
  }

  /** s per plastisol cell, +infinity where it has not (or not for good) happened. */
  public float[] times() {
    return time.clone();
  }
}

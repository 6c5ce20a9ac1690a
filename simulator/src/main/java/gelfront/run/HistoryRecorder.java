// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.dent.TemperatureHistory;
import gelfront.grid.VoxelModel;
import gelfront.state.ThermalState;
import java.util.Arrays;

/** Keeps temperatures at times that lie ever further apart, and the mould's at the wall. */
final class HistoryRecorder implements StepObserver {
  /** Temperatures kept at most, all cells and times together: what fits beside a large run. */
  private static final double MOST_VALUES = 50e6;

  private final TemperatureHistory history = new TemperatureHistory();
  private final int[] mouldCell;
  private final double growth;
  private double[] mould = new double[64];
  private double next;

  HistoryRecorder(VoxelModel model) {
    mouldCell = model.mouldCell();
    double times = MOST_VALUES / model.cavity().count();
    growth = times > 45 ? 1.12 : times > 30 ? 1.2 : 1.3;
  }

  /** The state as it was filled. */
  void start(ThermalState state) {
    keep(state);
  }

  @Override
  public void after(ThermalState state, double from) {
    if (state.time >= next) {
      keep(state);
    }
  }

  /** Keeps the last state, whenever it came. */
  void end(ThermalState state) {
    if (state.time > history.time(history.size() - 1)) {
      keep(state);
    }
  }

  private void keep(ThermalState state) {
    history.add(state.time, state.temperature);
    if (history.size() > mould.length) {
      mould = Arrays.copyOf(mould, 2 * mould.length);
    }
    mould[history.size() - 1] = meanAtWall(state);
    next = Math.max(state.time + 0.4, state.time * growth);
  }

  private double meanAtWall(ThermalState state) {
    double sum = 0;
    int n = 0;
    for (int m : mouldCell) {
      if (m >= 0) {
        sum += state.mould[m];
        n++;
      }
    }
    return n == 0 ? Double.NaN : sum / n;
  }

  TemperatureHistory history() {
    return history;
  }

  /** °C, mean over the wall, per time of the history. */
  double[] mould() {
    return Arrays.copyOf(mould, history.size());
  }
}

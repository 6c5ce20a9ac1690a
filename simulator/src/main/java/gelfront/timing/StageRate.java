// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.base.Workers;
import gelfront.grid.VoxelModel;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.state.ThermalState;
import java.util.Arrays;

/**
 * What a Runge-Kutta stage of the plastisol takes, alone: the difference between long steps of many
 * stages and short ones of few, so that the mould and what is done once a step drop out.
 */
final class StageRate {
  /**
   * Bytes that a stage must move for each cell: temperature before, the stage before that (read and
   * written), rate at the start, 1 / capacity; eight bytes each. What each thread keeps in its
   * cache meanwhile is not counted.
   */
  static final int BYTES = 5 * 8;

  private static final double SHORT = 0.2;
  private static final double LONG = 3.2;
  private static final int STEPS = 7;

  private final ThermalState state;
  private final SplitStepper stepper;
  private double seconds;
  private double stages;

  private StageRate(VoxelModel model, Workers workers) {
    state = new ThermalState(model, StandardCase.curves(), StandardCase.START);
    stepper = new SplitStepper(model, StandardCase.curves(), workers);
  }

  /**
   * @param model of the standard case
   * @return s per stage over all cells, in the median
   */
  static double seconds(VoxelModel model, Workers workers) {
    StageRate rate = new StageRate(model, workers);
    for (double dt = 0.01; dt < LONG; dt *= 1.5) { // past the start, and warm
      rate.pass(dt);
    }
    double[] each = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      rate.pass(SHORT);
      double few = rate.seconds;
      double fewStages = rate.stages;
      rate.pass(LONG);
      each[i] = (rate.seconds - few) / (rate.stages - fewStages);
    }
    Arrays.sort(each);
    return each[STEPS / 2];
  }

  /** One step; its seconds and stages per pass. */
  private void pass(double dt) {
    double took = Stopwatch.seconds(() -> stepper.step(state, dt, MouthFilm.INSULATED));
    seconds = took / stepper.passes();
    stages = stepper.stages();
  }
}

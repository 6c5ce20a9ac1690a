// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.material.HeatCurves;
import gelfront.mesh.Vec3;
import gelfront.state.ThermalState;
import gelfront.timing.StandardCase;
import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class CrossingTimesTest {
  private static final HeatCurves CURVES = StandardCase.curves();
  private static final VoxelModel MODEL = StandardCase.model(3e-3);
  private final ThermalState state = new ThermalState(MODEL, CURVES, 165);

  private void step(CrossingTimes times, double dt, DoubleUnaryOperator temperature) {
    double from = state.time;
    state.time += dt;
    Arrays.fill(state.previous, temperature.applyAsDouble(from));
    Arrays.fill(state.temperature, temperature.applyAsDouble(state.time));
    times.after(state, from);
  }

  @Test
  void parabolasAreMetWhateverTheSteps() {
    Random random = new Random(5);
    for (int n = 0; n < 200; n++) {
      state.time = 0;
      double at = 2 + 3 * random.nextDouble();
      double slope = 1 + random.nextDouble();
      double bend = 0.2 * random.nextDouble() - 0.05;
      CrossingTimes times = new CrossingTimes(MODEL.cavity(), 105);

      while (state.time < 6) {
        step(
            times,
            0.1 + 1.5 * random.nextDouble(),
            t -> 105 - slope * (t - at) + bend * (t - at) * (t - at));
      }

      assertEquals(at, times.times()[0], 2e-5, "bend " + bend);
    }
  }

  @Test
  void theFirstStepIsStraight() {
    CrossingTimes times = new CrossingTimes(MODEL.cavity(), 105);

    step(times, 2, t -> 165 - 60 * t * t);

    assertEquals(0.5, times.times()[0], 1e-6);
  }

  /** The mean of q x^2 over a cell is q dx^2 / 12 more than in its middle. */
  @Test
  void theMiddleOfACellIsWatchedNotItsMean() {
    double q = 2e6;
    Cavity cavity = StandardCase.model(1e-3).cavity();
    ThermalState bent = new ThermalState(StandardCase.model(1e-3), CURVES, 165);
    CrossingTimes times = new CrossingTimes(cavity, 105);
    int deep = cavity.nearest(new Vec3(40e-3, 0, 0));
    double y = cavity.centre(deep, 1);
    for (int c = 0; c < cavity.count(); c++) {
      double off = cavity.centre(c, 1) - y;
      double above = q * off * off + q * 1e-6 / 12;
      bent.previous[c] = 110 + above;
      bent.temperature[c] = 100 + above;
    }
    bent.time = 1;

    times.after(bent, 0);

    assertEquals(0.5, times.times()[deep], 1e-6);
  }

  @Test
  void whatWarmsAgainHasNotSet() {
    CrossingTimes times = new CrossingTimes(MODEL.cavity(), 105);

    step(times, 1, t -> 110 - 10 * t);
    step(times, 1, t -> 90 + 10 * t);

    assertEquals(Float.POSITIVE_INFINITY, times.times()[0]);
  }

  @Test
  void aStrongBendStillGivesAZeroWithinTheStep() {
    Random random = new Random(7);
    for (int n = 0; n < 500; n++) {
      double a = 10 * random.nextDouble() + 1e-3;
      double b = -10 * random.nextDouble();
      double q = 200 * random.nextDouble() - 100;

      double x = CrossingTimes.crossing(a, b, q);

      assertTrue(x >= 0 && x <= 1, "" + x);
      assertEquals(0, a + (b - a - q) * x + q * x * x, 1e-9);
    }
  }
}

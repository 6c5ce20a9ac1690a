// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.grid.VoxelModel;
import gelfront.heat.HeatStepper;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.setup.Numerics;
import gelfront.state.ThermalState;
import gelfront.timing.StandardCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ShotRunTest {
  /** Steps of the schedule dt = 0.1 s + 0.05 t to the standard case's end. */
  private static final int STEPS_ON_SCHEDULE = 88;

  /** Of a set time: half of what normal's voxels are off, 0.5 %. */
  private static final double STEPS_MAY = 2.5e-3;

  private static final double NORMAL = StepControl.tolerance(Numerics.Level.NORMAL);
  private static final HeatCurves CURVES = StandardCase.curves();
  private static final VoxelModel MODEL = StandardCase.model(0.7e-3);
  private static final VoxelModel COARSE = StandardCase.model(3e-3);
  private static final MouthFilm HOLDING = new MouthFilm(1000, 165);
  private static final MouthFilm OPEN = new MouthFilm(9, 23);

  /** Every cell on an exponential of its own. */
  private static final HeatStepper EXPONENTIALS =
      (state, dt, mouth) -> {
        double[] fresh = state.previous;
        for (int i = 0; i < fresh.length; i++) {
          double rate = 0.01 + 0.3 * i / fresh.length;
          fresh[i] = 30 + (state.temperature[i] - 30) * Math.exp(-rate * dt);
        }
        state.previous = state.temperature;
        state.temperature = fresh;
        state.time += dt;
      };

  private static List<Double> times(Random random, int most) {
    DoubleSupplier time = () -> 120 * random.nextDouble() * random.nextDouble();
    return Stream.generate(time::getAsDouble).limit(random.nextInt(most)).toList();
  }

  @Test
  void eventsAreMetWhateverTheirTimes() {
    Random random = new Random(11);
    for (int n = 0; n < 200; n++) {
      Events events = new Events(times(random, 6), times(random, 12));
      double hold = 20 * random.nextDouble();
      List<double[]> steps = new ArrayList<>();
      ThermalState state = new ThermalState(COARSE, CURVES, 165);
      HeatStepper watched =
          (s, dt, mouth) -> {
            assertSame(s.time < hold - 1e-9 ? HOLDING : OPEN, mouth);
            EXPONENTIALS.step(s, dt, mouth);
          };
      ShotRun shot =
          new ShotRun(
              watched,
              new ShotRun.Mouth(HOLDING, hold, OPEN),
              events,
              NORMAL,
              List.of((s, from) -> steps.add(new double[] {from, s.time})));

      shot.run(state, 0, 100, Progress.NONE);

      assertEquals(100, state.time, 1e-9);
      events.looks().forEach(t -> met(steps, t));
      events.changes().forEach(t -> restarted(steps, t));
      restarted(steps, hold);
    }
  }

  private static void met(List<double[]> steps, double time) {
    assertTrue(
        time > 100 || steps.stream().anyMatch(s -> Math.abs(s[1] - time) <= 1e-9), "" + time);
  }

  private static void restarted(List<double[]> steps, double time) {
    met(steps, time);
    steps.stream()
        .filter(s -> Math.abs(s[0] - time) <= 1e-9)
        .forEach(s -> assertTrue(s[1] - s[0] < Math.max(0.011, 0.21 * longestUntil(steps, time))));
  }

  private static double longestUntil(List<double[]> steps, double time) {
    return steps.stream()
        .filter(s -> s[1] <= time + 1e-9)
        .mapToDouble(s -> s[1] - s[0])
        .max()
        .orElse(0);
  }

  @Test
  void theStandardCaseTakesNoMoreStepsThanAScheduleAndEveryCellIsRight() {
    StandardCase.Run run = StandardCase.run(MODEL, Workers.SERIAL, NORMAL);

    assertTrue(run.steps() <= STEPS_ON_SCHEDULE, "" + run.steps());
    assertEquals(0, worst(run.set(), onScheduleWithManySteps(8 * run.steps())), STEPS_MAY);
    assertTrue(run.state().ledger.imbalance() < 1e-9);
  }

  /** Steps that know nothing of errors, short from the start. */
  private static float[] onScheduleWithManySteps(int least) {
    ThermalState state = new ThermalState(MODEL, CURVES, 165);
    SplitStepper stepper = new SplitStepper(MODEL, CURVES, Workers.SERIAL);
    CrossingTimes set = new CrossingTimes(MODEL.cavity(), StandardCase.SET);
    int steps = 0;
    for (; state.time < StandardCase.END; steps++) {
      double from = state.time;
      stepper.step(state, (0.01 + 0.05 * from) / 8, MouthFilm.INSULATED);
      set.after(state, from);
    }
    assertTrue(steps >= least, steps + " of " + least);
    return set.times();
  }

  @Test
  void aQuarterOfTheToleranceChangesNoSetTimeByMuch() {
    float[] normal = StandardCase.run(MODEL, Workers.SERIAL, NORMAL).set();
    float[] finer = StandardCase.run(MODEL, Workers.SERIAL, NORMAL / 4).set();

    assertEquals(0, worst(normal, finer), STEPS_MAY);
  }

  /** Into the mould as the first shot left it, warm where it was thick. */
  @Test
  void aSecondShotIsAsRight() {
    ThermalState first = StandardCase.run(MODEL, Workers.SERIAL, NORMAL).state();

    float[] normal = secondShot(first.mould, NORMAL);
    float[] finer = secondShot(first.mould, NORMAL / 4);

    assertEquals(0, worst(normal, finer), STEPS_MAY);
  }

  private static float[] secondShot(double[] mould, double tolerance) {
    ThermalState state = new ThermalState(MODEL, CURVES, 165);
    System.arraycopy(mould, 0, state.mould, 0, mould.length);
    CrossingTimes set = new CrossingTimes(MODEL.cavity(), StandardCase.SET);
    SplitStepper stepper = new SplitStepper(MODEL, CURVES, Workers.SERIAL);
    new ShotRun(stepper, ShotRun.Mouth.SHUT, Events.NONE, tolerance, List.of(set))
        .run(state, StandardCase.SET - 0.5, 1000, Progress.NONE); // a cell's middle is hotter
    return set.times();
  }

  @Test
  void aRunThatPausesEndsAsOneThatDoesNot() {
    float[] straight = StandardCase.run(MODEL, Workers.SERIAL, NORMAL).set();
    ThermalState state = new ThermalState(MODEL, CURVES, 165);
    CrossingTimes set = new CrossingTimes(MODEL.cavity(), StandardCase.SET);
    SplitStepper stepper = new SplitStepper(MODEL, CURVES, Workers.SERIAL);
    ShotRun shot = new ShotRun(stepper, ShotRun.Mouth.SHUT, List.of(set));

    shot.run(state, 0, 3, Progress.NONE);
    assertEquals(3, state.time, 1e-9);
    shot.run(state, 0, 41, Progress.NONE);
    shot.run(state, 0, StandardCase.END, Progress.NONE);

    assertEquals(0, worst(straight, set.times()), 1e-3);
  }

  private static double worst(float[] times, float[] right) {
    double worst = 0;
    for (int i = 0; i < times.length; i++) {
      worst = Math.max(worst, Math.abs(times[i] / right[i] - 1));
    }
    return worst;
  }

  @Test
  void progressMovesFromTheStartAndEndsWhole() {
    ThermalState state = new ThermalState(MODEL, CURVES, 165);
    SplitStepper stepper = new SplitStepper(MODEL, CURVES, Workers.SERIAL);
    List<double[]> told = new ArrayList<>();
    Progress progress = (stage, fraction) -> told.add(new double[] {state.time, fraction});

    new ShotRun(stepper, ShotRun.Mouth.SHUT, List.of()).run(state, 90, 1000, progress);

    for (int n = 1; n < told.size(); n++) {
      assertTrue(told.get(n)[1] >= told.get(n - 1)[1]);
    }
    double[] early = told.stream().filter(t -> t[0] > 0.02 * state.time).findFirst().orElseThrow();
    assertTrue(early[1] > 0.1, "" + early[1]);
    assertEquals(1, told.get(told.size() - 1)[1]);
  }
}

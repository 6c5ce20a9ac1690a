// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.base.Progress;
import gelfront.heat.HeatStepper;
import gelfront.heat.MouthFilm;
import gelfront.setup.Numerics;
import gelfront.state.ThermalState;
import java.util.List;

/** Steps a shot until all of it has passed a temperature; events are met to rounding. */
public final class ShotRun {
  private static final String STAGE = "cooling";

  private final HeatStepper stepper;
  private final Mouth mouth;
  private final Events events;
  private final double tolerance;
  private final List<StepObserver> observers;
  private final Flow flow;

  /** What lies beyond the open end, by time; its change is an event. */
  public record Mouth(MouthFilm holding, double holdTime, MouthFilm open) {
    /** Closed to heat, always. */
    public static final Mouth SHUT = new Mouth(MouthFilm.INSULATED, 0, MouthFilm.INSULATED);

    MouthFilm at(double time) {
      return time < holdTime - 1e-9 ? holding : open;
    }
  }

  /** Nothing happens but the end of hold; steps of the normal level; conduction alone. */
  public ShotRun(HeatStepper stepper, Mouth mouth, List<StepObserver> observers) {
    this(stepper, mouth, Events.NONE, StepControl.tolerance(Numerics.Level.NORMAL), observers);
  }

  /** Conduction alone. */
  public ShotRun(
      HeatStepper stepper,
      Mouth mouth,
      Events events,
      double tolerance,
      List<StepObserver> observers) {
    this(stepper, mouth, events, tolerance, observers, Flow.NONE);
  }

  /**
   * @param events beside the end of hold
   * @param tolerance K, as of {@link StepControl#tolerance}
   * @param flow after each step of conduction
   */
  public ShotRun(
      HeatStepper stepper,
      Mouth mouth,
      Events events,
      double tolerance,
      List<StepObserver> observers,
      Flow flow) {
    this.stepper = stepper;
    this.mouth = mouth;
    this.events = events.withChange(mouth.holdTime());
    this.tolerance = tolerance;
    this.observers = List.copyOf(observers);
    this.flow = flow;
  }

  /**
   * Goes on from where the state is; its first step is small.
   *
   * @param until °C that all plastisol must have passed
   * @param longest s at which it is given up, met to rounding
   * @return steps taken
   */
  public int run(ThermalState state, double until, double longest, Progress progress) {
    StepControl control = new StepControl(tolerance);
    StepError error = new StepError(state);
    CoolingProgress cooling = new CoolingProgress(state, until);
    progress.check(STAGE, 0);
    int steps = 0;
    while (!cooling.done() && state.time < longest - 1e-9) {
      double from = state.time;
      double dt = control.length(Math.min(longest, events.next(from)) - from);
      stepper.step(state, dt, mouth.at(from));
      progress.check(STAGE, cooling.fraction());
      double done = cooling.fraction();
      flow.after(state, from, () -> progress.check(STAGE, done));
      control.taken(dt, error.after(state, dt));
      if (events.changeAt(state.time)) {
        control.restart();
        error.restart();
      }
      observers.forEach(o -> o.after(state, from));
      steps++;
      progress.check(STAGE, cooling.after(state));
    }
    return steps;
  }
}

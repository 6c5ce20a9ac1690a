package gelfront.run;

import gelfront.base.Progress;
import gelfront.heat.HeatStepper;
import gelfront.heat.MouthFilm;
import gelfront.state.ThermalState;
import java.util.List;

/**
 * Steps a shot until all of it has passed a temperature. Steps grow with the time since the last
 * event, so that each is a small part of what has gone before; events are met exactly.
 */
public final class ShotRun {
  /** First step after an event, s. */
  private static final double FIRST = 0.05;

  /** Growth of a step with the time since the last event. */
  private static final double GROWTH = 0.05;

  /** Longest step, s. */
  private static final double LONGEST = 4;

  private final HeatStepper stepper;
  private final List<StepObserver> observers;
  private final Mouth mouth;

  /** What lies beyond the open end, by time; its changes are the run's events. */
  public record Mouth(MouthFilm holding, double holdTime, MouthFilm open) {
    MouthFilm at(double time) {
      return time < holdTime - 1e-9 ? holding : open;
    }
  }

  public ShotRun(HeatStepper stepper, Mouth mouth, List<StepObserver> observers) {
    this.stepper = stepper;
    this.mouth = mouth;
    this.observers = List.copyOf(observers);
  }

  /**
   * @param until °C that all plastisol must have passed
   * @param longest s after which it is given up
   * @return steps taken
   */
  public int run(ThermalState state, double until, double longest, Progress progress) {
    int steps = 0;
    double event = 0;
    double start = hottest(state);
    double hottest = start;
    while (hottest > until && state.time < longest) {
      double dt = Math.min(LONGEST, FIRST + GROWTH * (state.time - event));
      double hold = mouth.holdTime();
      if (state.time < hold - 1e-9 && state.time + 1.5 * dt > hold) {
        dt = state.time + dt >= hold - 1e-9 ? hold - state.time : 0.5 * (hold - state.time);
      }
      double from = state.time;
      stepper.step(state, dt, mouth.at(from));
      if (from < hold && Math.abs(state.time - hold) < 1e-9) {
        event = state.time;
      }
      observers.forEach(o -> o.after(state, from));
      hottest = hottest(state);
      steps++;
      progress.check("cooling", Math.min(1, (start - hottest) / (start - until)));
    }
    return steps;
  }

  private static double hottest(ThermalState state) {
    double most = Double.NEGATIVE_INFINITY;
    for (double t : state.temperature) {
      most = Math.max(most, t);
    }
    return most;
  }
}

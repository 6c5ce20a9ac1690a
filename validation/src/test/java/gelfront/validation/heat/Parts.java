// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.heat.HeatStepper;
import gelfront.heat.MouthFilm;
import gelfront.state.ThermalState;

/** Takes each step in equal parts; an observer sees the whole step. */
final class Parts implements HeatStepper {
  private final HeatStepper stepper;
  private final int parts;
  private double[] before;

  Parts(HeatStepper stepper, int parts) {
    this.stepper = stepper;
    this.parts = parts;
  }

  @Override
  public void step(ThermalState state, double dt, MouthFilm mouth) {
    double[] start = state.temperature.clone();
    if (before != null) {
      state.previous = before;
    }
    for (int i = 0; i < parts; i++) {
      stepper.step(state, dt / parts, mouth);
    }
    before = state.previous;
    state.previous = start;
  }
}

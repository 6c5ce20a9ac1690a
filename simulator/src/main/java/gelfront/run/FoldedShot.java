// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.grid.Fold;
import gelfront.heat.HeatStepper;
import gelfront.heat.MouthFilm;
import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;

/**
 * Steps what is left of a folded model and unfolds what comes out, so that whoever looks on sees
 * the whole. The whole knows of a step once its flow is calculated, too.
 */
public final class FoldedShot implements HeatStepper, Flow {
  private final FoldedState folded;
  private final HeatStepper stepper;
  private final Flow flow;

  /**
   * @param whole filled; read here, and afterwards only what it loses of its contact
   * @param stepper of what is left
   * @param flow of what is left
   */
  public FoldedShot(
      Fold fold, HeatCurves curves, ThermalState whole, HeatStepper stepper, Flow flow) {
    folded = new FoldedState(fold, curves, whole);
    this.stepper = stepper;
    this.flow = flow;
  }

  @Override
  public void step(ThermalState whole, double dt, MouthFilm mouth) {
    folded.lose(whole.lostContact);
    stepper.step(folded.left(), dt, mouth);
    whole.time = folded.left().time;
  }

  @Override
  public void after(ThermalState whole, double from, Runnable ask) {
    flow.after(folded.left(), from, ask);
    folded.unfold(whole);
  }
}

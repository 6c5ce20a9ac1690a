// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.setup.Numerics;
import gelfront.state.ThermalState;
import gelfront.voxelize.CaseVoxels;
import java.util.List;

/**
 * What a thermometer in a cooling shot sees; conduction alone, nothing is drawn in. Steps are those
 * of the fine level at any: a fit goes by differences of tenths of a kelvin.
 */
public final class CoolingCurve {
  /** °C that nothing falls through: runs until it is told to end. */
  private static final double NEVER = -1e6;

  private CoolingCurve() {}

  /**
   * @param place of the thermometer, metres
   * @param until s
   * @throws IllegalArgumentException if the place lies outside the plastisol
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public static Sensor of(
      Case c, CaseVoxels voxels, Vec3 place, double until, Workers workers, Progress progress) {
    HeatCurves curves = HeatCurves.of(c.plastisol());
    ThermalState state = new ThermalState(voxels.model(), curves, c.shot().temperature());
    Sensor sensor = new Sensor(voxels.model().cavity(), place);
    sensor.see(state);
    new ShotRun(
            new SplitStepper(voxels.model(), curves, workers),
            OneShot.mouth(c),
            Events.of(c.shot()),
            StepControl.tolerance(Numerics.Level.FINE, c.block()),
            List.of(sensor))
        .run(state, NEVER, until, progress);
    return sensor;
  }
}

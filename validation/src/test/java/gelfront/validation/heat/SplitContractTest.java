// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.base.Workers;
import gelfront.grid.VoxelModel;
import gelfront.heat.HeatStepper;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;

class SplitContractTest extends HeatStepperContract {
  @Override
  HeatStepper stepper(VoxelModel model, HeatCurves curves) {
    return new SplitStepper(model, curves, Workers.SERIAL);
  }

  /** The mould's backward Euler. */
  @Override
  double order() {
    return 0.9;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.grid.VoxelModel;
import gelfront.heat.HeatStepper;
import gelfront.material.HeatCurves;
import gelfront.validation.coupled.CoupledStepper;

class CoupledContractTest extends HeatStepperContract {
  @Override
  HeatStepper stepper(VoxelModel model, HeatCurves curves) {
    return new CoupledStepper(model, curves, 1e-6);
  }

  @Override
  double order() {
    return 1.8;
  }
}

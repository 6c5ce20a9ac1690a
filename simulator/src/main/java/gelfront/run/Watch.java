// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.voxelize.CaseVoxels;
import java.util.List;

/** Somebody who looks on while the shot that is looked at is calculated. */
@FunctionalInterface
public interface Watch {
  /** Nobody. */
  Watch NOBODY = voxels -> List.of();

  /**
   * @param voxels of the case; read only
   * @return told after each step, on the thread that calculates
   */
  List<StepObserver> over(CaseVoxels voxels);
}

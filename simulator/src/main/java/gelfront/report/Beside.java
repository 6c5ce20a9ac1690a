// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Doubt;
import gelfront.answer.VoxelDoubt;
import java.util.Optional;

/**
 * What is known of a verdict beside the run that gave it.
 *
 * @param doubt over all that isn't known for sure; absent where it wasn't calculated
 * @param voxels how far it hangs on their size; absent where it wasn't compared
 */
public record Beside(Optional<Doubt> doubt, Optional<VoxelDoubt> voxels) {
  public static final Beside NOTHING = new Beside(Optional.empty(), Optional.empty());
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.grid.Fold;
import gelfront.grid.Mirrors;
import gelfront.grid.VoxelModel;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.verdict.Owners;
import gelfront.voxelize.CaseVoxels;

/**
 * How far a case can be folded: the mould's shape and its cooling tell, and liquid must neither
 * weigh nor leave across a plane. Cavities are not folded onto each other.
 */
final class Folding {
  private static final double ROUNDING = 1e-9;

  private Folding() {}

  static Fold of(Case c, CaseVoxels voxels) {
    VoxelModel model = voxels.model();
    if (c.numerics().whole()) {
      return Fold.none(model);
    }
    Vec3 up = c.up();
    Vec3 out = voxels.mouth().direction();
    Mirrors allowed =
        new Mirrors(
            level(up.x()) && level(out.x()),
            level(up.y()) && level(out.y()),
            level(up.z()) && level(out.z()));
    return Fold.of(model, Owners.of(voxels), allowed);
  }

  private static boolean level(double component) {
    return Math.abs(component) < ROUNDING;
  }
}

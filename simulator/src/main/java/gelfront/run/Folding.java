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

  /** K that the mould may be warmer than its image before a shot. */
  private static final double WARMER = 0.2;

  private Folding() {}

  /**
   * @param mould °C per mould cell before the shot
   */
  static Fold of(Case c, CaseVoxels voxels, double[] mould) {
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
    Fold fold = Fold.of(model, Owners.of(voxels), allowed);
    return evenlyWarm(fold, mould) ? fold : Fold.none(model);
  }

  private static boolean evenlyWarm(Fold fold, double[] mould) {
    boolean even = true;
    for (int i = 0; i < mould.length; i++) {
      even &= Math.abs(mould[i] - mould[fold.keptMould()[fold.mould()[i]]]) < WARMER;
    }
    return even;
  }

  private static boolean level(double component) {
    return Math.abs(component) < ROUNDING;
  }
}

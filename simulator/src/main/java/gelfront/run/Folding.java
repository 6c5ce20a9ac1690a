// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.grid.Fold;
import gelfront.grid.Mirrors;
import gelfront.grid.VoxelModel;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.verdict.Owners;
import gelfront.voxelize.CaseVoxels;
import java.util.ArrayList;
import java.util.List;

/**
 * How far a case can be folded: the mould's shape and its cooling tell, and liquid must neither
 * weigh nor leave across a plane. Cavities are not folded onto each other.
 */
final class Folding {
  private static final double ROUNDING = 1e-9;

  /** K that the mould may be warmer than its image before a shot. */
  private static final double WARMER = 0.2;

  /** What vents may differ by on the sides of a plane, of all. */
  private static final double UNLIKE = 0.02;

  private Folding() {}

  /**
   * For what cools; where no flow is calculated nothing weighs.
   *
   * @param mould °C per mould cell before the shot
   */
  static Fold of(Case c, CaseVoxels voxels, double[] mould) {
    Vec3 mouth = voxels.mouth().direction();
    Mirrors along = across(mouth);
    return of(c, voxels, mould, c.numerics().flow() ? both(across(c.up(mouth)), along) : along);
  }

  /**
   * For the shot itself, which does not weigh, so that planes that lie are as good; but air must
   * leave on both sides alike.
   *
   * @param vents m3/(Pa s) per plastisol cell
   */
  static Fold ofShot(Case c, CaseVoxels voxels, double[] mould, double[] vents) {
    Mirrors all = across(voxels.mouth().direction());
    List<Mirrors> tried = new ArrayList<>(List.of(all));
    for (int axis = 0; axis < 3; axis++) {
      if (all.at(axis)) {
        tried.add(new Mirrors(all.x() && axis != 0, all.y() && axis != 1, all.z() && axis != 2));
      }
    }
    return tried.stream()
        .map(m -> of(c, voxels, mould, m))
        .filter(f -> alike(vents, f))
        .findFirst()
        .orElse(Fold.none(voxels.model()));
  }

  private static Fold of(Case c, CaseVoxels voxels, double[] mould, Mirrors allowed) {
    VoxelModel model = voxels.model();
    if (c.numerics().whole()) {
      return Fold.none(model);
    }
    Fold fold = Fold.of(model, Owners.of(voxels), allowed);
    return evenlyWarm(fold, mould) ? fold : Fold.none(model);
  }

  /** Planes along a way. */
  private static Mirrors across(Vec3 way) {
    return new Mirrors(level(way.x()), level(way.y()), level(way.z()));
  }

  private static Mirrors both(Mirrors a, Mirrors b) {
    return new Mirrors(a.x() && b.x(), a.y() && b.y(), a.z() && b.z());
  }

  private static boolean alike(double[] vents, Fold fold) {
    double sum = 0;
    double off = 0;
    for (int c = 0; c < vents.length; c++) {
      sum += vents[c];
      off += Math.abs(vents[c] - vents[fold.kept()[fold.cell()[c]]]);
    }
    return off <= UNLIKE * sum;
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

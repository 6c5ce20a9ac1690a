// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.fill;

import gelfront.base.Progress;
import gelfront.fill.Chill;
import gelfront.fill.Drive;
import gelfront.fill.FillLaw;
import gelfront.fill.FillRecord;
import gelfront.fill.Filling;
import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.grid.VoxelModel;
import gelfront.material.HeatCurves;
import gelfront.material.ViscosityCurve;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.state.ThermalState;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.Mouth;
import gelfront.voxelize.PartingPlane;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Shots of one viscosity into walls that take no heat. */
final class Shots {
  static final double HOT = 100;

  /** m3/(Pa s): air leaves every cell as if there were no wall. */
  static final double OPEN = 1e-6;

  private Shots() {}

  static Cavity cavity(List<TriangleMesh> parts, double dx, Mouth mouth) {
    return CavityBuilder.build(
        parts.stream().map(m -> new Labelled(Cavity.Region.PART, m)).toList(),
        dx,
        Optional.of(mouth),
        Progress.NONE);
  }

  static Mouth mouth(Vec3 at, Vec3 out, double radius) {
    return new Mouth(at, out, radius);
  }

  /** Of 1 Pa s. */
  static FillRecord shoot(Cavity cavity, Drive drive, double ventEach) {
    double[] vents = new double[cavity.count()];
    Arrays.fill(vents, ventEach);
    return shoot(cavity, drive, vents, true);
  }

  /**
   * The halves part across z, with a shadow that is called 1 m2: what pushes them is a mean
   * pressure.
   *
   * @param gathered false: every cell is a block of its own
   */
  static FillRecord shoot(Cavity cavity, Drive drive, double[] vents, boolean gathered) {
    HeatCurves curves = curves();
    FillLaw law =
        new FillLaw(
            curves,
            new ViscosityCurve(new double[] {HOT}, new double[] {0}),
            0,
            HOT,
            drive,
            1e9,
            20);
    ThermalState state = new ThermalState(insulated(cavity), curves, HOT);
    double[] thrown = new PartingPlane(2, 0, 1).thrown(cavity);
    return new Filling(cavity, law, vents, thrown, Chill.NONE, state, gathered).run(Progress.NONE);
  }

  static HeatCurves curves() {
    double[] t = {0, 200};
    return new HeatCurves(t, new double[] {0, 4e8}, new double[] {0}, new double[] {0.15});
  }

  private static VoxelModel insulated(Cavity cavity) {
    int[] none = new int[cavity.walls().count()];
    Arrays.fill(none, -1);
    double[] nothing = {};
    MouldCells mould =
        new MouldCells(
            null,
            new int[0],
            new int[0],
            nothing,
            nothing,
            new int[0],
            nothing,
            nothing,
            nothing,
            nothing);
    return new VoxelModel(cavity, mould, none, new double[none.length]);
  }
}

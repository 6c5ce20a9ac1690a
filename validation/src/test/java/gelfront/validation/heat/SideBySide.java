// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.heat.HeatStepper;
import gelfront.heat.MouthFilm;
import gelfront.material.HeatCurves;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.run.CrossingTimes;
import gelfront.run.Events;
import gelfront.run.ShotRun;
import gelfront.run.StepControl;
import gelfront.setup.Block;
import gelfront.setup.Numerics;
import gelfront.setup.Side;
import gelfront.state.ThermalState;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.MouldBuilder;
import gelfront.voxelize.Mouth;
import java.util.List;
import java.util.Optional;

/**
 * One cavity in one block, with moulds of two resolutions, and how two sets of setting times
 * differ.
 *
 * @param cavity plastisol cells
 * @param block its material, films and contact
 * @param box its outer faces
 */
record SideBySide(Cavity cavity, Block block, Box box) {
  static final MouldMaterial ALUMINIUM = new MouldMaterial("aluminium", 167, 2700, 896);

  /** Printed resin, common practice, no source. */
  static final MouldMaterial RESIN = new MouldMaterial("resin", 0.2, 1170, 1350);

  private static final double SHOT = 165;
  private static final double SET = 105;

  /** s, some ten steps after the start; what sets sooner is at the mercy of the first few. */
  private static final double EARLY = 0.5;

  /** Of the standard case. */
  static HeatCurves curves() {
    double c = 1050 * 1900;
    double l = 1050 * 8000;
    return new HeatCurves(
        new double[] {-10, 90, 120, 220},
        new double[] {-100 * c, 0, 30 * c + l, 130 * c + l},
        new double[] {25},
        new double[] {0.16});
  }

  private static double[] mm(double... v) {
    for (int i = 0; i < v.length; i++) {
      v[i] *= 1e-3;
    }
    return v;
  }

  private static Block block(MouldMaterial material) {
    return new Block(material, 1, Optional.empty(), 30, 25, 10, 1500, List.of(), List.of());
  }

  /** standard-case.json: a body of revolution, gate and sprue in 15 mm of aluminium. */
  static SideBySide standardCase(double spacing) {
    var body = Solids.revolution(mm(0, 10, 40, 65, 85, 97, 100), mm(2.5, 5, 7, 3, 5, 3, 0.8), 128);
    var gate = Solids.revolution(mm(-3.5, 0.5), mm(1.5, 1.5), 128);
    var sprue = Solids.revolution(mm(-33, -3), mm(5, 5), 128);
    Mouth mouth = new Mouth(new Vec3(-33e-3, 0, 0), new Vec3(-1, 0, 0), 5e-3);
    Cavity cavity =
        CavityBuilder.build(
            List.of(
                new Labelled(Cavity.Region.PART, body),
                new Labelled(Cavity.Region.GATE, gate),
                new Labelled(Cavity.Region.SPRUE, sprue)),
            spacing,
            Optional.of(mouth),
            Progress.NONE);
    Box box = new Box(new Vec3(-33e-3, -22e-3, -22e-3), new Vec3(115e-3, 22e-3, 22e-3));
    return new SideBySide(cavity, block(ALUMINIUM), box);
  }

  /** Two bulbs of 4 and 3 mm radius with a waist of 2.2 mm, closed, with walls all round. */
  static SideBySide bulbs(MouldMaterial material, double wall, double spacing) {
    var body = Solids.revolution(mm(0, 2, 6, 10, 14, 17, 18), mm(1, 3, 4, 2.2, 3, 2, 1), 96);
    Cavity cavity =
        CavityBuilder.build(
            List.of(new Labelled(Cavity.Region.PART, body)),
            spacing,
            Optional.empty(),
            Progress.NONE);
    return new SideBySide(cavity, block(material), body.box().grown(wall));
  }

  /** The bulbs 1 mm from the face -z, which water cools, and 8 mm from all others. */
  static SideBySide nearWater(MouldMaterial material, double spacing) {
    SideBySide even = bulbs(material, 8e-3, spacing);
    Box box = even.box;
    Vec3 low = new Vec3(box.min().x(), box.min().y(), box.min().z() + 7e-3);
    Block air = even.block;
    Block.Face water = new Block.Face(new Side(2, false), 1000, 12);
    Block wet =
        new Block(
            material,
            air.wall(),
            air.outer(),
            air.startTemperature(),
            air.airTemperature(),
            air.airFilm(),
            air.contactConductance(),
            List.of(),
            List.of(),
            List.of(water),
            air.contactConductance(),
            Optional.empty(),
            List.of());
    return new SideBySide(even.cavity, wet, new Box(low, box.max()));
  }

  /** The bulbs in aluminium, the thinner one in a bush of resin that reaches over its end. */
  static SideBySide inBush(double spacing) {
    SideBySide even = bulbs(ALUMINIUM, 6e-3, spacing);
    Block bare = even.block;
    Box bush = new Box(new Vec3(11e-3, -6e-3, -6e-3), new Vec3(22e-3, 6e-3, 6e-3));
    Block block =
        new Block(
            ALUMINIUM,
            bare.wall(),
            bare.outer(),
            bare.startTemperature(),
            bare.airTemperature(),
            bare.airFilm(),
            bare.contactConductance(),
            List.of(),
            List.of(new Block.Insert(new Block.Region.Cuboid(bush), RESIN)));
    return new SideBySide(even.cavity, block, even.box);
  }

  /** With the mould that every run gets. */
  VoxelModel ordinary() {
    return MouldBuilder.build(cavity, block, box);
  }

  /** With mould cells of one voxel. */
  VoxelModel fine() {
    return MouldBuilder.build(cavity, block, box, 1);
  }

  /** s at which each cell sets, with the steps that every shot takes at the normal level. */
  float[] setTimes(HeatStepper stepper, VoxelModel model) {
    double steps = StepControl.tolerance(Numerics.Level.NORMAL, block);
    ThermalState state = new ThermalState(model, curves(), SHOT);
    CrossingTimes set = new CrossingTimes(model.cavity(), SET);
    ShotRun.Mouth shut = new ShotRun.Mouth(MouthFilm.INSULATED, 0, MouthFilm.INSULATED);
    new ShotRun(stepper, shut, Events.NONE, steps, List.of(set))
        .run(state, SET - 1, 7200, Progress.NONE);
    return set.times();
  }

  /**
   * Of one set of setting times from another, over the part's cells.
   *
   * @param mean of the differences' sizes, over the mean time
   * @param worst largest difference, over the cell's own time
   * @param held the same, over {@link #EARLY} where the cell set sooner
   * @param last difference of the last time, over that time
   */
  record Difference(double mean, double worst, double held, double last) {}

  Difference difference(float[] seen, float[] wanted) {
    double sum = 0;
    double whole = 0;
    double worst = 0;
    double held = 0;
    double lastSeen = 0;
    double last = 0;
    for (int c = 0; c < seen.length; c++) {
      if (cavity.region()[c] == Cavity.Region.PART.ordinal()) {
        double off = Math.abs((double) seen[c] - wanted[c]);
        sum += off;
        whole += wanted[c];
        worst = Math.max(worst, off / wanted[c]);
        held = Math.max(held, off / Math.max(EARLY, wanted[c]));
        lastSeen = Math.max(lastSeen, seen[c]);
        last = Math.max(last, wanted[c]);
      }
    }
    return new Difference(sum / whole, worst, held, lastSeen / last - 1);
  }
}

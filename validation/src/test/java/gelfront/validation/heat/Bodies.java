// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.heat.HeatStepper;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.run.Events;
import gelfront.run.ShotRun;
import gelfront.setup.Block;
import gelfront.state.ThermalState;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.MouldBuilder;
import java.util.List;
import java.util.Optional;

/** Simple bodies in surroundings that stay at {@link #AROUND}, voxelized and run as parts are. */
final class Bodies {
  /** K, a quarter of the fine level's: errors in space alone are looked at. */
  private static final double STEPS = 0.0125;

  static final double K = 0.15;
  static final double C = 1.9e6;
  static final double ALPHA = K / C;
  static final double START = 165;
  static final double AROUND = 30;

  /** Stands for a conductance without end: Bi is then some 10^7. */
  private static final double PERFECT = 1e9;

  /** Neither warms nor holds heat back. */
  private static final MouldMaterial FIXED = new MouldMaterial("fixed", 1e9, 1e6, 1e6);

  private static final int SEGMENTS = 256;

  private Bodies() {}

  /** Heat capacity C throughout, no latent heat. */
  static HeatCurves plain() {
    return new HeatCurves(
        new double[] {0, 200}, new double[] {0, 200 * C}, new double[] {25}, new double[] {K});
  }

  /** W/m2 K for a Biot number on half a thickness or a radius. */
  static double film(double biot, double radius) {
    return biot == Double.POSITIVE_INFINITY ? PERFECT : biot * K / radius;
  }

  static VoxelModel ball(double radius, double spacing, double film) {
    return model(Solids.sphere(Vec3.ZERO, radius, SEGMENTS), spacing, film);
  }

  /** Long enough that its middle knows nothing of the ends. */
  static VoxelModel bar(double radius, Vec3 direction, double spacing, double film) {
    Vec3 end = direction.times(3.5 * radius / direction.length());
    return model(Solids.cylinder(end.times(-1), end, radius, radius, SEGMENTS), spacing, film);
  }

  /** A slice of an endless bar along x: a few cells long, its flat ends pass no heat. */
  static VoxelModel slice(double radius, double spacing, double film) {
    Vec3 end = new Vec3(3 * spacing, 0, 0);
    TriangleMesh disc = Solids.cylinder(end.times(-1), end, radius, radius, SEGMENTS);
    VoxelModel model = model(disc, spacing, film);
    double[] resistance = model.resistance().clone();
    for (int w = 0; w < resistance.length; w++) {
      if (model.cavity().walls().face()[w] < 2) {
        resistance[w] = Double.POSITIVE_INFINITY;
      }
    }
    return new VoxelModel(model.cavity(), model.mould(), model.mouldCell(), resistance);
  }

  static VoxelModel model(TriangleMesh mesh, double spacing, double film) {
    return model(List.of(mesh), spacing, film);
  }

  /**
   * @param off where within a body round the origin a grid point lies, in voxels
   */
  static VoxelModel model(TriangleMesh mesh, Vec3 off, double spacing, double film) {
    // The grid hangs on the first solid.
    Vec3 half = new Vec3(spacing, spacing, spacing);
    Vec3 middle = off.times(spacing);
    TriangleMesh hook = Solids.box(middle.minus(half), middle.plus(half));
    return model(List.of(hook, mesh), spacing, film);
  }

  private static VoxelModel model(List<TriangleMesh> meshes, double spacing, double film) {
    Cavity cavity =
        CavityBuilder.build(
            meshes.stream().map(m -> new Labelled(Cavity.Region.PART, m)).toList(),
            spacing,
            Optional.empty(),
            Progress.NONE);
    Box outer = meshes.get(meshes.size() - 1).box().grown(10 * spacing);
    Block block =
        new Block(
            FIXED, 10 * spacing, Optional.empty(), AROUND, AROUND, 0, film, List.of(), List.of());
    return MouldBuilder.build(cavity, block, outer);
  }

  /** What a run leaves. */
  record Run(ThermalState state, Watch watch) {}

  /** Watched at the origin, until all is that cold. */
  static Watch cool(VoxelModel model, double until) {
    return cool(model, Vec3.ZERO, until);
  }

  /** Watched at a place, until all is that cold. */
  static Watch cool(VoxelModel model, Vec3 probe, double until) {
    return run(model, probe, plain(), START, until, 1e6).watch();
  }

  /** Watched at a place, for a time. */
  static Run run(VoxelModel model, Vec3 probe, HeatCurves curves, double time) {
    return run(model, probe, curves, START, time);
  }

  /** From another start, for a time. */
  static Run run(VoxelModel model, Vec3 probe, HeatCurves curves, double start, double time) {
    return run(model, probe, curves, start, Double.NEGATIVE_INFINITY, time);
  }

  private static Run run(
      VoxelModel model, Vec3 probe, HeatCurves curves, double start, double until, double longest) {
    SplitStepper split = new SplitStepper(model, curves, Workers.SERIAL);
    return run(split, model, probe, curves, start, until, longest);
  }

  /** A run with steps short enough to leave errors in space alone. */
  static Run run(
      HeatStepper stepper,
      VoxelModel model,
      Vec3 probe,
      HeatCurves curves,
      double start,
      double until,
      double longest) {
    ThermalState state = new ThermalState(model, curves, start);
    Watch watch = new Watch(model.cavity(), List.of(probe));
    watch.see(state);
    ShotRun.Mouth shut = new ShotRun.Mouth(MouthFilm.INSULATED, 0, MouthFilm.INSULATED);
    new ShotRun(stepper, shut, Events.NONE, STEPS, List.of(watch))
        .run(state, until, longest, Progress.NONE);
    return new Run(state, watch);
  }

  static double theta(double temperature) {
    return (temperature - AROUND) / (START - AROUND);
  }

  static double temperature(double theta) {
    return AROUND + theta * (START - AROUND);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.grid.Cavity;
import gelfront.grid.Fold;
import gelfront.grid.Mirrors;
import gelfront.grid.VoxelModel;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.run.CrossingTimes;
import gelfront.run.Events;
import gelfront.run.FoldedState;
import gelfront.run.ShotRun;
import gelfront.run.StepControl;
import gelfront.run.StepObserver;
import gelfront.setup.Block;
import gelfront.setup.Numerics;
import gelfront.state.ThermalState;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Closer;
import gelfront.voxelize.Filing;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.MouldBuilder;
import gelfront.voxelize.Mouth;
import gelfront.voxelize.Resolution;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The case that accuracy and speed are quoted for: a body of revolution about x with a round gate
 * of 3 mm and a sprue of 10 mm in an aluminium block, conduction alone, the sprue's end insulated.
 * Latent heat 8 kJ/kg from 120 down to 90 °C. Its reference values stand in the validation module.
 */
public final class StandardCase {
  /** By then all plastisol is below 90 °C, s. */
  public static final double END = 139.625;

  /** °C whose crossing is the set time. */
  public static final double SET = 105;

  /** °C that all plastisol has passed by {@link #END}. */
  public static final double FIRM = 90;

  /** Of its circles; the area that they lack is 0.01 %, and so about is the time. */
  private static final int SEGMENTS = 256;

  /** Width of the body, metres. */
  private static final double WIDTH = 14e-3;

  /** Width of the gate, metres. */
  private static final double GATE = 3e-3;

  /** Of body and feed, m3. */
  private static final double VOLUME = 10e-6;

  private static final double HEAT = 1050 * 1900;
  private static final double LATENT = 1050 * 8000;
  static final double START = 165;

  /** °C that no cell reaches: the run ends by the clock. */
  private static final double FOR_TIME_ALONE = 0;

  /** Shape and block as a case for {@code standard.stl}, the body alone; usual materials. */
  public static final String CASE =
      """
      [part]
      mesh = "standard.stl"
      unit = "mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      shape = "round"
      size = "3 mm"
      land = "3 mm"
      [sprue]
      diameter = "10 mm"
      mouth_diameter = "10 mm"
      length = "30 mm"
      [block]
      material = "aluminium-6061"
      wall = "15 mm"
      start = "30 degC"
      [plastisol]
      grade = "soft"
      [shot]
      temperature = "165 degC"
      [numerics]
      level = "normal"
      """;

  private StandardCase() {}

  /**
   * @param state at the end
   * @param set s per plastisol cell, when it fell through {@link #SET}
   * @param firm s per plastisol cell, when it fell through {@link #FIRM}
   * @param steps taken
   * @param passes over all cells: a step repeated counts again
   */
  public record Run(ThermalState state, float[] set, float[] firm, int steps, int passes) {}

  /** Body, gate and sprue overlapping. */
  static List<Labelled> solids() {
    return List.of(
        new Labelled(Cavity.Region.PART, body(SEGMENTS)),
        new Labelled(Cavity.Region.GATE, Solids.revolution(mm(-3.5, 0.5), mm(1.5, 1.5), SEGMENTS)),
        new Labelled(Cavity.Region.SPRUE, Solids.revolution(mm(-33, -3), mm(5, 5), SEGMENTS)));
  }

  /** Without gate and sprue. */
  public static TriangleMesh body(int segments) {
    return Solids.revolution(mm(0, 10, 40, 65, 85, 97, 100), mm(2.5, 5, 7, 3, 5, 3, 0.8), segments);
  }

  private static double[] mm(double... v) {
    for (int i = 0; i < v.length; i++) {
      v[i] *= 1e-3;
    }
    return v;
  }

  /** As fine as a level wants it, with smaller cells in the gate. */
  public static VoxelModel model(Numerics.Level level) {
    return model(new Numerics(level, OptionalDouble.empty()));
  }

  /** As above, with a voxel of one's own. */
  public static VoxelModel model(Numerics numerics) {
    Box gate = solids().get(1).mesh().box();
    Resolution fine = Resolution.of(numerics, GATE, VOLUME, 10 * VOLUME, WIDTH);
    return model(fine.voxel(), fine.closer(List.of(new Resolution.Channel(gate, GATE))));
  }

  /**
   * Of voxels alone.
   *
   * @param spacing metres
   */
  public static VoxelModel model(double spacing) {
    return model(spacing, Closer.NONE);
  }

  /**
   * @param spacing metres
   * @param closer where cells are smaller
   */
  public static VoxelModel model(double spacing, Closer closer) {
    Mouth mouth = new Mouth(new Vec3(-33e-3, 0, 0), new Vec3(-1, 0, 0), 5e-3);
    Cavity cavity =
        CavityBuilder.build(
            solids(), spacing, closer, Optional.of(mouth), Filing.NONE, Progress.NONE);
    Block block =
        new Block(
            new MouldMaterial("aluminium", 167, 2700, 896),
            15e-3,
            Optional.empty(),
            30,
            25,
            10,
            1500,
            List.of(),
            List.of());
    Box box = new Box(new Vec3(-33e-3, -22e-3, -22e-3), new Vec3(115e-3, 22e-3, 22e-3));
    return MouldBuilder.build(cavity, block, box);
  }

  public static HeatCurves curves() {
    return new HeatCurves(
        new double[] {-10, 90, 120, 220},
        new double[] {-100 * HEAT, 0, 30 * HEAT + LATENT, 130 * HEAT + LATENT},
        new double[] {25},
        new double[] {0.16});
  }

  /** Steps as of the normal level. */
  public static Run run(VoxelModel model, Workers workers) {
    return run(model, workers, Numerics.Level.NORMAL);
  }

  /** Steps as of a level. */
  public static Run run(VoxelModel model, Workers workers, Numerics.Level level) {
    return run(model, workers, StepControl.tolerance(level));
  }

  /**
   * @param tolerance K, as of {@link StepControl#tolerance}
   */
  public static Run run(VoxelModel model, Workers workers, double tolerance) {
    Fold fold = Fold.of(model, new short[model.cavity().count()], new Mirrors(false, true, true));
    return run(model, fold, workers, tolerance);
  }

  /** As above, mirror images calculated, too. */
  public static Run whole(VoxelModel model, Workers workers, double tolerance) {
    return run(model, Fold.none(model), workers, tolerance);
  }

  private static Run run(VoxelModel model, Fold fold, Workers workers, double tolerance) {
    HeatCurves curves = curves();
    ThermalState state = new ThermalState(model, curves, START);
    FoldedState folded = new FoldedState(fold, curves, state);
    SplitStepper stepper = new SplitStepper(fold.model(), curves, workers);
    CrossingTimes set = new CrossingTimes(fold.model().cavity(), SET);
    CrossingTimes firm = new CrossingTimes(fold.model().cavity(), FIRM);
    int[] passes = new int[1];
    StepObserver count = (s, from) -> passes[0] += stepper.passes();
    ShotRun shot =
        new ShotRun(stepper, ShotRun.Mouth.SHUT, Events.NONE, tolerance, List.of(set, firm, count));
    int taken = shot.run(folded.left(), FOR_TIME_ALONE, END, Progress.NONE);
    folded.unfold();
    return new Run(state, fold.unfold(set.times()), fold.unfold(firm.times()), taken, passes[0]);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.feed.FeedLaw;
import gelfront.feed.Feeding;
import gelfront.feed.Liquid;
import gelfront.feed.Reservoir;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.material.MouldMaterial;
import gelfront.material.ViscosityCurve;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.run.CrossingTimes;
import gelfront.run.Events;
import gelfront.run.Flow;
import gelfront.run.ShotRun;
import gelfront.run.StepControl;
import gelfront.run.StepObserver;
import gelfront.setup.Block;
import gelfront.setup.Numerics;
import gelfront.state.ThermalState;
import gelfront.validation.network.FeedDesign;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.MouldBuilder;
import gelfront.voxelize.Mouth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rod of feeding-rod.json: its shape and values, in voxels. */
final class Rod {
  static final double NO_FLOW = 105;
  static final double SHOT = 165;
  static final double BETA = 7e-4;
  static final double WALL = 30;
  static final double FILM = 2500;
  private static final double LAND = 3e-3;
  private static final double SPRUE = 30e-3;
  private static final int SEGMENTS = 128;

  /** Neither warms nor holds heat back. */
  private static final MouldMaterial FIXED = new MouldMaterial("fixed", 1e9, 1e6, 1e6);

  final VoxelModel model;
  private final double land;
  final Feeding feeding;
  final Liquid liquid;
  final ThermalState state;
  final CrossingTimes set;

  /** s in the middle of each step, and the fed share in it. */
  final List<double[]> shares = new ArrayList<>();

  private final HeatCurves curves;

  Rod(double gate, double sprue, double dx, boolean carriesHeat) {
    this(gate, sprue, dx, carriesHeat, true);
  }

  /** With or without blocks. */
  Rod(double gate, double sprue, double dx, boolean carriesHeat, boolean gathered) {
    this(design(gate, sprue), dx, carriesHeat, gathered);
  }

  /** Of another shape. */
  Rod(FeedDesign design, double dx, boolean carriesHeat, boolean gathered) {
    model = model(design, dx);
    land = design.land();
    double c = 935 * 1900;
    curves =
        new HeatCurves(
            new double[] {0, 200},
            new double[] {0, 200 * c},
            new double[] {25},
            new double[] {0.145});
    liquid = new Liquid(model.cavity(), gathered);
    feeding =
        new Feeding(
            model.cavity(),
            curves,
            new FeedLaw(viscosity(), NO_FLOW, BETA, 500, SHOT, carriesHeat, Vec3.ZERO),
            new Reservoir(model.cavity(), new Vec3(-1, 0, 0), 1),
            liquid);
    state = new ThermalState(model, curves, SHOT);
    set = new CrossingTimes(model.cavity(), NO_FLOW);
  }

  /** The rod with a gate and a sprue of these diameters. */
  static FeedDesign design(double gate, double sprue) {
    double[] x = {0, 8e-3, 60e-3, 92e-3, 99e-3, 100e-3};
    double[] r = {2.5e-3, 6e-3, 6e-3, 4e-3, 2e-3, 0.8e-3};
    return new FeedDesign(x, r, gate, LAND, sprue, SPRUE);
  }

  static ViscosityCurve viscosity() {
    return new ViscosityCurve(
        new double[] {95, 110, 125, 140, 165, 180}, new double[] {6, 4, 1.7, 0.3, -0.5, -0.7});
  }

  private static VoxelModel model(FeedDesign d, double dx) {
    Vec3 shoulder = new Vec3(-d.land(), 0, 0);
    Vec3 top = shoulder.minus(new Vec3(d.sprueLength(), 0, 0));
    double gate = d.gate();
    double sprue = d.sprue();
    List<Labelled> solids =
        List.of(
            new Labelled(Cavity.Region.PART, Solids.revolution(d.x(), d.r(), SEGMENTS)),
            new Labelled(
                Cavity.Region.SPRUE,
                Solids.cylinder(top, shoulder, sprue / 2, sprue / 2, SEGMENTS)),
            new Labelled(
                Cavity.Region.GATE,
                Solids.cylinder(
                    shoulder.minus(new Vec3(1e-4, 0, 0)),
                    new Vec3(1e-4, 0, 0),
                    gate / 2,
                    gate / 2,
                    SEGMENTS)));
    Mouth mouth = new Mouth(top, new Vec3(-1, 0, 0), sprue / 2);
    Cavity cavity = CavityBuilder.build(solids, dx, Optional.of(mouth), Progress.NONE);
    Block block =
        new Block(FIXED, 10 * dx, Optional.empty(), WALL, WALL, 0, FILM, List.of(), List.of());
    gelfront.mesh.Box box =
        solids.stream().map(s -> s.mesh().box()).reduce(gelfront.mesh.Box::union).get();
    return MouldBuilder.build(cavity, block, box.grown(10 * dx));
  }

  /** Until all has set; with a watcher. */
  int run(StepObserver also) {
    StepObserver shareWatch =
        (s, from) -> shares.add(new double[] {0.5 * (from + s.time), feeding.sums().fedShare()});
    Flow filled = (s, from, ask) -> feeding.step(s, from, Feeding.Supply.FROM_OUTSIDE, 0);
    return new ShotRun(
            new SplitStepper(model, curves, Workers.SERIAL),
            ShotRun.Mouth.SHUT,
            Events.NONE,
            StepControl.tolerance(Numerics.Level.NORMAL),
            List.of(set, shareWatch, also),
            filled)
        .run(state, NO_FLOW, 1000, Progress.NONE);
  }

  /** Per cent of the part's volume. */
  double percent(double[] perCell) {
    double[] volume = model.cavity().volumes();
    double sum = 0;
    double part = 0;
    for (int c = 0; c < volume.length; c++) {
      if (model.cavity().region()[c] == Cavity.Region.PART.ordinal()) {
        sum += perCell[c];
        part += volume[c];
      }
    }
    return 100 * sum / part;
  }

  /** s at which the middle of the land on the axis set. */
  double gateCentreSets() {
    double best = Double.POSITIVE_INFINITY;
    float[] times = set.times();
    double at = Double.NaN;
    Vec3 middle = new Vec3(-0.5 * land, 0, 0);
    for (int c = 0; c < times.length; c++) {
      double d = model.cavity().grid().centre(model.cavity().cells()[c]).minus(middle).length();
      if (d < best - 1e-9) {
        best = d;
        at = times[c];
      }
    }
    return at;
  }

  /** s at which the fed share falls through a level for the last time. */
  double shareFallsThrough(double level) {
    double at = Double.NaN;
    for (int i = 1; i < shares.size(); i++) {
      double[] a = shares.get(i - 1);
      double[] b = shares.get(i);
      if (a[1] >= level && b[1] < level) {
        at = a[0] + (b[0] - a[0]) * (a[1] - level) / (a[1] - b[1]);
      }
    }
    return at;
  }
}

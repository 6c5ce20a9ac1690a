// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.base.Progress;
import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.fill.Drive;
import gelfront.fill.FillLaw;
import gelfront.fill.FillRecord;
import gelfront.fill.Filling;
import gelfront.fill.MouldChill;
import gelfront.fill.UnfoldedFill;
import gelfront.fill.Vents;
import gelfront.grid.Fold;
import gelfront.heat.MouthFilm;
import gelfront.material.HeatCurves;
import gelfront.material.ViscosityCurve;
import gelfront.setup.Case;
import gelfront.setup.Fill;
import gelfront.setup.Numerics;
import gelfront.state.ThermalState;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.PartingPlane;
import gelfront.voxelize.VoxelException;

/** A case's shot into the empty cavity; what cooling starts from. */
final class ShotFill {
  /** s and fill times after which a shot is given up. */
  private static final double LONGEST = 60;

  private static final double TIMES = 10;

  private final Case setup;
  private final CaseVoxels voxels;
  private final Workers workers;
  private final Fold fold;
  private final double[] vents;
  private final double room;
  private double seconds;

  /**
   * @param mould °C per mould cell before the shot; not modified
   * @throws VoxelException if a vent doesn't meet the part, or the injector doesn't hold the shot
   */
  ShotFill(Case setup, CaseVoxels voxels, double[] mould, Workers workers) {
    this.setup = setup;
    this.voxels = voxels;
    this.workers = workers;
    room = voxels.model().cavity().volume();
    vents = Vents.of(voxels, setup.fill());
    fold = Folding.ofShot(setup, voxels, mould, vents);
    double shared = (double) setup.cavities() / setup.drawn();
    double held = setup.shot().injectorCapacity().orElse(Double.POSITIVE_INFINITY);
    if (held < shared * room) {
      throw new VoxelException(
          "shot.injector",
          Quantities.say(
              "the injector holds %s, but part, gate and sprue take %s: it can't fill them",
              Quantities.ml(held), Quantities.ml(shared * room)));
    }
  }

  /**
   * @param state of the mould before the shot; modified: full, as the shot leaves it, time as it
   *     was
   */
  FillRecord fill(ThermalState state, Progress progress) {
    long start = System.nanoTime();
    HeatCurves curves = HeatCurves.of(setup.plastisol());
    MouthFilm mouth = OneShot.mouth(setup).holding();
    FoldedState folded = new FoldedState(fold, curves, state);
    Filling filling =
        new Filling(
            fold.model().cavity(),
            law(curves),
            fold.fold(vents),
            fold.fold(PartingPlane.of(voxels).thrown(voxels.model().cavity())),
            new MouldChill(fold.model(), curves, workers, mouth),
            folded.left(),
            true);
    FillRecord r = UnfoldedFill.of(filling.run(progress), voxels.model().cavity(), fold);
    folded.unfold();
    System.arraycopy(state.temperature, 0, state.previous, 0, state.previous.length);
    seconds = 1e-9 * (System.nanoTime() - start);
    return r;
  }

  private FillLaw law(HeatCurves curves) {
    Fill fill = setup.fill();
    double time = setup.shot().fillTime();
    Drive drive =
        fill.pressure().isPresent()
            ? Drive.pressure(fill.pressure().getAsDouble())
            : new Drive(room / fold.times() / time, fill.mostPressure());
    return new FillLaw(
        curves,
        ViscosityCurve.of(setup.plastisol()),
        setup.plastisol().noFlow(),
        setup.shot().temperature(),
        drive,
        Math.max(LONGEST, TIMES * time),
        looks(setup.numerics().level()));
  }

  private static int looks(Numerics.Level level) {
    return switch (level) {
      case QUICK -> 8;
      case NORMAL -> 16;
      case FINE -> 48;
    };
  }

  /** What is calculated stands for so many times as much. */
  int times() {
    return fold.times();
  }

  /** s that the calculation took. */
  double seconds() {
    return seconds;
  }
}

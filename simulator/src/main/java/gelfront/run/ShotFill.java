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
import gelfront.voxelize.VoxelException;

/** A case's shot into the empty cavity; what cooling starts from. */
final class ShotFill {
  /** s and fill times after which a shot is given up. */
  private static final double LONGEST = 60;

  private static final double TIMES = 10;

  /** What vents may differ by on the sides of a plane of symmetry, of all. */
  private static final double UNLIKE = 0.02;

  private final Case setup;
  private final CaseVoxels voxels;
  private final Workers workers;
  private final Fold fold;
  private final double[] vents;
  private final double room;
  private double seconds;

  /**
   * @param fold of these voxels
   * @throws VoxelException if a vent doesn't meet the part, or the injector doesn't hold the shot
   */
  ShotFill(Case setup, CaseVoxels voxels, Fold fold, Workers workers) {
    this.setup = setup;
    this.voxels = voxels;
    this.workers = workers;
    room = voxels.model().cavity().volume();
    vents = Vents.of(voxels, setup.fill());
    this.fold = alike(vents, fold) ? fold : Fold.none(voxels.model());
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
            new MouldChill(fold.model(), curves, workers, mouth),
            folded.left(),
            true);
    FillRecord r = UnfoldedFill.of(filling.run(progress), voxels.model().cavity(), fold);
    folded.unfold();
    System.arraycopy(state.temperature, 0, state.previous, 0, state.previous.length);
    seconds = 1e-9 * (System.nanoTime() - start);
    return r;
  }

  /** Whether air leaves on all sides of the planes alike. */
  private static boolean alike(double[] vents, Fold fold) {
    double sum = 0;
    double off = 0;
    for (int c = 0; c < vents.length; c++) {
      sum += vents[c];
      off += Math.abs(vents[c] - vents[fold.kept()[fold.cell()[c]]]);
    }
    return off <= UNLIKE * sum;
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

  /** s that the calculation took. */
  double seconds() {
    return seconds;
  }
}

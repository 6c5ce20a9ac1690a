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
import gelfront.fill.Vents;
import gelfront.grid.Cavity;
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

  private final Case setup;
  private final CaseVoxels voxels;
  private final Workers workers;
  private final double[] vents;
  private final double room;
  private double seconds;

  /**
   * @throws VoxelException if a vent doesn't meet the part, or the injector doesn't hold the shot
   */
  ShotFill(Case setup, CaseVoxels voxels, Workers workers) {
    this.setup = setup;
    this.voxels = voxels;
    this.workers = workers;
    room = voxels.model().cavity().volume();
    vents = Vents.of(voxels, setup.fill());
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
    Cavity cavity = voxels.model().cavity();
    Filling filling =
        new Filling(
            cavity,
            law(curves),
            vents,
            new MouldChill(voxels.model(), curves, workers, mouth),
            state,
            true);
    FillRecord r = filling.run(progress);
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
            : new Drive(room / time, fill.mostPressure());
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

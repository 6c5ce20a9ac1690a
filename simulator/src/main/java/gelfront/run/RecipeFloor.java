// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.fill.FillRecord;
import gelfront.finding.Filled;
import gelfront.material.HeatCurves;
import gelfront.setup.Case;
import gelfront.setup.Fill;
import gelfront.state.ThermalState;
import gelfront.verdict.Judge;
import gelfront.voxelize.CaseVoxels;
import java.util.OptionalDouble;

/**
 * The coolest shot that still fills, all else as the case says: halved between no-flow and the
 * case's own shot, each tried by its filling alone. Seconds at level quick.
 */
public final class RecipeFloor {
  /** K to which it is found. */
  public static final double WITHIN = 2;

  /** K above no-flow that a shot has at least. */
  private static final double LEAST = 5;

  private final Case setup;
  private final CaseVoxels voxels;
  private final Workers workers;
  private final Progress progress;

  /**
   * @param voxels of this case; read only
   */
  public RecipeFloor(Case setup, CaseVoxels voxels, Workers workers, Progress progress) {
    this.setup = setup.fill().on() ? setup : setup.with(switchedOn(setup.fill()));
    this.voxels = voxels;
    this.workers = workers;
    this.progress = progress;
  }

  private static Fill switchedOn(Fill f) {
    return new Fill(true, f.pressure(), f.mostPressure(), f.partingGap(), f.vents());
  }

  /**
   * °C; empty where the case's own shot may not fill, either.
   *
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public OptionalDouble coolest() {
    double fills = setup.shot().temperature();
    if (filled(fills).mayNotFill()) {
      return OptionalDouble.empty();
    }
    double fails = Math.min(fills, setup.plastisol().noFlow() + LEAST);
    while (fills - fails > WITHIN) {
      double tried = 0.5 * (fills + fails);
      if (filled(tried).mayNotFill()) {
        fails = tried;
      } else {
        fills = tried;
      }
    }
    return OptionalDouble.of(fills);
  }

  /** What a shot of a temperature comes to, °C; its filling alone is calculated. */
  public Filled filled(double temperature) {
    Case c = setup.with(setup.shot().at(temperature));
    HeatCurves curves = HeatCurves.of(c.plastisol());
    ThermalState state = new ThermalState(voxels.model(), curves, temperature);
    FillRecord r = new ShotFill(c, voxels, state.mould, workers).fill(state, progress);
    return Judge.filled(c, voxels, r);
  }
}

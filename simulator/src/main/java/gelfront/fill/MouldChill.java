// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.base.Workers;
import gelfront.grid.Cavity;
import gelfront.grid.Joints;
import gelfront.grid.Refinement;
import gelfront.grid.VoxelModel;
import gelfront.heat.MouthFilm;
import gelfront.heat.SplitStepper;
import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;
import java.util.Arrays;

/**
 * Conduction in what is filled by now, by the stepper that cools the full cavity: cells that hold
 * air have no neighbours, and walls that let nothing through.
 */
public final class MouldChill implements Chill {
  /** K/W of a wall behind air. */
  private static final double SHUT = 1e30;

  private final VoxelModel model;
  private final HeatCurves curves;
  private final Workers workers;
  private final MouthFilm mouth;

  /**
   * @param mouth what lies beyond the open end while it fills
   */
  public MouldChill(VoxelModel model, HeatCurves curves, Workers workers, MouthFilm mouth) {
    this.model = model;
    this.curves = curves;
    this.workers = workers;
    this.mouth = mouth;
  }

  @Override
  public void step(ThermalState state, boolean[] full, double dt) {
    double time = state.time;
    System.arraycopy(state.temperature, 0, state.previous, 0, full.length);
    new SplitStepper(wetted(full), curves, workers).step(state, dt, film(full));
    state.time = time;
  }

  private MouthFilm film(boolean[] full) {
    Cavity.Walls walls = model.cavity().walls();
    boolean all = true;
    for (int w = 0; w < walls.count(); w++) {
      all &= !walls.mouth()[w] || full[walls.cell()[w]];
    }
    return all ? mouth : MouthFilm.INSULATED;
  }

  private VoxelModel wetted(boolean[] full) {
    Cavity c = model.cavity();
    int[] neighbours = c.neighbours().clone();
    for (int e = 0; e < neighbours.length; e++) {
      neighbours[e] = full[e / 6] && full[neighbours[e]] ? neighbours[e] : e / 6;
    }
    double[] resistance = model.resistance().clone();
    for (int w = 0; w < resistance.length; w++) {
      resistance[w] = full[c.walls().cell()[w]] ? resistance[w] : SHUT;
    }
    Refinement r = c.refinement();
    Refinement cut = new Refinement(r.factor(), r.patches(), joints(r.joints(), full));
    return new VoxelModel(
        new Cavity(c.grid(), c.cells(), neighbours, c.region(), c.walls(), cut, c.mirrors()),
        model.mould(),
        model.mouldCell(),
        resistance);
  }

  private static Joints joints(Joints all, boolean[] full) {
    if (all.count() == 0) {
      return all;
    }
    int[] start = new int[full.length + 1];
    int[] other = new int[all.count()];
    byte[] face = new byte[all.count()];
    int n = 0;
    for (int c = 0; c < full.length; c++) {
      for (int i = all.first(c); i < all.end(c); i++) {
        if (full[c] && full[all.other()[i]]) {
          other[n] = all.other()[i];
          face[n++] = all.face()[i];
        }
      }
      start[c + 1] = n;
    }
    return new Joints(start, Arrays.copyOf(other, n), Arrays.copyOf(face, n));
  }
}

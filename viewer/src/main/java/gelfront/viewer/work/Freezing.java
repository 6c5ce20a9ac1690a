// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.grid.Cavity;
import gelfront.mesh.TriangleMesh;
import gelfront.result.Fields;
import gelfront.result.VoxelFields;
import gelfront.run.StepObserver;
import gelfront.run.Watch;
import gelfront.state.ThermalState;
import gelfront.voxelize.CaseVoxels;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/** Follows the freezing while a case is calculated, and shows it at once, and now and then. */
final class Freezing implements Watch {
  private static final long APART_NS = 700_000_000;

  private final double noFlow;
  private final Consumer<Moment> shown;

  /**
   * How far the freezing has come.
   *
   * @param time s after the shot
   * @param fields set times so far; +infinity where it is still liquid
   * @param surface of part and feed, metres
   */
  record Moment(double time, Fields fields, TriangleMesh surface) {}

  /**
   * @param noFlow °C
   * @param shown told on the thread that calculates
   */
  Freezing(double noFlow, Consumer<Moment> shown) {
    this.noFlow = noFlow;
    this.shown = shown;
  }

  @Override
  public List<StepObserver> over(CaseVoxels voxels) {
    Cavity cavity = voxels.model().cavity();
    float[] set = new float[cavity.count()];
    Arrays.fill(set, Float.POSITIVE_INFINITY);
    TriangleMesh surface = voxels.surface();
    long[] next = {System.nanoTime()};
    return List.of(
        (state, from) -> {
          follow(state, set);
          if (System.nanoTime() - next[0] >= 0) {
            shown.accept(new Moment(state.time, fields(cavity, set.clone()), surface));
            next[0] = System.nanoTime() + APART_NS;
          }
        });
  }

  private void follow(ThermalState state, float[] set) {
    for (int c = 0; c < set.length; c++) {
      if (Float.isInfinite(set[c]) && state.temperature[c] < noFlow) {
        set[c] = (float) state.time;
      }
    }
  }

  private static Fields fields(Cavity cavity, float[] set) {
    float[] none = new float[0];
    return VoxelFields.of(cavity, set, set, new short[set.length], List.of(), none, none);
  }
}

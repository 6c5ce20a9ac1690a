// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.base.Progress;
import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.Case;
import gelfront.state.ThermalState;
import gelfront.verdict.Judge;
import gelfront.verdict.ShotRecord;
import gelfront.voxelize.CaseVoxels;

/** Runs a case: voxels, the shots before the one that is looked at, its cooling, judgement. */
public final class CaseRunner {
  private CaseRunner() {}

  /**
   * What a run leaves in memory.
   *
   * @param voxels the case in voxels
   * @param shot what the observers saw
   * @param judgement what it means
   * @param end state at the end of the run
   * @param steps taken
   * @param finished whether all plastisol is firm
   * @param times the whole over what was calculated of it: above 1 where mirror images were left
   *     out
   */
  public record Outcome(
      CaseVoxels voxels,
      ShotRecord shot,
      Judge.Judgement judgement,
      ThermalState end,
      int steps,
      boolean finished,
      int times) {}

  /**
   * @param part closed, outward-wound, metres
   * @throws gelfront.voxelize.VoxelException if shape and feed make no sound model
   * @throws gelfront.base.CancelledException if the watcher wants to stop
   */
  public static Outcome run(Case c, TriangleMesh part, Workers workers, Progress progress) {
    return run(c, CaseVoxels.of(c, part, progress), workers, progress);
  }

  /**
   * As above, from voxels on.
   *
   * @param voxels of this case; read only
   */
  public static Outcome run(Case c, CaseVoxels voxels, Workers workers, Progress progress) {
    return run(c, voxels, workers, progress, Watch.NOBODY);
  }

  /**
   * As above, watched.
   *
   * @param watch over the last shot
   */
  public static Outcome run(
      Case c, CaseVoxels voxels, Workers workers, Progress progress, Watch watch) {
    ShotsInARow row = new ShotsInARow(c, voxels, workers);
    int shots = c.rhythm().shots();
    for (int k = 1; k < shots; k++) {
      String which = Quantities.say("shot %d of %d, ", k, shots);
      row.shoot((stage, f) -> progress.at(which + stage, f));
    }
    row.shoot(progress, watch);
    return row.judged(progress);
  }
}

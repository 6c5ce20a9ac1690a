// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.Doubt;
import gelfront.answer.Ran;
import gelfront.answer.VoxelDoubt;
import gelfront.answer.VoxelDoubt.At;
import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.mesh.TriangleMesh;
import gelfront.result.StoredRun;
import gelfront.run.CaseRunner;
import gelfront.setup.LoadedCase;
import gelfront.setup.Numerics;
import gelfront.setup.PartLoader;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.VoxelException;
import java.util.Locale;
import java.util.Optional;

/** How far a check's verdict hangs on the voxels: the same case once more, at level quick. */
final class CheckVoxels {
  private static final Numerics.Level ROUGH = Numerics.Level.QUICK;
  private static final String WORD = word(ROUGH);

  private CheckVoxels() {}

  /**
   * @param loaded what was calculated
   * @param run that came of it
   * @param doubt whose run at level quick is taken where there is one
   * @return empty where the run itself is as coarse as level quick
   */
  static Optional<VoxelDoubt> of(
      LoadedCase loaded, StoredRun run, Optional<Doubt> doubt, Workers workers, Progress progress) {
    Numerics used = loaded.setup().numerics();
    double voxel = run.fields().spacing();
    if (used.level() == ROUGH || voxel >= ROUGH.voxel()) {
      return Optional.empty();
    }
    double visible = loaded.setup().visibleDent();
    At fine = At.of(word(used.level()), voxel, run.findings());
    return Optional.of(
        doubt
            .map(d -> kept(visible, fine, d.typical()))
            .orElseGet(() -> calculated(visible, fine, loaded, workers, progress)));
  }

  private static VoxelDoubt kept(double visible, At fine, Ran rough) {
    Optional<At> at = rough.outcome().map(o -> At.of(WORD, ROUGH.voxel(), o));
    return new VoxelDoubt(visible, fine, at, rough.error());
  }

  private static VoxelDoubt calculated(
      double visible, At fine, LoadedCase loaded, Workers workers, Progress progress) {
    LoadedCase rough = loaded.with(loaded.setup().numerics().at(Numerics.Level.QUICK));
    Progress told = (stage, f) -> progress.at("level quick, " + stage, f);
    TriangleMesh part = PartLoader.load(rough.setup().part()).mesh();
    try {
      CaseRunner.Outcome o = CaseRunner.run(rough.setup(), part, workers, told);
      CaseVoxels v = o.voxels();
      At at = At.of(WORD, v.report().spacing(), o.judgement().findings());
      return new VoxelDoubt(visible, fine, Optional.of(at), "");
    } catch (VoxelException e) {
      return new VoxelDoubt(visible, fine, Optional.empty(), String.valueOf(e.getMessage()));
    }
  }

  private static String word(Numerics.Level level) {
    return level.name().toLowerCase(Locale.ROOT);
  }
}

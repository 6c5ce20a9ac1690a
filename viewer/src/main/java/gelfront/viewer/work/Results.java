// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.answer.VoxelDoubt;
import gelfront.answer.VoxelDoubt.At;
import gelfront.finding.Findings;
import gelfront.result.StoredRun;
import gelfront.setup.LoadedCase;
import gelfront.setup.Numerics;
import gelfront.setup.Numerics.Level;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is there to be seen.
 *
 * @param shown null: none
 * @param caseText that it was calculated from
 * @param voxels how far its verdict hangs on their size; absent: not known
 * @param other beside it; null: none
 */
record Results(
    @Nullable StoredRun shown,
    String caseText,
    Optional<VoxelDoubt> voxels,
    @Nullable StoredRun other) {
  static final Results NONE = new Results(null, "", Optional.empty(), null);

  Results with(StoredRun run, String text, Optional<VoxelDoubt> compared) {
    return new Results(run, text, compared, other);
  }

  /** Whether coarser voxels would still tell something of it. */
  boolean wantsCoarser(LoadedCase now) {
    Numerics used = now.setup().numerics();
    return shown != null
        && !stale(now)
        && voxels.isEmpty()
        && used.level() != Level.QUICK
        && shown.fields().spacing() < Level.QUICK.voxel();
  }

  /**
   * The same, compared with level quick of the same case, where that is wanted.
   *
   * @param quick of the case; what is still awaited tells nothing
   */
  Results compared(LoadedCase now, Quick.Verdict quick) {
    if (!wantsCoarser(now) || shown == null || quick.equals(Quick.Verdict.WAITING)) {
      return this;
    }
    Findings fine = shown.findings();
    Optional<At> rough =
        quick.findings().map(f -> At.of(word(Level.QUICK), Level.QUICK.voxel(), f));
    At at = At.of(word(now.setup().numerics().level()), shown.fields().spacing(), fine);
    VoxelDoubt d = new VoxelDoubt(fine.visibleDepth(), at, rough, quick.error());
    return new Results(shown, caseText, Optional.of(d), other);
  }

  private static String word(Level level) {
    return level.name().toLowerCase(Locale.ROOT);
  }

  /**
   * @param run null: nothing beside it
   */
  Results beside(@Nullable StoredRun run) {
    return new Results(shown, caseText, voxels, run);
  }

  /** Whether the case was changed since its result was calculated. */
  boolean stale(LoadedCase now) {
    return shown != null && !now.text().equals(caseText);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.Case;
import org.jspecify.annotations.Nullable;

/**
 * Changing cases of one part in voxels, with as much of the last ones kept as the change allows:
 *
 * <ul>
 *   <li>plastisol, shot and all else outside the voxels: everything;
 *   <li>block: the cavity;
 *   <li>feed system and filings: where the lines of the grid cross the part.
 * </ul>
 *
 * <p>What comes out is what {@link CaseVoxels#of} gives, to the last bit. For one thread at a time.
 */
public final class KeptVoxels {
  private final PartCrossings crossings;
  private @Nullable Kept last;

  /** What the last case left. */
  private record Kept(Case setup, CaseShape shape, CaseVoxels voxels) {}

  /**
   * @param part closed, outward-wound, metres; with the feed system in it where cases say so
   */
  public KeptVoxels(TriangleMesh part) {
    this.crossings = new PartCrossings(part);
  }

  /**
   * @throws VoxelException if gate, mouth or resolution can't be had
   * @throws gelfront.base.CancelledException if the watcher wants to stop; what was kept stays
   */
  public CaseVoxels of(Case c, Progress progress) {
    Kept kept = last;
    boolean sameShape = kept != null && sameShape(c, kept.setup);
    if (kept != null && sameShape && c.block().equals(kept.setup.block())) {
      return kept.voxels;
    }
    CaseShape shape = kept != null && sameShape ? kept.shape : CaseShape.of(c, crossings, progress);
    CaseVoxels voxels = CaseVoxels.in(c, shape, progress);
    last = new Kept(c, shape, voxels);
    return voxels;
  }

  /** Whether all is equal that {@link CaseShape} depends on. */
  private static boolean sameShape(Case a, Case b) {
    return a.feed().equals(b.feed())
        && a.copies().equals(b.copies())
        && a.growths().equals(b.growths())
        && a.numerics().equals(b.numerics());
  }
}

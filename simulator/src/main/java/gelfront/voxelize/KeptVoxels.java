package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.Case;

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
  private Case last;
  private CaseShape shape;
  private CaseVoxels voxels;

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
    boolean sameShape = last != null && sameShape(c, last);
    if (sameShape && c.block().equals(last.block())) {
      return voxels;
    }
    CaseShape newShape = sameShape ? shape : CaseShape.of(c, crossings, progress);
    CaseVoxels newVoxels = CaseVoxels.in(c, newShape, progress);
    last = c;
    shape = newShape;
    voxels = newVoxels;
    return newVoxels;
  }

  /** Whether all is equal that {@link CaseShape} depends on. */
  private static boolean sameShape(Case a, Case b) {
    return a.feed().equals(b.feed())
        && a.copies().equals(b.copies())
        && a.growths().equals(b.growths())
        && a.numerics().equals(b.numerics());
  }
}

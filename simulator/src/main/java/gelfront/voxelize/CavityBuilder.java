// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.Cavity;
import gelfront.grid.Mirrors;
import gelfront.grid.UniformGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Solids into plastisol cells ({@link VoxelLevel}), voxels and, where asked for, smaller ones.
 * Several solids are united; overlapping shells count once.
 */
public final class CavityBuilder {
  private static final String WALLS = "finding the cavity's walls";

  private CavityBuilder() {}

  /**
   * A cavity with nothing filed away, of voxels alone.
   *
   * @param solids earlier ones win where they overlap
   * @param spacing edge of a voxel, metres
   * @param mouth the open end; absent: none
   */
  public static Cavity build(
      List<Labelled> solids, double spacing, Optional<Mouth> mouth, Progress progress) {
    return build(solids, spacing, Closer.NONE, mouth, Filing.NONE, progress);
  }

  /**
   * As above, with smaller cells in places and metal filed away from the cavity.
   *
   * @param closer where cells are smaller than voxels
   */
  public static Cavity build(
      List<Labelled> solids,
      double spacing,
      Closer closer,
      Optional<Mouth> mouth,
      Filing filing,
      Progress progress) {
    if (solids.isEmpty()) {
      throw new IllegalArgumentException("nothing to voxelize");
    }
    PartCrossings none = new PartCrossings(solids.get(0).mesh());
    return build(solids, none, spacing, closer, mouth, filing, progress);
  }

  /**
   * As above.
   *
   * @param kept of the first solid
   */
  static Cavity build(
      List<Labelled> solids,
      PartCrossings kept,
      double spacing,
      Closer closer,
      Optional<Mouth> mouth,
      Filing filing,
      Progress progress) {
    if (kept.mesh() != solids.get(0).mesh()) {
      throw new IllegalArgumentException("crossings are kept of another part");
    }
    CavityGrid grids = CavityGrid.of(solids, spacing, mouth, filing.deepest());
    UniformGrid first = grids.first();
    UniformGrid all = grids.all();
    List<VoxelLevel> levels = new ArrayList<>();
    levels.add(
        VoxelLevel.of(
            all,
            solids,
            (a, p) -> kept.along(first, a, p).placed(first, all, a),
            filing,
            progress));
    List<VoxelBoxes.VoxelBox> boxes = VoxelBoxes.of(all, closer.boxes());
    for (VoxelBoxes.VoxelBox box : boxes) {
      UniformGrid small = box.small(all, closer.factor());
      levels.add(
          VoxelLevel.of(
              small, solids, (a, p) -> kept.along(small, a, p), filing.again(), progress));
    }
    progress.check(WALLS, 0);
    CellNumbers numbers = new CellNumbers(closer.factor(), levels, boxes);
    progress.check(WALLS, 0.5);
    CellFaces faces = new CellFaces(numbers, mouth);
    return new Cavity(
        all,
        numbers.cells(),
        faces.neighbours(),
        numbers.region(),
        faces.walls(),
        faces.refinement(closer.factor()),
        Mirrors.NONE);
  }
}

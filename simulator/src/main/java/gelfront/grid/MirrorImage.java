// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import java.util.Arrays;
import java.util.Optional;

/**
 * A model that is its own mirror image across a plane between cells, but for what a mesh that is
 * cut into unlike triangles on both sides makes of it.
 *
 * @param axis normal to the plane
 * @param plane position of the first voxels above it
 * @param cell image of each plastisol cell; -1 for the few that have none
 * @param mould image of each mould cell
 */
record MirrorImage(int axis, int plane, int[] cell, int[] mould) {
  /** Cells without their like on the other side, of all. */
  private static final double UNLIKE_CELLS = 1e-3;

  /**
   * @param labels per plastisol cell what its image must share with it
   * @return empty where the model has no such plane
   */
  static Optional<MirrorImage> find(VoxelModel m, short[] labels, int axis) {
    Cavity cavity = m.cavity();
    int low = Integer.MAX_VALUE;
    int high = Integer.MIN_VALUE;
    for (int c = 0; c < cavity.count(); c++) {
      low = Math.min(low, cavity.position(c, axis));
      high = Math.max(high, cavity.position(c, axis));
    }
    if ((high - low) % 2 == 0) {
      return Optional.empty();
    }
    int plane = (low + high + 1) / 2;
    return new MirroredMould(m.mould(), axis)
        .image(cavity.grid().edge(axis, plane))
        .flatMap(
            mould ->
                cells(cavity, labels, axis, plane)
                    .map(cells -> new MirrorImage(axis, plane, cells, mould)))
        .filter(i -> new MirroredWalls(m, i).alike());
  }

  /** Whether a plastisol cell lies above the plane. */
  boolean keeps(Cavity cavity, int c) {
    return cavity.position(c, axis) >= plane;
  }

  private static Optional<int[]> cells(Cavity cavity, short[] labels, int axis, int plane) {
    Places places = new Places(cavity);
    int[] image = new int[cavity.count()];
    int unlike = 0;
    for (int c = 0; c < image.length; c++) {
      int i = places.image(c, axis, plane);
      image[c] = i;
      boolean like = i >= 0 && cavity.region()[i] == cavity.region()[c] && labels[i] == labels[c];
      unlike += like ? 0 : 1;
    }
    return unlike <= UNLIKE_CELLS * image.length ? Optional.of(image) : Optional.empty();
  }

  /** What a cell without an image below the plane goes by: the nearest one that has one. */
  int standIn(Cavity cavity, int c) {
    int[] all = new int[] {c};
    for (int tries = 0; tries < cavity.count(); tries++) {
      for (int from : all) {
        if (cell[from] >= 0) {
          return cell[from];
        }
      }
      all =
          Arrays.stream(all)
              .flatMap(
                  from ->
                      java.util.stream.IntStream.range(0, cavity.faces(from))
                          .map(f -> cavity.across(from, f)))
              .distinct()
              .toArray();
    }
    throw new IllegalStateException("a cell with no like it in reach");
  }
}

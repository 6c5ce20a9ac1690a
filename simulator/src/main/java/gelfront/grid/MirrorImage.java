// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

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
        .filter(i -> i.coversAll(cavity) && new MirroredWalls(m, i).alike());
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

  /**
   * The cell above the plane that stands for one: itself, its image, or a neighbour's; -1: none.
   */
  int standIn(Cavity cavity, int c) {
    int own = above(cavity, c);
    for (int f = 0; f < cavity.faces(c) && own < 0; f++) {
      own = above(cavity, cavity.across(c, f));
    }
    return own;
  }

  private int above(Cavity cavity, int c) {
    return keeps(cavity, c) ? c : cell[c];
  }

  private boolean coversAll(Cavity cavity) {
    for (int c = 0; c < cell.length; c++) {
      if (standIn(cavity, c) < 0) {
        return false;
      }
    }
    return true;
  }
}

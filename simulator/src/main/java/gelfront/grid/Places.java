// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Which plastisol cell lies where, voxels and smaller cubes. */
final class Places {
  private final Cavity cavity;
  private final int[] voxel;
  private final List<int[]> small = new ArrayList<>();

  Places(Cavity cavity) {
    this.cavity = cavity;
    voxel = numbers(cavity.grid(), 0, cavity.voxels());
    for (Refinement.Patch p : cavity.refinement().patches()) {
      small.add(numbers(p.grid(), p.first(), p.end()));
    }
  }

  private int[] numbers(UniformGrid grid, int from, int to) {
    int[] all = new int[grid.cellCount()];
    Arrays.fill(all, -1);
    for (int c = from; c < to; c++) {
      all[cavity.cells()[c]] = c;
    }
    return all;
  }

  /**
   * The cell across a plane.
   *
   * @param plane position of the first voxels above it
   * @return -1 where there is none of the same size
   */
  int image(int c, int axis, int plane) {
    int[] at = new int[3];
    if (c < cavity.voxels()) {
      for (int a = 0; a < 3; a++) {
        at[a] = cavity.grid().position(cavity.cells()[c], a);
      }
      at[axis] = 2 * plane - 1 - at[axis];
      return inside(cavity.grid(), at) ? voxel[cavity.grid().index(at[0], at[1], at[2])] : -1;
    }
    int factor = cavity.refinement().factor();
    Refinement.Patch own = cavity.refinement().of(c);
    for (int a = 0; a < 3; a++) {
      at[a] = own.corner()[a] * factor + own.grid().position(cavity.cells()[c], a);
    }
    at[axis] = 2 * plane * factor - 1 - at[axis];
    return small(at, factor);
  }

  private int small(int[] at, int factor) {
    List<Refinement.Patch> patches = cavity.refinement().patches();
    for (int k = 0; k < patches.size(); k++) {
      Refinement.Patch p = patches.get(k);
      int[] within = new int[3];
      for (int a = 0; a < 3; a++) {
        within[a] = at[a] - p.corner()[a] * factor;
      }
      int found =
          inside(p.grid(), within)
              ? small.get(k)[p.grid().index(within[0], within[1], within[2])]
              : -1;
      if (found >= 0) {
        return found;
      }
    }
    return -1;
  }

  private static boolean inside(UniformGrid grid, int[] at) {
    for (int a = 0; a < 3; a++) {
      if (at[a] < 0 || at[a] >= grid.count(a)) {
        return false;
      }
    }
    return true;
  }
}

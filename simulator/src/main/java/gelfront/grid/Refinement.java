// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import java.util.List;

/**
 * Boxes of whole voxels in which a cavity's cells are cubes smaller by a whole factor.
 *
 * @param factor voxels over small cubes; 1 where nothing is refined
 * @param patches the boxes, at least a voxel apart; their cells follow the voxels', box by box
 * @param joints faces between voxels and small cubes
 */
public record Refinement(int factor, List<Patch> patches, Joints joints) {
  /** All cells are voxels. */
  public static final Refinement NONE = new Refinement(1, List.of(), Joints.NONE);

  public Refinement {
    patches = List.copyOf(patches);
    if (factor < 1 || (factor == 1) != patches.isEmpty()) {
      throw new IllegalArgumentException("a refinement has boxes and a factor above 1: " + factor);
    }
  }

  /**
   * @param grid of the small cubes, with those of one voxel to spare on every side
   * @param corner position, on the cavity's grid, of the voxel that holds the cube (0, 0, 0)
   * @param first its first plastisol cell
   * @param end beyond its last one
   */
  public record Patch(UniformGrid grid, int[] corner, int first, int end) {}

  /**
   * The box that holds a small plastisol cell.
   *
   * @throws IllegalArgumentException if it is a voxel
   */
  Patch of(int cell) {
    for (int i = 0; i < patches.size(); i++) { // no iterator: asked for single cells in loops
      Patch p = patches.get(i);
      if (cell >= p.first && cell < p.end) {
        return p;
      }
    }
    throw new IllegalArgumentException("no small cell: " + cell);
  }
}

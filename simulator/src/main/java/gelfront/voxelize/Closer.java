// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.Box;
import java.util.List;

/**
 * Where cells are to be smaller than voxels.
 *
 * @param factor voxels over the small cells; 1 for nowhere
 * @param boxes metres; whole voxels round each are refined
 */
public record Closer(int factor, List<Box> boxes) {
  /** All cells are voxels. */
  public static final Closer NONE = new Closer(1, List.of());

  public Closer {
    boxes = List.copyOf(boxes);
    if (factor < 1 || (factor == 1) != boxes.isEmpty()) {
      throw new IllegalArgumentException("smaller cells need boxes and a factor above 1");
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import java.util.List;

final class Blocks {
  private Blocks() {}

  /** A block of 4 x 3 x 2 mm that fills its grid; cell i sets after i + 1 seconds. */
  static Fields block() {
    int n = 24;
    float[] set = new float[n];
    for (int i = 0; i < n; i++) {
      set[i] = i + 1;
    }
    return with(set);
  }

  static Fields with(float[] set) {
    int n = set.length;
    int[] cells = new int[n];
    for (int i = 0; i < n; i++) {
      cells[i] = i;
    }
    return new Fields(
        Vec3.ZERO, 1e-3, 4, 3, 2, cells, new byte[n], set, set.clone(), new short[n], List.of());
  }
}

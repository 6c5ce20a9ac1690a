// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.mesh.Vec3;

/**
 * Metal filed away from the cavity: within {@code reach} of {@code at} the wall moves outwards by
 * {@code depth}. Opens a gate or thickens a neck that is part of the mesh. Metres.
 */
public record Growth(Vec3 at, double reach, double depth) {
  public Growth {
    if (!(reach > 0 && depth > 0)) {
      throw new IllegalArgumentException("reach and depth of filing must be positive");
    }
  }
}

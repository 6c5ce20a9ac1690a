// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.Vec3;

/**
 * A gate.
 *
 * @param middle metres
 * @param width its narrowest, metres
 * @param cavity number of the cavity that it leads into, from 1
 */
public record GatePlace(Vec3 middle, double width, int cavity) {
  /** Gate widths from its middle within which a place counts as the gate's own: own judgement. */
  private static final double BESIDE = 1.5;

  /** Whether what closes at a place is this gate rather than a neck of its own. */
  public boolean beside(Vec3 at) {
    return at.distance(middle) < BESIDE * width;
  }
}

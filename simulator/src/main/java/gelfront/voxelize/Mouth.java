// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.Vec3;

/**
 * The open end of the sprue: a disc.
 *
 * @param centre metres
 * @param direction out of the mould, length one
 * @param radius metres
 */
public record Mouth(Vec3 centre, Vec3 direction, double radius) {
  /** Whether a point on the cavity's wall belongs to the open end, within {@code tolerance}. */
  boolean holds(double x, double y, double z, double tolerance) {
    Vec3 d = new Vec3(x, y, z).minus(centre);
    double along = d.dot(direction);
    return Math.abs(along) <= tolerance
        && d.minus(direction.times(along)).length() <= radius + tolerance;
  }
}

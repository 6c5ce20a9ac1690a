// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.Vec3;

/**
 * A line of sight.
 *
 * @param from mm
 * @param direction length one
 */
public record Ray(Vec3 from, Vec3 direction) {
  /** mm along it. */
  public Vec3 at(double distance) {
    return from.plus(direction.times(distance));
  }

  /** mm to a plane; NaN where it runs along it. */
  public double to(Plane plane) {
    double towards = direction.dot(plane.normal());
    return Math.abs(towards) < 1e-9 ? Double.NaN : -plane.above(from) / towards;
  }
}

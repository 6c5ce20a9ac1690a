// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.mesh.Vec3;

/**
 * A plane that a part is cut open with; what lies on the normal's side is taken away.
 *
 * @param place a point of the plane, metres
 * @param normal unit vector
 */
record Cut(Vec3 place, Vec3 normal) {
  double distance(Vec3 p) {
    return p.minus(place).dot(normal);
  }
}

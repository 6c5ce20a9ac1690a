// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.mesh.Box;
import gelfront.mesh.Vec3;

/**
 * The part's own axes by length, for choosing views.
 *
 * @param along unit vector of the longest
 * @param up unit vector of the middle one
 * @param through unit vector of the shortest, so that the three are right-handed
 */
record Axes(Vec3 along, Vec3 up, Vec3 through) {
  private static final Vec3[] UNIT = {new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1)};

  static Axes of(Box box) {
    double[] size = {box.size().x(), box.size().y(), box.size().z()};
    int longest = 0;
    for (int a = 1; a < 3; a++) {
      longest = size[a] > size[longest] ? a : longest;
    }
    int p = (longest + 1) % 3;
    int q = (longest + 2) % 3;
    // Of two alike, z is up, or else y: as most people draw.
    boolean qIsUp = size[q] > 1.02 * size[p] || (size[p] <= 1.02 * size[q] && q > p);
    Vec3 along = UNIT[longest];
    Vec3 up = qIsUp ? UNIT[q] : UNIT[p];
    return new Axes(along, up, along.cross(up));
  }
}

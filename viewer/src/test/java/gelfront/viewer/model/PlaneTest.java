// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import org.junit.jupiter.api.Test;

class PlaneTest {
  private static final Extent BOX = new Extent(new Vec3(0, 0, 0), new Vec3(40, 10, 20));

  @Test
  void itGoesThroughTheBoxFromEndToEnd() {
    for (int axis = 0; axis < 3; axis++) {
      Plane p = Plane.across(axis, BOX);

      assertEquals(0.5, p.share(BOX), 1e-12);
      for (double share : new double[] {0, 0.2, 0.9, 1}) {
        assertEquals(share, p.at(share, BOX).share(BOX), 1e-12);
      }
      // At one end all corners are kept, at the other all but that side's are gone.
      Plane start = p.at(0, BOX);
      assertTrue(start.moved(-1e-6).keeps(BOX.lower()) && start.moved(-1e-6).keeps(BOX.upper()));
      assertTrue(!p.at(1, BOX).moved(1e-6).keeps(BOX.middle()));
    }
  }

  @Test
  void turningKeepsItsPoint() {
    Plane p = new Plane(new Vec3(3, 4, 5), new Vec3(0, 1, 0));

    Plane t = p.turned(new Vec3(0, 0, 1), Math.PI / 2);

    assertEquals(0, t.normal().distance(new Vec3(-1, 0, 0)), 1e-12);
    assertEquals(0, t.above(new Vec3(3, 4, 5)), 1e-12);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NearTrianglesTest {
  private static final double HALF = 5e-3;

  private static NearTriangles cube(double reach) {
    Vec3 corner = new Vec3(HALF, HALF, HALF);
    Labelled solid = new Labelled(Cavity.Region.PART, Solids.box(corner.times(-1), corner));
    return new NearTriangles(Vec3.ZERO, reach, List.of(solid));
  }

  /** Closed form: outside by the parts beyond each pair of sides, inside to the nearest side. */
  private static double toCube(Vec3 p) {
    double x = Math.abs(p.x()) - HALF;
    double y = Math.abs(p.y()) - HALF;
    double z = Math.abs(p.z()) - HALF;
    double outside = Math.hypot(Math.hypot(Math.max(0, x), Math.max(0, y)), Math.max(0, z));
    return outside > 0 ? outside : -Math.max(x, Math.max(y, z));
  }

  @Test
  void aCubesWallIsAsFarAsItsClosedFormSays() {
    NearTriangles cube = cube(20e-3);
    Random random = new Random(3);
    double farthest = 4e-3;
    for (int i = 0; i < 2000; i++) {
      Vec3 p = new Vec3(random.nextDouble(), random.nextDouble(), random.nextDouble());
      p = p.minus(new Vec3(0.5, 0.5, 0.5)).times(24e-3);
      assertEquals(Math.min(farthest, toCube(p)), cube.distance(p, farthest), 1e-12, p.toString());
    }
  }

  @Test
  void whatIsOutOfReachDoesNotCount() {
    assertEquals(1, cube(4e-3).distance(Vec3.ZERO, 1));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshCheck;
import org.junit.jupiter.api.Test;

final class RefineTest {
  private static final TriangleMesh BAR =
      Solids.cylinder(new Vec3(0, 0, 0), new Vec3(40e-3, 3e-3, 0), 5e-3, 3e-3, 24);

  private static double longest(TriangleMesh m) {
    double most = 0;
    for (int t = 0; t < m.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        Vec3 next = m.vertex(m.corner(t, (c + 1) % 3));
        most = Math.max(most, m.vertex(m.corner(t, c)).distance(next));
      }
    }
    return most;
  }

  @Test
  void edgesGetShortAndTheSurfaceStaysTheSame() {
    TriangleMesh fine = Refine.to(BAR, 1e-3, 1_000_000);

    assertTrue(longest(fine) <= 1e-3, "" + longest(fine));
    assertEquals(BAR.volume(), fine.volume(), 1e-12 * BAR.volume());
    assertEquals(BAR.area(), fine.area(), 1e-12 * BAR.area());
    assertTrue(MeshCheck.inspect(fine).closed());
  }

  @Test
  void verticesKeepTheirNumbers() {
    TriangleMesh fine = Refine.to(BAR, 2e-3, 1_000_000);

    for (int v = 0; v < BAR.vertexCount(); v++) {
      assertEquals(BAR.vertex(v), fine.vertex(v));
    }
  }

  @Test
  void itStopsAtSoManyTriangles() {
    int n = Refine.to(BAR, 1e-5, 5000).triangleCount();

    assertTrue(n >= 5000 && n <= 20_000, "" + n);
  }
}

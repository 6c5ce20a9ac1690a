// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class UnionVolumeTest {
  private static final double R = 10e-3;

  private static TriangleMesh ball(double x, double r) {
    return Solids.sphere(new Vec3(x, 0, 0), r, 48);
  }

  private static TriangleMesh turned(TriangleMesh mesh) {
    int[] t = mesh.copyTriangles();
    for (int i = 0; i < t.length; i += 3) {
      int keep = t[i];
      t[i] = t[i + 1];
      t[i + 1] = keep;
    }
    return new TriangleMesh(mesh.copyVertices(), t);
  }

  /** Two balls a radius apart share a lens of pi (4 R + d) (2 R - d)^2 / 12, here with d = R. */
  @Test
  void ballsThatOverlapShareALens() {
    UnionVolume u = UnionVolume.of(ball(0, R).plus(ball(R, R)));

    double lens = Math.PI * 5 * Math.pow(R, 3) / 12;
    double round = 4 * Math.PI / 3 * Math.pow(R, 3);
    // the balls are polyhedra, whose volumes are somewhat smaller than round ones
    double expected = (2 * round - lens) * ball(0, R).volume() / round;
    Check.of("volume of two balls that overlap", "closed form of the lens")
        .expected(expected)
        .got(u.m3())
        .within(0.002);
    assertTrue(u.error() < 0.001 * expected, () -> "error " + u.error());
  }

  @Test
  void oneShellHasTheVolumeOfItsTriangles() {
    Random r = new Random(3);
    for (int i = 0; i < 2; i++) {
      TriangleMesh m =
          Solids.cylinder(
              Vec3.ZERO,
              new Vec3(r.nextDouble(), r.nextDouble(), r.nextDouble()).times(0.05),
              2e-3 + 5e-3 * r.nextDouble(),
              7e-3,
              16);

      UnionVolume u = UnionVolume.of(m);

      assertEquals(m.volume(), u.m3(), 0.002 * m.volume());
      assertTrue(Math.abs(m.volume() - u.m3()) < 3 * u.error() + 1e-4 * m.volume());
    }
  }

  @Test
  void whatLiesInsideIsCountedOnceAndAVoidNotAtAll() {
    double whole = ball(0, R).volume();
    double inner = ball(0, R / 2).volume();

    assertEquals(whole, UnionVolume.of(ball(0, R).plus(ball(0, R / 2))).m3(), 0.001 * whole);
    assertEquals(
        whole - inner, UnionVolume.of(ball(0, R).plus(turned(ball(0, R / 2)))).m3(), 0.001 * whole);
  }

  @Test
  void solidsApartAddUp() {
    TriangleMesh two = ball(0, R).plus(ball(5 * R, R / 4));

    assertEquals(two.volume(), UnionVolume.of(two).m3(), 0.002 * two.volume());
  }
}

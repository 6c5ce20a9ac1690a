// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshCheck;
import gelfront.mesh.check.MeshReport;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Volumes against closed forms of solid geometry; facets of n corners lose about 1 / n^2. */
class ShapesTest {
  private static final String SOURCE = "closed forms of solid geometry";

  @Test
  void boxIsExact() {
    assertVolume(
        "a box", 24e-9, Solids.box(new Vec3(1e-3, 0, 0), new Vec3(3e-3, 3e-3, 4e-3)), 1e-12);
  }

  @Test
  void frustumInAnyDirection() {
    double closed = Math.PI * 0.03 / 3 * (25e-6 + 10e-6 + 4e-6);
    Check volume = Check.of("volume of a frustum, three directions", SOURCE);

    for (Vec3 d :
        List.of(new Vec3(0.03, 0, 0), new Vec3(0, -0.03, 0), new Vec3(0.01, 0.02, 0.02))) {
      volume.expected(closed).got(sound(Solids.cylinder(Vec3.ZERO, d, 5e-3, 2e-3, 400)).volume());
    }
    volume.within(1e-4);
  }

  @Test
  void ballConvergesWithSecondOrder() {
    double closed = 4 * Math.PI / 3 * 1e-6;
    double coarse = closed - Solids.sphere(new Vec3(1, 2, 3), 1e-2, 40).volume();
    double fine = closed - Solids.sphere(new Vec3(1, 2, 3), 1e-2, 80).volume();

    Check.of("ball of facets: its error falls by four as they halve", "second order")
        .expected(4)
        .got(coarse / fine)
        .within(0.025);
    assertVolume("a ball", closed, Solids.sphere(Vec3.ZERO, 1e-2, 200), 1e-3);
  }

  @Test
  void torus() {
    assertVolume(
        "a torus", 2 * Math.PI * Math.PI * 1e-2 * 9e-6, Solids.torus(1e-2, 3e-3, 200), 1e-3);
  }

  @Test
  void revolutionIsAStackOfFrusta() {
    double closed = Math.PI / 3 * (10e-3 * (4e-6 + 6e-6 + 9e-6) + 5e-3 * (9e-6 + 3e-6 + 1e-6));

    assertVolume(
        "a body of revolution",
        closed,
        Solids.revolution(new double[] {0, 10e-3, 15e-3}, new double[] {2e-3, 3e-3, 1e-3}, 400),
        1e-4);
  }

  @Test
  void loftOfEqualRowsIsAnEllipticCylinder() {
    double[] w = {8e-3, 8e-3, 8e-3};
    double[] h = {5e-3, 5e-3, 5e-3};

    // 48 corners: the polygon's share of its ellipse is sin(2 pi / 48) / (2 pi / 48)
    double share = Math.sin(Math.PI / 24) / (Math.PI / 24);
    assertVolume(
        "a loft over ellipses",
        share * Math.PI * 4e-3 * 2.5e-3 * 60e-3,
        Loft.of(new double[] {0, 20e-3, 60e-3}, w, h),
        1e-9);
  }

  @Test
  void loftNeitherOvershootsNorMissesItsThickestRow() {
    double[] x = {0, 20e-3, 21e-3, 60e-3};
    double[] d = {2e-3, 2e-3, 12e-3, 12e-3};

    Vec3 size = Loft.of(x, d, d).box().size();

    assertEquals(12e-3, size.y(), 1e-12);
    assertEquals(60e-3, size.x(), 1e-12);
  }

  @Test
  void badRowsAreNamed() {
    double[] d = {2e-3, 2e-3, 2e-3};

    assertBad("at rows 2 and 3", new double[] {0, 20e-3, 20e-3}, d);
    assertBad("at rows 1 and 2", new double[] {0, Double.NaN, 20e-3}, d);
    assertBad("at rows 2 and 3", new double[] {0, 10e-3, 20e-3}, new double[] {2e-3, 2e-3, -1});
    assertBad("more than a metre", new double[] {0, 1, 1e9}, d);
    assertBad("two rows at least", new double[] {0}, new double[] {1e-3});
    assertBad("each with a width", new double[] {0, 1e-3}, d);
  }

  private static void assertBad(String message, double[] x, double[] d) {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> Loft.of(x, d, d));

    assertTrue(e.getMessage().contains(message), e.getMessage());
  }

  private static void assertVolume(
      String what, double expected, TriangleMesh mesh, double relative) {
    Check.of("volume of " + what, SOURCE)
        .expected(expected)
        .got(sound(mesh).volume())
        .within(relative);
  }

  private static TriangleMesh sound(TriangleMesh mesh) {
    assertEquals(MeshReport.Verdict.OK, MeshCheck.inspect(mesh).verdict());
    return mesh;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import org.junit.jupiter.api.Test;

class OrbitTest {
  private static final double FIELD = Math.toRadians(32);
  private static final Extent STICK = new Extent(new Vec3(-10, 3, -4), new Vec3(90, 15, 4));

  /** Greatest |x| or |y| of the box's corners in the picture, 1 at its edge. */
  private static double reach(Orbit o, double aspect) {
    double most = 0;
    Extent e = o.extent();
    for (int i = 0; i < 8; i++) {
      Vec3 corner =
          new Vec3(
              (i & 1) == 0 ? e.lower().x() : e.upper().x(),
              (i & 2) == 0 ? e.lower().y() : e.upper().y(),
              (i & 4) == 0 ? e.lower().z() : e.upper().z());
      Vec3 v = corner.minus(o.eye());
      double depth = v.dot(o.forward()) * Math.tan(FIELD / 2);
      most = Math.max(most, Math.abs(v.dot(o.up())) / depth);
      most = Math.max(most, Math.abs(v.dot(o.right())) / (depth * aspect));
    }
    return most;
  }

  @Test
  void theFirstViewHoldsAllOfThePartAndNotMuchMore() {
    for (double aspect : new double[] {0.6, 1, 1.3, 3}) {
      double reach = reach(Orbit.round(STICK, FIELD, aspect), aspect);
      assertTrue(reach < 1 && reach > 0.75, aspect + ": " + reach);
    }
  }

  @Test
  void theFirstViewLooksOnTheLongSide() {
    Extent across = new Extent(new Vec3(0, 0, 0), new Vec3(10, 80, 10));

    assertTrue(Math.abs(Orbit.round(STICK, FIELD, 1).right().x()) > 0.9);
    assertTrue(Math.abs(Orbit.round(across, FIELD, 1).right().y()) > 0.9);
  }

  @Test
  void theCutTakesAwayTheHalfTowardsTheEye() {
    for (Extent e : new Extent[] {STICK, new Extent(Vec3.ZERO, new Vec3(10, 80, 10))}) {
      Plane cut = Plane.lengthwise(e);
      Vec3 eye = Orbit.round(e, FIELD, 1).eye();

      assertTrue(!cut.keeps(eye));
      assertTrue(cut.keeps(e.middle().times(2).minus(eye)));
    }
  }

  @Test
  void itsAxesAreARightHandedFrame() {
    Orbit o = Orbit.round(STICK, FIELD, 1).turned(2.2, -0.7);

    assertEquals(0, o.right().dot(o.forward()), 1e-12);
    assertEquals(1, o.right().cross(o.forward()).dot(o.up()), 1e-12);
    assertTrue(o.up().z() > 0);
    assertEquals(o.distance(), o.eye().distance(STICK.middle()), 1e-9);
  }

  @Test
  void itNeverTipsOverNorEntersNorLosesThePart() {
    Orbit o = Orbit.round(STICK, FIELD, 1);

    assertTrue(o.turned(0, 9).up().z() > 0);
    assertTrue(o.turned(0, -9).up().z() > 0);
    assertEquals(0.3 * STICK.radius(), o.zoomed(1e-6).distance(), 1e-9);
    assertEquals(15 * STICK.radius(), o.zoomed(1e6).distance(), 1e-9);
  }

  @Test
  void theExtentIsThatOfTheCellsFaces() {
    Extent e = Extent.of(Blocks.block());

    assertEquals(0, e.lower().length(), 1e-12);
    assertEquals(0, e.upper().distance(new Vec3(4, 3, 2)), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> Extent.of(Blocks.with(new float[0])));
  }

  @Test
  void aLineOfSightThroughTheMiddleMeetsTheTarget() {
    Orbit o = Orbit.round(STICK, FIELD, 1.5).turned(0.4, 0.2).lookingAt(new Vec3(20, 9, 1));
    Ray ray = o.through(0.5, 0.5, FIELD, 1.5);

    assertEquals(0, ray.at(o.distance()).distance(new Vec3(20, 9, 1)), 1e-9);
    Ray corner = o.through(1, 0, FIELD, 1.5);
    Vec3 d = corner.direction();
    assertEquals(Math.tan(FIELD / 2), d.dot(o.up()) / d.dot(o.forward()), 1e-12);
    assertEquals(1.5 * Math.tan(FIELD / 2), d.dot(o.right()) / d.dot(o.forward()), 1e-12);
  }

  @Test
  void slidingMovesTheTargetByASharesOfThePicture() {
    Orbit o = Orbit.round(STICK, FIELD, 1);
    Orbit slid = o.slid(0.1, 0, FIELD);

    double height = 2 * o.distance() * Math.tan(FIELD / 2);
    assertEquals(0.1 * height, slid.target().minus(o.target()).dot(o.right()), 1e-9);
  }
}

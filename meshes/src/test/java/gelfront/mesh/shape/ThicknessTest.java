// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against shapes whose inscribed balls are known by geometry. */
final class ThicknessTest {
  private static final Vec3 ORIGIN = new Vec3(0, 0, 0);

  @Test
  void aBallIsAsThickAsItsDiameter() {
    for (Thickness.Sample s : Thickness.of(Solids.sphere(ORIGIN, 5e-3, 48), 2000)) {
      assertEquals(10e-3, s.thickness(), 0.3e-3);
    }
  }

  @Test
  void aPlateIsAsThickAsItIsAwayFromItsRim() {
    double t = 3e-3;
    List<Thickness.Sample> all =
        Thickness.of(Solids.box(new Vec3(-20e-3, -20e-3, 0), new Vec3(20e-3, 20e-3, t)), 3000);

    int faces = 0;
    for (Thickness.Sample s : all) {
      if (Math.abs(s.outward().z()) > 0.9
          && Math.max(Math.abs(s.at().x()), Math.abs(s.at().y())) < 16e-3) {
        assertEquals(t, s.thickness(), 0.15e-3);
        faces++;
      }
    }
    assertTrue(faces > 1000);
  }

  @Test
  void aConeIsAsThickAsTheBallThatTouchesItThere() {
    // a ball that touches a cone of half angle a at radius r has the diameter 2 r / cos(a)
    double[] x = {0, 60e-3};
    double[] r = {3e-3, 9e-3};
    double cosine = 60 / Math.hypot(60, 6);
    for (Thickness.Sample s : Thickness.of(Solids.revolution(x, r, 64), 4000)) {
      if (s.at().x() > 12e-3 && s.at().x() < 45e-3) {
        double radius = Math.hypot(s.at().y(), s.at().z());
        assertEquals(2 * radius / cosine, s.thickness(), 0.05 * 2 * radius);
      }
    }
  }
}

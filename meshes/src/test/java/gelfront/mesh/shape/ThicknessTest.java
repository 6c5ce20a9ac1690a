// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.shape;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import gelfront.mesh.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against shapes whose inscribed balls are known by geometry. */
final class ThicknessTest {
  private static final String SOURCE = "geometry: the ball inside that touches there";
  private static final Vec3 ORIGIN = new Vec3(0, 0, 0);

  @Test
  void aBallIsAsThickAsItsDiameter() {
    Check thickness = Check.of("thickness of a ball", SOURCE);
    for (Thickness.Sample s : Thickness.of(Solids.sphere(ORIGIN, 5e-3, 48), 2000)) {
      thickness.expected(10e-3).got(s.thickness());
    }
    thickness.within(0.03);
  }

  @Test
  void aPlateIsAsThickAsItIsAwayFromItsRim() {
    double t = 3e-3;
    List<Thickness.Sample> all =
        Thickness.of(Solids.box(new Vec3(-20e-3, -20e-3, 0), new Vec3(20e-3, 20e-3, t)), 3000);

    Check thickness = Check.of("thickness of a plate away from its rim", SOURCE);
    int faces = 0;
    for (Thickness.Sample s : all) {
      if (Math.abs(s.outward().z()) > 0.9
          && Math.max(Math.abs(s.at().x()), Math.abs(s.at().y())) < 16e-3) {
        thickness.expected(t).got(s.thickness());
        faces++;
      }
    }
    thickness.within(0.05);
    assertTrue(faces > 1000);
  }

  @Test
  void aConeIsAsThickAsTheBallThatTouchesItThere() {
    // a ball that touches a cone of half angle a at radius r has the diameter 2 r / cos(a)
    double[] x = {0, 60e-3};
    double[] r = {3e-3, 9e-3};
    double cosine = 60 / Math.hypot(60, 6);
    Check thickness = Check.of("thickness of a cone", SOURCE);
    for (Thickness.Sample s : Thickness.of(Solids.revolution(x, r, 64), 4000)) {
      if (s.at().x() > 12e-3 && s.at().x() < 45e-3) {
        double radius = Math.hypot(s.at().y(), s.at().z());
        thickness.expected(2 * radius / cosine).got(s.thickness());
      }
    }
    thickness.within(0.05 * cosine);
  }
}

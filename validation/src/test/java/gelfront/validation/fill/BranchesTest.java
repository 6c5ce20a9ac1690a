// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.fill;

import gelfront.evidence.Check;
import gelfront.fill.Drive;
import gelfront.fill.FillRecord;
import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two tubes on one wide vessel under the same pressure: their fronts stand as their radii. */
final class BranchesTest {
  private static final double WIDE = 3e-3;
  private static final double NARROW = 2e-3;
  private static final double LENGTH = 45e-3;
  private static final double VESSEL = 5e-3;

  @Test
  void theWiderTubeRunsAheadAsItsRadius() {
    Vec3 right = new Vec3(0, 5e-3, 0);
    Vec3 left = right.times(-1);
    Vec3 end = new Vec3(LENGTH, 0, 0);
    Cavity cavity =
        Shots.cavity(
            List.of(
                Solids.box(new Vec3(-VESSEL, -11e-3, -6e-3), new Vec3(0, 11e-3, 6e-3)),
                Solids.cylinder(right.minus(end.times(0.02)), right.plus(end), WIDE, WIDE, 128),
                Solids.cylinder(left.minus(end.times(0.02)), left.plus(end), NARROW, NARROW, 128)),
            0.4e-3,
            Shots.mouth(new Vec3(-VESSEL, 0, 0), new Vec3(-1, 0, 0), 20e-3));
    FillRecord r = Shots.shoot(cavity, Drive.pressure(20e3), Shots.OPEN);
    double whole = ends(cavity, r, true);
    double ratio = stands(cavity, r, whole) / LENGTH;
    Check.of("two tubes on one vessel, ratio of their fronts", "Poiseuille: as the radii")
        .expected(NARROW / WIDE)
        .got(ratio)
        .within(0.045);
  }

  /** s at which the wide tube was full. */
  private static double ends(Cavity cavity, FillRecord r, boolean wide) {
    double last = 0;
    for (int c = 0; c < cavity.count(); c++) {
      boolean here = cavity.centre(c, 0) > 0 && cavity.centre(c, 1) > 0 == wide;
      last = here ? Math.max(last, r.reached()[c]) : last;
    }
    return last;
  }

  /** Metres of the narrow tube that are full by then. */
  private static double stands(Cavity cavity, FillRecord r, double time) {
    double in = 0;
    double all = 0;
    double[] volume = cavity.volumes();
    for (int c = 0; c < cavity.count(); c++) {
      if (cavity.centre(c, 0) > 0 && cavity.centre(c, 1) < 0) {
        all += volume[c];
        in += r.reached()[c] <= time ? volume[c] : 0;
      }
    }
    return LENGTH * in / all;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.fill.Drive;
import gelfront.fill.FillRecord;
import gelfront.grid.Cavity;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.voxelize.Mouth;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Several ways from one wide vessel, by Poiseuille's law. A front that has come l into a tube of
 * radius R behind a gate of radius r and length g is there when the time integral of the vessel's
 * pressure is
 *
 * <pre>  4 g^2 / r^2 + 8 g l R^2 / r^4 + 4 l^2 / R^2  times eta</pre>
 *
 * whatever that pressure does, so that one front's place tells the other's.
 */
final class SharedRunnerTest {
  private static final double DX = 0.4e-3;
  private static final double VESSEL = 5e-3;
  private static final double R = 2.5e-3;
  private static final double GATE = 1.5e-3;

  private static double integral(double r, double g, double l) {
    return 4 * g * g / (r * r) + 8 * g * l * R * R / Math.pow(r, 4) + 4 * l * l / (R * R);
  }

  /** Metres that a front has come into its tube by then; the tube's length at most. */
  private static double into(double r, double g, double integral, double length) {
    double low = 0;
    double high = length;
    for (int i = 0; i < 60; i++) {
      double l = 0.5 * (low + high);
      low = integral(r, g, l) < integral ? l : low;
      high = integral(r, g, l) < integral ? high : l;
    }
    return low;
  }

  /** Two like cavities, one farther off: how full that one is when the near one is full. */
  @Test
  void theFartherCavityLags() {
    double near = 20e-3;
    double far = 28e-3;
    double length = 16e-3;
    List<TriangleMesh> solids = new ArrayList<>(vessel(-12e-3, 12e-3));
    solids.addAll(branch(6e-3, near, length));
    solids.addAll(branch(-6e-3, far, length));
    Cavity cavity = Shots.cavity(solids, DX, mouth());
    for (Drive drive : List.of(Drive.pressure(50e3), new Drive(1e-6, 1e9))) {
      FillRecord r = Shots.shoot(cavity, drive, Shots.OPEN);
      double full = last(cavity, r, near, 6e-3);
      double share = filled(cavity, r, far, -6e-3, full);
      double exact = into(GATE, far, integral(GATE, near, length), length) / length;
      assertEquals(FillRecord.End.FULL, r.end());
      assertTrue(full < 0.95 * r.time());
      assertEquals(exact, share, 0.05);
    }
  }

  private static List<TriangleMesh> branch(double y, double gate, double length) {
    Vec3 from = new Vec3(-0.5e-3, y, 0);
    return List.of(
        Solids.cylinder(from, new Vec3(gate + 0.1e-3, y, 0), GATE, GATE, 96),
        Solids.cylinder(new Vec3(gate, y, 0), new Vec3(gate + length, y, 0), R, R, 96));
  }

  private static double last(Cavity cavity, FillRecord r, double beyond, double y) {
    double last = 0;
    for (int c = 0; c < cavity.count(); c++) {
      boolean here = cavity.centre(c, 0) > beyond && cavity.centre(c, 1) * y > 0;
      last = here ? Math.max(last, r.reached()[c]) : last;
    }
    return last;
  }

  private static double filled(Cavity cavity, FillRecord r, double beyond, double y, double time) {
    double in = 0;
    double all = 0;
    double[] volume = cavity.volumes();
    for (int c = 0; c < cavity.count(); c++) {
      if (cavity.centre(c, 0) > beyond && cavity.centre(c, 1) * y > 0) {
        all += volume[c];
        in += r.reached()[c] <= time ? volume[c] : 0;
      }
    }
    return in / all;
  }

  /** Two gates at the ends of one tube: where the fronts meet. */
  @Test
  void twoGatesIntoOneCavityMeetWhereTheirLengthsSay() {
    double half = 22e-3;
    double gate = 14e-3;
    for (double narrow : new double[] {GATE, 0.9 * GATE}) {
      List<TriangleMesh> solids = new ArrayList<>(vessel(-half - 3e-3, half + 3e-3));
      double in = gate + R;
      solids.add(leg(-half, gate, GATE));
      solids.add(leg(half, gate, narrow));
      Vec3 end = new Vec3(0, half + R, 0);
      Vec3 middle = new Vec3(in, 0, 0);
      solids.add(Solids.cylinder(middle.minus(end), middle.plus(end), R, R, 96));
      Cavity cavity = Shots.cavity(solids, DX, mouth());
      FillRecord r = Shots.shoot(cavity, Drive.pressure(50e3), Shots.OPEN);
      double exact = meets(gate, narrow, 2 * half) - half;
      assertEquals(exact, latest(cavity, r), narrow == GATE ? 2 * DX : 0.03 * 2 * half);
      assertTrue(r.welds().size() >= 1);
      assertEquals(latest(cavity, r), middle(cavity, r.welds().get(0)), 3 * DX);
    }
  }

  private static TriangleMesh leg(double y, double gate, double radius) {
    return Solids.cylinder(
        new Vec3(-0.5e-3, y, 0), new Vec3(gate + 1e-3, y, 0), radius, radius, 96);
  }

  /** Metres from the wider gate, whose way is taken from axis to axis. */
  private static double meets(double gate, double narrow, double length) {
    double low = 0;
    double high = length;
    for (int i = 0; i < 60; i++) {
      double l = 0.5 * (low + high);
      boolean early = integral(GATE, gate, l) < integral(narrow, gate, length - l);
      low = early ? l : low;
      high = early ? high : l;
    }
    return low;
  }

  /** Metres along the tube of what was reached last between the gates. */
  private static double latest(Cavity cavity, FillRecord r) {
    int best = -1;
    for (int c = 0; c < cavity.count(); c++) {
      boolean here = cavity.centre(c, 0) > 15e-3 && Math.abs(cavity.centre(c, 1)) < 18e-3;
      best = here && (best < 0 || r.reached()[c] > r.reached()[best]) ? c : best;
    }
    return cavity.centre(best, 1);
  }

  private static double middle(Cavity cavity, FillRecord.Weld w) {
    double sum = 0;
    for (int c : w.cells()) {
      sum += cavity.centre(c, 1);
    }
    return sum / w.cells().length;
  }

  private static List<TriangleMesh> vessel(double from, double to) {
    return List.of(Solids.box(new Vec3(-VESSEL, from, -VESSEL), new Vec3(0, to, VESSEL)));
  }

  private static Mouth mouth() {
    return Shots.mouth(new Vec3(-VESSEL, 0, 0), new Vec3(-1, 0, 0), 40e-3);
  }
}

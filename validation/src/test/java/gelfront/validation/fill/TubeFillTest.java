// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import gelfront.fill.Drive;
import gelfront.fill.FillRecord;
import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A round tube filled under given pressure: dL/dt = R^2 p / (8 eta L), so L^2 = R^2 p t / (4 eta)
 * (Poiseuille's law; Washburn, Phys. Rev. 17 (1921) 273, from memory).
 */
final class TubeFillTest {
  private static final double R = 3e-3;
  private static final double LENGTH = 60e-3;
  private static final double PRESSURE = 20e3;

  @Test
  void frontGoesAsTheRootOfTime() {
    Check check =
        Check.of("round tube filled under given pressure, s", "Poiseuille; Washburn 1921");
    FillRecord r = shoot(12);
    for (double share : new double[] {0.25, 0.5, 0.75, 1}) {
      check.at(share).expected(exact(share)).got(timeAt(r, r.room() * share));
    }
    check.plot("share filled", "s").within(0.02);
  }

  /** Pressure falls evenly from the mouth to the front, and there is none beyond it. */
  @Test
  void theHalvesArePushedApartByHalfThePressureOnWhatIsFull() {
    Check check = Check.of("tube being filled, mean pressure on its shadow, Pa", "Poiseuille");
    FillRecord r = shoot(12);
    FillRecord.Trace t = r.trace();
    for (int i = 1; i < t.held().length; i++) {
      // What pushes is told with the step that it drives.
      double share = t.held()[i - 1] / r.room();
      if (share > 0.2 && share < 0.98) {
        check.at(share).expected(0.5 * share * PRESSURE).got(t.push()[i]);
      }
    }
    check.plot("share filled", "Pa").within(0.03);
  }

  @Test
  void errorFallsWithTheCells() {
    double coarse = mean(5, 6, 7);
    double fine = mean(15, 18);
    double order = Math.log(coarse / fine) / Math.log(16.5 / 6);
    assertTrue(order > 0.8, order + ": " + coarse + ", " + fine);
  }

  @Test
  void whatComesInIsInside() {
    FillRecord r = shoot(10);
    assertEquals(FillRecord.End.FULL, r.end());
    assertEquals(1, r.held() / r.room(), 1e-9);
    assertTrue(r.worstImbalance() < 1e-4, "solver leaves " + r.worstImbalance());
    assertTrue(r.heatOff() < 1e-4, "heat off by " + r.heatOff());
  }

  /** Shares by which t is off at a quarter, half, three quarters and the end of the tube. */
  private static double[] errors(int across) {
    FillRecord r = shoot(across);
    double[] off = new double[4];
    for (int i = 0; i < off.length; i++) {
      double share = (double) (i + 1) / off.length;
      off[i] = timeAt(r, r.room() * share) / exact(share) - 1;
    }
    return off;
  }

  /** s until a share of the tube is full. */
  private static double exact(double share) {
    return 4 * Math.pow(share * LENGTH / R, 2) / PRESSURE;
  }

  /** From half way on, over placings of the cells, which make noise of their own. */
  private static double mean(int... across) {
    double sum = 0;
    for (int n : across) {
      double[] off = errors(n);
      sum += Math.abs(off[1]) + Math.abs(off[2]) + Math.abs(off[3]);
    }
    return sum / (3 * across.length);
  }

  /** s at which so much was in: between two steps t runs with the square. */
  static double timeAt(FillRecord r, double volume) {
    double[] held = r.trace().held();
    double[] time = r.trace().time();
    int i = 1;
    while (i < held.length - 1 && held[i] < volume) {
      i++;
    }
    double a = held[i - 1] * held[i - 1];
    double b = held[i] * held[i];
    return time[i - 1] + (time[i] - time[i - 1]) * (volume * volume - a) / (b - a);
  }

  private static FillRecord shoot(int across) {
    Vec3 end = new Vec3(LENGTH, 0, 0);
    Cavity tube =
        Shots.cavity(
            List.of(Solids.cylinder(Vec3.ZERO, end, R, R, 256)),
            2 * R / (across + 0.3),
            Shots.mouth(Vec3.ZERO, new Vec3(-1, 0, 0), R));
    double[] vents = new double[tube.count()];
    Arrays.fill(vents, Shots.OPEN);
    return Shots.shoot(tube, Drive.pressure(PRESSURE), vents, false);
  }
}

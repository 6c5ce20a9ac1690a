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

/**
 * Creeping flow between plates a gap h apart (Hele-Shaw; Batchelor, An Introduction to Fluid
 * Dynamics, section 4.8, from memory): mean speed h^2 / (12 eta) times the slope of the pressure.
 */
final class PlateFillTest {
  private static final String HELE_SHAW =
      "creeping flow between plates, Batchelor 4.8, from memory";
  private static final double GAP = 2e-3;
  private static final double DX = GAP / 6.3;

  /**
   * A strip filled under given pressure from one edge: L^2 = h^2 p t / 6 eta, less at its sides.
   */
  @Test
  void stripFromItsEdge() {
    double wide = 12 * GAP;
    double length = 30e-3;
    Cavity strip =
        Shots.cavity(
            List.of(
                Solids.box(new Vec3(0, -wide / 2, -GAP / 2), new Vec3(length, wide / 2, GAP / 2))),
            DX,
            Shots.mouth(Vec3.ZERO, new Vec3(-1, 0, 0), wide));
    FillRecord r = Shots.shoot(strip, Drive.pressure(10e3), Shots.OPEN);
    // Mean speed in a rectangle, 1 - 0.630 h / w (Shah and London, from memory).
    double squared = GAP * GAP / 6 * (1 - 0.630 * GAP / wide) * 10e3;
    Check check = Check.of("strip between plates filled from its edge, s", HELE_SHAW);
    for (double share : new double[] {0.5, 0.75, 1}) {
      double exact = share * share * length * length / squared;
      check.at(share).expected(exact).got(TubeFillTest.timeAt(r, share * r.room()));
    }
    check.plot("share filled", "s").within(0.02);
  }

  /**
   * A disc filled at a given rate from its middle: r^2 = Q t / (pi h), and between two moments the
   * pressure rises by 6 eta Q / (pi h^3) ln(r2 / r1).
   */
  @Test
  void discFromItsMiddle() {
    double radius = 12e-3;
    double inlet = 2e-3;
    double rate = 1e-6;
    Vec3 top = new Vec3(GAP / 2, 0, 0);
    Cavity disc =
        Shots.cavity(
            List.of(Solids.cylinder(top.times(-1), top, radius, radius, 256)),
            DX,
            Shots.mouth(top, new Vec3(1, 0, 0), inlet));
    FillRecord r = Shots.shoot(disc, new Drive(rate, 1e9), Shots.OPEN);
    Check.of("disc filled at a given rate, s", "volume over rate")
        .expected(r.room() / rate)
        .got(r.time())
        .within(0.002);
    Check.of("disc's front, mean way off its circle, in cells", HELE_SHAW)
        .expected(0)
        .got(offRound(disc, r, rate) / DX)
        .within(0.5, 1);
    double r1 = 5e-3;
    double r2 = 10e-3;
    double rise = 6 * rate / (Math.PI * Math.pow(GAP, 3)) * Math.log(r2 / r1);
    double found = pressureAt(r, r2, rate) - pressureAt(r, r1, rate);
    Check.of("disc between plates, pressure's rise, Pa", HELE_SHAW)
        .expected(rise)
        .got(found)
        .within(0.03);
  }

  private static double pressureAt(FillRecord r, double radius, double rate) {
    double time = Math.PI * radius * radius * GAP / rate;
    double[] t = r.trace().time();
    int i = 1;
    while (t[i] < time) {
      i++;
    }
    // A step's pressure is that at its start, where the front then stood.
    double[] p = r.trace().pressure();
    double share = (time - t[i - 1]) / (t[i] - t[i - 1]);
    int next = Math.min(i + 1, p.length - 1);
    return p[i] + share * (p[next] - p[i]);
  }

  /** Metres, mean over the cells of how far the front was from its circle as it passed. */
  private static double offRound(Cavity disc, FillRecord r, double rate) {
    double sum = 0;
    int n = 0;
    for (int c = 0; c < disc.count(); c++) {
      Vec3 at = disc.centre(c);
      double off = Math.hypot(at.y(), at.z());
      if (off > 4e-3 && off < 11e-3) {
        sum += Math.abs(Math.sqrt(r.reached()[c] * rate / (Math.PI * GAP)) - off);
        n++;
      }
    }
    return sum / n;
  }
}

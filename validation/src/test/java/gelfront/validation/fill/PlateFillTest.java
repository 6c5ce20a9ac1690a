// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.fill;

import static org.junit.jupiter.api.Assertions.assertTrue;

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
   * pressure rises by 6 eta Q / (pi h^3) ln(r2 / r1). Cells count as reached when they are full, so
   * half a cell of what the front is off is how it is told.
   */
  @Test
  void discFromItsMiddleTheRounderTheFinerItsCells() {
    Disc coarse = new Disc(4.3);
    Disc fine = new Disc(6.3);
    Check.of("disc's front, mean way off its circle, mm", HELE_SHAW)
        .at(4.3)
        .expected(0)
        .got(coarse.off * 1e3)
        .at(6.3)
        .expected(0)
        .got(fine.off * 1e3)
        .plot("cells across the gap", "mm")
        .within(0.2, 1);
    double order = Math.log(coarse.off / fine.off) / Math.log(6.3 / 4.3);
    assertTrue(order > 0.8, "order " + order);
    for (Disc d : new Disc[] {coarse, fine}) {
      Check.of("disc filled at a given rate, s, " + d.across + " cells", "volume over rate")
          .expected(d.record.room() / Disc.RATE)
          .got(d.record.time())
          .within(0.002);
      Check.of("disc between plates, pressure's rise, Pa, " + d.across + " cells", HELE_SHAW)
          .expected(6 * Disc.RATE / (Math.PI * Math.pow(GAP, 3)) * Math.log(2))
          .got(pressureAt(d.record, 10e-3, Disc.RATE) - pressureAt(d.record, 5e-3, Disc.RATE))
          .within(0.02);
    }
  }

  /** A disc of 12 mm filled through a mouth of 2 mm, so many cells across the gap. */
  private static final class Disc {
    static final double RATE = 1e-6;
    final double across;
    final FillRecord record;

    /** Metres, mean over cells between 4 and 11 mm. */
    final double off;

    Disc(double across) {
      this.across = across;
      Vec3 top = new Vec3(GAP / 2, 0, 0);
      Cavity disc =
          Shots.cavity(
              List.of(Solids.cylinder(top.times(-1), top, 12e-3, 12e-3, 256)),
              GAP / across,
              Shots.mouth(top, new Vec3(1, 0, 0), 2e-3));
      record = Shots.shoot(disc, new Drive(RATE, 1e9), Shots.OPEN);
      off = offRound(disc, record, RATE);
    }
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

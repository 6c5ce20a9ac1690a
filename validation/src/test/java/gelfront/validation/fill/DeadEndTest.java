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
import java.util.List;
import org.junit.jupiter.api.Test;

/** Air that a tube's closed end holds: p V stays what it was (Boyle's law). */
final class DeadEndTest {
  private static final String BOYLE = "Boyle's law";
  private static final double OUTSIDE = 101_325;
  private static final double LENGTH = 40e-3;
  private static final double R = 2.5e-3;

  @Test
  void liquidStopsWhereTheAirIsAsDenseAsThePlungerPresses() {
    Check volume = Check.of("closed end, air's share of the room", BOYLE);
    Check product = Check.of("closed end, p V of its air, J", BOYLE);
    Check held = Check.of("closed end, the air's pressure, Pa", BOYLE);
    for (double pressure : new double[] {20e3, 100e3, 400e3}) {
      FillRecord r = Shots.shoot(tube(), Drive.pressure(pressure), 0);
      assertEquals(FillRecord.End.AIR_HOLDS, r.end());
      double left = OUTSIDE / (OUTSIDE + pressure);
      FillRecord.AirBody air = r.bodies().get(0);
      volume.at(1e-3 * pressure).expected(left).got(air.volume() / r.room());
      product.expected(OUTSIDE * r.room()).got(air.pressure() * air.volume());
      held.expected(OUTSIDE + pressure).got(air.pressure());
    }
    volume.plot("kPa", "share of air").within(0.01);
    product.within(1e-9);
    held.within(0.01);
  }

  /** The front slows down as the air gets denser: L L' = K (p - p0 x / (1 - x)), x = L / length. */
  @Test
  void onTheWayPressureRisesAsTheAirIsPressed() {
    double pressure = 100e3;
    FillRecord r = Shots.shoot(tube(), Drive.pressure(pressure), 0);
    double end = pressure / (OUTSIDE + pressure);
    double k = R * R / 8;
    int steps = 20_000;
    double time = 0;
    double target = 0.9 * end;
    for (int i = 0; i < steps; i++) {
      double x = (i + 0.5) * target / steps;
      double drives = pressure - OUTSIDE * x / (1 - x);
      time += LENGTH * LENGTH * x * target / steps / (k * drives);
    }
    Check.of("closed end, time to 0.9 of the way, s", BOYLE + " and Poiseuille, integrated")
        .expected(time)
        .got(TubeFillTest.timeAt(r, target * r.room()))
        .within(0.03);
  }

  @Test
  void aVentAtTheEndLetsItFill() {
    Cavity tube = tube();
    double[] vents = new double[tube.count()];
    for (int c = 0; c < vents.length; c++) {
      vents[c] = tube.centre(c, 0) > LENGTH - 0.6e-3 ? 1e-9 : 0;
    }
    FillRecord r = Shots.shoot(tube, Drive.pressure(20e3), vents, true);
    assertEquals(FillRecord.End.FULL, r.end());
  }

  /** Air through a narrow vent: once it governs, what comes is C p. */
  @Test
  void aNarrowVentGovernsTheRate() {
    Cavity tube = tube();
    double through = 1e-12;
    double[] vents = new double[tube.count()];
    vents[tube.nearest(new Vec3(LENGTH, 0, 0))] = through;
    double pressure = 5e3;
    FillRecord r = Shots.shoot(tube, Drive.pressure(pressure), vents, true);
    double half = TubeFillTest.timeAt(r, 0.5 * r.room());
    double more = TubeFillTest.timeAt(r, 0.8 * r.room());
    double rate = 0.3 * r.room() / (more - half);
    Check.of("narrow vent, rate that it lets in, m3/s", "conductance times pressure")
        .expected(through * pressure)
        .got(rate)
        .within(0.05);
  }

  /** Both ends of a tube filled from its middle hold their own air. */
  @Test
  void twoEndsAreTwoBodies() {
    double half = 20e-3;
    Vec3 end = new Vec3(half, 0, 0);
    Cavity tube =
        Shots.cavity(
            List.of(
                Solids.cylinder(end.times(-1), end, R, R, 64),
                Solids.cylinder(Vec3.ZERO, new Vec3(0, 0, 8e-3), 1.5e-3, 1.5e-3, 64)),
            0.4e-3,
            Shots.mouth(new Vec3(0, 0, 8e-3), new Vec3(0, 0, 1), 1.5e-3));
    FillRecord r = Shots.shoot(tube, Drive.pressure(100e3), 0);
    assertEquals(2, r.bodies().size());
    for (FillRecord.AirBody b : r.bodies()) {
      assertTrue(Math.abs(tube.centre(b.cells()[b.cells().length - 1], 0)) > 5e-3);
      assertTrue(b.since() > 0 && b.since() < r.time());
    }
    double ratio = r.bodies().get(0).volume() / r.bodies().get(1).volume();
    assertEquals(1, ratio, 0.04); // one layer of blocks is 2.5 % of a half
  }

  /** Two ends of different length, filled at a given rate: their air differs in pressure. */
  @Test
  void whatComesThroughTheMouthIsWhatTheFrontsGetWhereAirDiffers() {
    Vec3 far = new Vec3(28e-3, 0, 0);
    Cavity tube =
        Shots.cavity(
            List.of(
                Solids.cylinder(new Vec3(-12e-3, 0, 0), far, R, R, 64),
                Solids.cylinder(Vec3.ZERO, new Vec3(0, 0, 8e-3), 1.5e-3, 1.5e-3, 64)),
            0.5e-3,
            Shots.mouth(new Vec3(0, 0, 8e-3), new Vec3(0, 0, 1), 1.5e-3));
    FillRecord r = Shots.shoot(tube, new Drive(2e-6, 150e3), 0);
    assertEquals(2, r.bodies().size());
    assertEquals(0, r.worstImbalance(), 1e-4);
    for (FillRecord.AirBody b : r.bodies()) {
      assertEquals(OUTSIDE + 150e3, b.pressure(), 0.01 * b.pressure());
    }
  }

  private static Cavity tube() {
    Vec3 end = new Vec3(LENGTH, 0, 0);
    return Shots.cavity(
        List.of(Solids.cylinder(Vec3.ZERO, end, R, R, 128)),
        0.5e-3,
        Shots.mouth(Vec3.ZERO, new Vec3(-1, 0, 0), R));
  }
}

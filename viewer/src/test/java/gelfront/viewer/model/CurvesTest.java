// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.base.Units;
import gelfront.finding.Filled;
import gelfront.mesh.Vec3;
import gelfront.result.Series;
import java.util.List;
import org.junit.jupiter.api.Test;

class CurvesTest {
  private static final double[] TIME = {0, 10, 20};

  private static Series.Curve curve(String key, String unit, double... values) {
    return new Series.Curve(key, key, unit, values);
  }

  @Test
  void theyComeInTheirOrderAndSayTheirValueAtATime() {
    Series s =
        new Series(
            TIME,
            List.of(
                curve("gate", "°C", 160, 120, 40),
                curve("mould", "°C", 30, 40, 45),
                curve("fed_share", "", 1, 0.5, 0)));

    List<Curves.Strip> strips = Curves.of(s);

    assertEquals(2, strips.size());
    assertEquals("75.0 %", strips.get(0).at(5, Units.METRIC));
    assertEquals("80.0 °C", strips.get(1).at(15, Units.METRIC));
    assertEquals("40.0 °C", strips.get(1).at(99, Units.METRIC));
    assertEquals("176 °F", strips.get(1).at(15, new Units(false, true)));
    assertEquals(1, strips.get(1).share(0), 1e-12);
    assertEquals(0, strips.get(1).share(2), 1e-12);
  }

  /** 8 ml come in, 1 ml of air stays, 1 ml freezes before it is there: 80 % at the end. */
  @Test
  void theShotIsFilledAsFarAsNeitherAirNorColdPlacesAreLeft() {
    Filled.TrappedAir air =
        new Filled.TrappedAir(1, Vec3.ZERO, 1e-6, 4e-6, 1, 3e5, Vec3.ZERO, 0, 2e-3, "");
    List<Filled.Moment> course =
        List.of(
            new Filled.Moment(0, 0, 10e3, 0, Vec3.ZERO),
            new Filled.Moment(2, 4e-6, 30e3, 12e3, Vec3.ZERO),
            new Filled.Moment(4, 8e-6, 50e3, 40e3, Vec3.ZERO));

    List<Curves.Strip> strips = Curves.of(filled(1e-6, List.of(air), course));

    assertEquals(List.of("%", "kPa", "kPa"), strips.stream().map(Curves.Strip::unit).toList());
    assertEquals("40.0 %", strips.get(0).at(2, Units.METRIC));
    assertEquals("80.0 %", strips.get(0).at(9, Units.METRIC));
    assertEquals("40.0 kPa", strips.get(1).at(3, Units.METRIC));
    assertEquals("26.0 kPa", strips.get(2).at(3, Units.METRIC));
    assertEquals(List.of(), Curves.of(Filled.NOT_CALCULATED));
  }

  private static Filled filled(
      double unfilled, List<Filled.TrappedAir> air, List<Filled.Moment> course) {
    return new Filled(
        true,
        false,
        Filled.End.FULL,
        "",
        4,
        50e3,
        1,
        1,
        150,
        Vec3.ZERO,
        25,
        9,
        Vec3.ZERO,
        4,
        unfilled,
        List.of(),
        air,
        List.of(),
        course);
  }

  @Test
  void aFlatCurveHasAScaleAndAnEmptyRunHasNone() {
    Series flat = new Series(TIME, List.of(curve("sprue_sunk", "mm", 0, 0, 0)));

    assertEquals(0, Curves.of(flat).get(0).share(1), 1e-12);
    assertEquals(0, Curves.of(new Series(new double[0], List.of())).size());
  }
}

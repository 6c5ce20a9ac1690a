// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
    assertEquals("75.0 %", strips.get(0).at(5));
    assertEquals("80.0 °C", strips.get(1).at(15));
    assertEquals("40.0 °C", strips.get(1).at(99));
    assertEquals(1, strips.get(1).share(0), 1e-12);
    assertEquals(0, strips.get(1).share(2), 1e-12);
  }

  @Test
  void aFlatCurveHasAScaleAndAnEmptyRunHasNone() {
    Series flat = new Series(TIME, List.of(curve("sprue_sunk", "mm", 0, 0, 0)));

    assertEquals(0, Curves.of(flat).get(0).share(1), 1e-12);
    assertEquals(0, Curves.of(new Series(new double[0], List.of())).size());
  }
}

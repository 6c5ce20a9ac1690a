// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class UnitsTest {
  private static final Units SHOP = new Units(true, true);

  @Test
  void whatIsShownIsReadBackAsTheSame() {
    double[] lengths = {0.0003, 0.003, 0.0254, 0.0123};
    double[] temperatures = {-40, 0, 23, 165.5};
    for (Units u : new Units[] {Units.METRIC, SHOP}) {
      for (double si : lengths) {
        String typed = u.typed(Dimension.LENGTH, u.number(Dimension.LENGTH, si));
        assertEquals(si, Quantities.parse(typed, Dimension.LENGTH), 1.3e-6);
      }
      for (double si : temperatures) {
        String typed = u.typed(Dimension.TEMPERATURE, u.number(Dimension.TEMPERATURE, si));
        assertEquals(si, Quantities.parse(typed, Dimension.TEMPERATURE), 0.01);
      }
    }
  }

  @Test
  void aBareNumberIsInTheUsersUnitAnyOtherMayBeTyped() {
    assertEquals("330 degF", SHOP.typed(Dimension.TEMPERATURE, "330"));
    assertEquals("165 degC", SHOP.typed(Dimension.TEMPERATURE, "165 °C"));
    assertEquals("1/8 in", SHOP.typed(Dimension.LENGTH, "1/8"));
    assertEquals("329", SHOP.number(Dimension.TEMPERATURE, 165));
    assertEquals("3", Units.METRIC.number(Dimension.LENGTH, 0.003));
  }

  @Test
  void whatIsUsualIsNotToldMoreExactlyThanItIsKnown() {
    assertEquals("0.16", SHOP.rough(Dimension.LENGTH, 0.004)); // 0.1575
    assertEquals("0.0039", SHOP.rough(Dimension.LENGTH, 0.0001));
    assertEquals("4", Units.METRIC.rough(Dimension.LENGTH, 0.004));
    assertEquals("311", SHOP.rough(Dimension.TEMPERATURE, 155));
  }

  @Test
  void nonsenseIsRefusedInWords() {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class, () -> Units.METRIC.typed(Dimension.LENGTH, "wide"));

    assertEquals("\"wide\" is not a quantity; write it like 12 mm", e.getMessage());
  }

  @Test
  void sentencesTellFiguresInTheirReadersUnits() {
    assertEquals("0.40 to 1.20 mm", Units.METRIC.range(0.4e-3, 1.2e-3, 2));
    assertEquals("0.016 to 0.047 in", SHOP.range(0.4e-3, 1.2e-3, 2));
    assertEquals("0.016 in", SHOP.range(0.401e-3, 0.402e-3, 2));
    assertEquals(
        "x 25, y 0, z -3 mm", Units.METRIC.lengths("x %s, y %s, z %s", 0, 25e-3, -1e-4, -3e-3));
    assertEquals(
        "x 0.98, y 0.00, z -0.12 in", SHOP.lengths("x %s, y %s, z %s", 0, 25e-3, -1e-6, -3e-3));
    assertEquals("2.5 mm", Units.METRIC.plain(2.5e-3));
    assertEquals("0.125 in", SHOP.plain(3.175e-3));
    assertEquals("0.13 mm", Units.METRIC.size(0.13e-3));
    assertEquals("120 mm", Units.METRIC.size(0.12));
    assertEquals("4.72 in", SHOP.size(0.12));
    assertEquals("330 °F", SHOP.temperature(165.5));
    assertEquals("18 °F", SHOP.difference(10));
    assertEquals("10 K", Units.METRIC.difference(10));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gelfront.base.Caution.Figure;
import org.junit.jupiter.api.Test;

final class CautionTest {
  private static final Units SHOP = new Units(true, true);

  /** 190 °C are 374 °F; an inch is 25.4 mm. */
  @Test
  void itsFiguresAreToldInItsReadersUnits() {
    Caution hot = Caution.of("Stay below {}.", Figure.temperature(190));
    Caution gate = Caution.of("The gate at {} sets, 100 %.", Figure.point(0.0254, -0.0127, 0));

    assertEquals("Stay below 190 °C.", hot.metric());
    assertEquals("Stay below 374 °F.", hot.in(SHOP));
    assertEquals("The gate at (25.4, -12.7, 0.0) mm sets, 100 %.", gate.metric());
    assertEquals("The gate at (1.000, -0.500, 0.000) in sets, 100 %.", gate.in(SHOP));
  }

  @Test
  void itsPlaceInTheFileStandsBeforeItAsItIs() {
    Caution hot = Caution.of("Below {}.", Figure.temperature(100)).at("a{}%s.toml:3:1");

    assertEquals("a{}%s.toml:3:1: Below 212 °F.", hot.in(SHOP));
  }

  @Test
  void eachPlaceHasAFigureAndEachFigureItsNumbers() {
    assertThrows(IllegalArgumentException.class, () -> Caution.of("Below {}."));
    assertThrows(
        IllegalArgumentException.class, () -> Caution.of("Below.", Figure.temperature(100)));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Figure(Caution.Kind.POINT, java.util.List.of(1.0)));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.viewer.model.LegendTicks.Tick;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LegendTicksTest {
  private static List<String> labels(double max, int most) {
    return LegendTicks.of(max, most).stream().map(Tick::label).toList();
  }

  @Test
  void labelsAreRoundWithNoMoreDecimalsThanNeeded() {
    assertEquals(List.of("0", "20", "40", "60", "80"), labels(88.9, 8));
    assertEquals(List.of("0", "0.5", "1.0", "1.5", "2.0"), labels(2, 4));
    assertEquals(List.of("0", "0.02", "0.04", "0.06"), labels(0.07, 4));
  }

  @Test
  void theEndOfTheScaleKeepsItsTick() {
    assertEquals("0.3", labels(0.1 + 0.2, 3).get(3));
  }

  @Test
  void aScaleWithoutLengthHasOneTick() {
    assertEquals(List.of("0"), labels(0, 8));
    assertEquals(List.of("0"), labels(Double.POSITIVE_INFINITY, 8));
    assertEquals(List.of("0"), labels(Double.NaN, 8));
  }

  @Test
  void everyScaleGetsAtMostWhatIsAskedAndNotFarBelow() {
    Random random = new Random(3);
    for (int i = 0; i < 2000; i++) {
      double max = Math.pow(10, 8 * random.nextDouble() - 4);
      List<Tick> ticks = LegendTicks.of(max, 8);
      assertTrue(ticks.size() >= 4 && ticks.size() <= 9, max + ": " + ticks.size());
      for (Tick t : ticks) {
        assertEquals(t.value(), Double.parseDouble(t.label()), 1e-9 * max);
        assertEquals(t.share(), t.value() / max, 1e-12);
      }
    }
  }
}

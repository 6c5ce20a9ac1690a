// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.setup.Shot;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class EventsTest {
  @Test
  void timesAreSortedAndKeptOnce() {
    Events e = new Events(List.of(7.0, 2.0, 7.0), List.of(5.0));

    assertEquals(List.of(2.0, 7.0), e.changes());
    assertEquals(2, e.next(0));
    assertEquals(5, e.next(2));
    assertEquals(7, e.next(5));
    assertEquals(Double.POSITIVE_INFINITY, e.next(7));
  }

  @Test
  void anEventReachedButForRoundingIsBehind() {
    Events e = new Events(List.of(0.3), List.of());

    assertEquals(Double.POSITIVE_INFINITY, e.next(0.1 + 0.1 + 0.1));
    assertTrue(e.changeAt(0.1 + 0.1 + 0.1));
    assertEquals(0.3, e.next(0.3 - 1e-6));
    assertFalse(e.changeAt(0.3 - 1e-6));
  }

  @Test
  void aLookChangesNothing() {
    assertFalse(new Events(List.of(), List.of(4.0)).changeAt(4));
  }

  @Test
  void topUpsAndOpeningOfTheRecipe() {
    Shot shot =
        new Shot(
            165, 2, 5, 20e3, List.of(20.0, 8.0), OptionalDouble.empty(), OptionalDouble.of(90));

    assertEquals(List.of(8.0, 20.0, 90.0), Events.of(shot).changes());
  }

  @Test
  void timesBeforeTheStartAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Events(List.of(-1.0), List.of()));
    assertThrows(IllegalArgumentException.class, () -> new Events(List.of(), List.of(Double.NaN)));
  }
}

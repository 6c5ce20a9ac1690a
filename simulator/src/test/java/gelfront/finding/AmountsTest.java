// SPDX-License-Identifier: Apache-2.0
package gelfront.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class AmountsTest {
  /** Two cavities of 8 ml, 3 ml of feed and 1 ml to top up with: 20 ml. */
  private static Amounts with(OptionalDouble injector) {
    return new Amounts(8e-6, 3e-6, 1e-6, 8e-3, 3e-3, 1e-3, 2, injector);
  }

  @Test
  void aShotFillsEveryCavityAndTheFeedOnce() {
    assertEquals(20e-6, with(OptionalDouble.empty()).shotVolume(), 1e-18);
  }

  @Test
  void anInjectorHoldsWhatIsNotMoreThanItself() {
    double shot = with(OptionalDouble.empty()).shotVolume();

    assertTrue(with(OptionalDouble.of(shot)).injectorHoldsIt());
    assertTrue(with(OptionalDouble.of(21e-6)).injectorHoldsIt());
    assertFalse(with(OptionalDouble.of(19e-6)).injectorHoldsIt());
  }

  @Test
  void oneThatIsNotStatedHoldsAnything() {
    assertTrue(with(OptionalDouble.empty()).injectorHoldsIt());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class GuessTest {
  /** Triangle over 0, 1, 4: F(x) = x^2 / 4 up to 1, 1 - (4 - x)^2 / 12 beyond. */
  @Test
  void sharesAreThoseOfATriangle() {
    Guess g = new Guess(0, 1, 4, false);
    assertEquals(0, g.at(0), 1e-12);
    assertEquals(0.5, g.at(0.0625), 1e-12);
    assertEquals(1, g.at(0.25), 1e-12);
    assertEquals(4 - Math.sqrt(6), g.at(0.5), 1e-12);
    assertEquals(4, g.at(1), 1e-12);
  }

  @Test
  void decadesAreSpreadByTheirLogarithms() {
    Guess g = new Guess(1, 10, 100, true);
    assertEquals(10, g.at(0.5), 1e-9);
    assertEquals(Math.exp(Math.log(10) / Math.sqrt(2)), g.at(0.25), 1e-9);
  }

  @Test
  void nothingToGuessIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Guess(1, 1, 1, false));
    assertThrows(IllegalArgumentException.class, () -> new Guess(2, 1, 3, false));
    assertThrows(IllegalArgumentException.class, () -> new Guess(0, 1, 3, true));
  }
}

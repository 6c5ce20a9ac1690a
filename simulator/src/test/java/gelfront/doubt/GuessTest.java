// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gelfront.evidence.Check;
import org.junit.jupiter.api.Test;

class GuessTest {
  /** Triangle over 0, 1, 4: F(x) = x^2 / 4 up to 1, 1 - (4 - x)^2 / 12 beyond. */
  @Test
  void sharesAreThoseOfATriangle() {
    Guess g = new Guess(0, 1, 4, false);
    Check.of("shares of a triangle of likelihood", "its distribution, closed form")
        .expected(0)
        .got(g.at(0))
        .expected(0.5)
        .got(g.at(0.0625))
        .expected(1)
        .got(g.at(0.25))
        .expected(4 - Math.sqrt(6))
        .got(g.at(0.5))
        .expected(4)
        .got(g.at(1))
        .within(2.5e-13, 4);
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

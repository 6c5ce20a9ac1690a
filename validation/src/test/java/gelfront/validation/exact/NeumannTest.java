// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Crank, Free and Moving Boundary Problems, pp. 102-103; digits computed by another program. */
class NeumannTest {
  @Test
  void iceGrowingIntoWater() {
    Neumann ice = new Neumann(2.22, 2.1e6, 0.56, 4.2e6, 3.33e8, -10, 0, 5);

    assertEquals(0.166233608134, ice.lambda(), 6e-13);
    assertEquals(10.8097504e-3, ice.front(1000), 6e-11);
    assertEquals(20.5100594e-3, ice.front(3600), 6e-11);
    assertEquals(-7.5410423, ice.temperature(5e-3, 3600), 6e-8);
    assertEquals(-5.09014567, ice.temperature(10e-3, 3600), 6e-9);
    assertEquals(-0.244306124, ice.temperature(20e-3, 3600), 6e-10);
  }

  @Test
  void inputsOftenUsedForEnthalpyMethods() {
    Neumann n = new Neumann(2, 2.5e6, 2, 2.5e6, 1e8, -10, 0, 2);

    assertEquals(0.322390632922, n.lambda(), 6e-13);
    assertEquals(536.061078e-3, n.front(864_000), 6e-10);
    assertEquals(-9.03514076, n.temperature(50e-3, 864_000), 6e-9);
    assertEquals(-6.15793708, n.temperature(200e-3, 864_000), 6e-9);
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          5e6, 0.538140369895, 2.34244835e-3
          2e7, 0.516582819517, 2.2486114e-3
          0, 0.546023058139, 2.37676056e-3
          """)
  void plastisolWithASharpFront(double latent, double lambda, double front) {
    Neumann n = new Neumann(0.15, 1.9e6, 0.15, 1.9e6, latent, 40, 110, 165);

    assertEquals(lambda, n.lambda(), 6e-13);
    assertEquals(front, n.front(60), 6e-11);
  }

  @Test
  void temperaturesOfThatPlastisol() {
    Neumann n = new Neumann(0.15, 1.9e6, 0.15, 1.9e6, 5e6, 40, 110, 165);

    assertEquals(72.22376, n.temperature(1e-3, 60), 6e-6);
    assertEquals(101.246322, n.temperature(2e-3, 60), 6e-7);
    assertEquals(152.158934, n.temperature(5e-3, 60), 6e-7);
  }

  /** sqrt(pi) lambda exp(lambda^2) erf lambda = Stefan number: the liquid at its melting point. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          0.01, 0.0705932766
          0.1, 0.220016273
          0.2, 0.306423905
          0.5, 0.464785921
          1, 0.620062633
          2, 0.800601363
          5, 1.05968701
          10, 1.25697212
          """)
  void onePhase(double stefan, double lambda) {
    Neumann n = new Neumann(1, 1e6, 1, 1e6, 1e8 / stefan, 0, 100, 100);

    assertEquals(lambda, n.lambda(), 6e-9);
  }
}

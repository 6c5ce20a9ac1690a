// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import gelfront.evidence.Check;
import org.junit.jupiter.api.Test;

/** Crank, Free and Moving Boundary Problems, pp. 102-103; digits computed by another program. */
class NeumannTest {
  private static final String CRANK = "Crank pp. 102-103, digits by another program";
  private static final String STEFAN = "Crank: sqrt(pi) lambda exp(lambda^2) erf lambda = Stefan";

  private static Check check(String what) {
    return Check.of(what, CRANK);
  }

  @Test
  void iceGrowingIntoWater() {
    Neumann ice = new Neumann(2.22, 2.1e6, 0.56, 4.2e6, 3.33e8, -10, 0, 5);

    check("ice: lambda").expected(0.166233608134).got(ice.lambda()).within(6e-13, 1);
    check("ice: front, m")
        .expected(10.8097504e-3)
        .got(ice.front(1000))
        .expected(20.5100594e-3)
        .got(ice.front(3600))
        .within(6e-11, 1);
    check("ice: temperature at 5 mm, °C")
        .expected(-7.5410423)
        .got(ice.temperature(5e-3, 3600))
        .within(6e-8, 1);
    check("ice: temperature at 10 mm, °C")
        .expected(-5.09014567)
        .got(ice.temperature(10e-3, 3600))
        .within(6e-9, 1);
    check("ice: temperature at 20 mm, °C")
        .expected(-0.244306124)
        .got(ice.temperature(20e-3, 3600))
        .within(6e-10, 1);
  }

  @Test
  void inputsOftenUsedForEnthalpyMethods() {
    Neumann n = new Neumann(2, 2.5e6, 2, 2.5e6, 1e8, -10, 0, 2);

    check("enthalpy trial: lambda").expected(0.322390632922).got(n.lambda()).within(6e-13, 1);
    check("enthalpy trial: front, m").expected(0.536061078).got(n.front(864_000)).within(6e-10, 1);
    check("enthalpy trial: temperatures, °C")
        .expected(-9.03514076)
        .got(n.temperature(50e-3, 864_000))
        .expected(-6.15793708)
        .got(n.temperature(200e-3, 864_000))
        .within(6e-9, 1);
  }

  @Test
  void plastisolWithASharpFront() {
    Check lambda = check("plastisol, latent heat 0, 5, 20 MJ/m3: lambda");
    Check front = check("plastisol, latent heat 0, 5, 20 MJ/m3: front, m");
    for (double[] row :
        Rows.of(
            """
            5e6, 0.538140369895, 2.34244835e-3
            2e7, 0.516582819517, 2.2486114e-3
            0, 0.546023058139, 2.37676056e-3
            """)) {
      Neumann n = new Neumann(0.15, 1.9e6, 0.15, 1.9e6, row[0], 40, 110, 165);
      lambda.expected(row[1]).got(n.lambda());
      front.expected(row[2]).got(n.front(60));
    }
    lambda.within(6e-13, 1);
    front.within(6e-11, 1);
  }

  @Test
  void temperaturesOfThatPlastisol() {
    Neumann n = new Neumann(0.15, 1.9e6, 0.15, 1.9e6, 5e6, 40, 110, 165);

    check("plastisol: temperature at 1 mm, °C")
        .expected(72.22376)
        .got(n.temperature(1e-3, 60))
        .within(6e-6, 1);
    check("plastisol: temperatures at 2 and 5 mm, °C")
        .expected(101.246322)
        .got(n.temperature(2e-3, 60))
        .expected(152.158934)
        .got(n.temperature(5e-3, 60))
        .within(6e-7, 1);
  }

  /** The liquid at its melting point. */
  @Test
  void onePhase() {
    Check check = Check.of("one phase, Stefan 0.01 to 10: lambda", STEFAN);
    for (double[] row :
        Rows.of(
            """
            0.01, 0.0705932766
            0.1, 0.220016273
            0.2, 0.306423905
            0.5, 0.464785921
            1, 0.620062633
            2, 0.800601363
            5, 1.05968701
            10, 1.25697212
            """)) {
      Neumann n = new Neumann(1, 1e6, 1, 1e6, 1e8 / row[0], 0, 100, 100);
      check.expected(row[1]).got(n.lambda());
    }
    check.within(6e-9, 1);
  }
}

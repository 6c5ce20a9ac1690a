// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;

/**
 * Steady shell of set material in a cooled round tube through which liquid flows at a fixed rate,
 * in laminar flow that stays developed in what is left open. The wall of the liquid is the shell's
 * inner face at the no-flow temperature, and x* doesn't depend on the open width, so that the
 * liquid cools by Graetz's series; what it gives off goes through the shell:
 *
 * <pre>
 *   ln(R / r) = 8 c / loss(x*),   c = (no-flow - wall) / (liquid at the inlet - no-flow)
 *   p = 8 mu Q / pi integral of dx / r^4 = 2 mu alpha L^2 / R^4 J(x*_L) / x*_L^2
 *   J(x*) = integral of (R / r)^4 dx*
 * </pre>
 *
 * <p>Open at any length if the rate is kept; but J / x*^2 has a least value, and with less suction
 * than that no shell is steady: the tube freezes shut. Source: Zerkle and Sunderland, The effect of
 * liquid solidification in a tube upon laminar-flow heat transfer and pressure drop, J. Heat
 * Transfer 90 (1968), from memory.
 *
 * @param c as above
 */
public record ShellInTube(double c) {
  private static final double SHORTEST = 1e-4;

  public ShellInTube {
    if (!(c > 0)) {
      throw new IllegalArgumentException("a shell needs a wall below no-flow: " + c);
    }
  }

  /** r / R. */
  public double open(double xStar) {
    return Math.exp(-8 * c / Graetz.loss(xStar));
  }

  /** J / x*^2 at the tube's end: suction over 2 mu alpha L^2 / R^4. */
  public double suction(double xStar) {
    double j =
        new SimpsonIntegrator().integrate(100_000, x -> Math.pow(open(x), -4), SHORTEST, xStar);
    return (SHORTEST + j) / (xStar * xStar);
  }

  /** The least of {@link #suction}, by golden section. */
  public double leastSuction() {
    double low = 1e-3;
    double high = 0.3;
    double golden = 0.5 * (Math.sqrt(5) - 1);
    while (high - low > 1e-6) {
      double a = high - golden * (high - low);
      double b = low + golden * (high - low);
      if (suction(a) < suction(b)) {
        high = b;
      } else {
        low = a;
      }
    }
    return suction(low);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import org.apache.commons.math3.special.Erf;

/**
 * Neumann's solution: a half-space of liquid freezes at one temperature from a wall that is held
 * cold. The front lies at X = 2 lambda sqrt(alpha_s t), where
 *
 * <pre>  k_s (Tm - Tw) exp(-l^2) / (sqrt(pi a_s) erf l)
 *       - k_l (Ti - Tm) exp(-l^2 a_s / a_l) / (sqrt(pi a_l) erfc(l sqrt(a_s / a_l)))
 *       = L l sqrt(a_s)</pre>
 *
 * Equal density. Source: Carslaw and Jaeger, Conduction of Heat in Solids, ch. XI; Crank, Free and
 * Moving Boundary Problems, pp. 102-103.
 *
 * @param ks W/m K, frozen
 * @param cs J/m3 K, frozen
 * @param kl W/m K, liquid
 * @param cl J/m3 K, liquid
 * @param latent J/m3
 * @param wall °C
 * @param melting °C
 * @param start °C of the liquid, not below {@code melting}
 */
public record Neumann(
    double ks,
    double cs,
    double kl,
    double cl,
    double latent,
    double wall,
    double melting,
    double start) {

  /** lambda. */
  public double lambda() {
    return Roots.find(this::residual, 1e-6, 5);
  }

  private double residual(double l) {
    double as = ks / cs;
    double al = kl / cl;
    double solid =
        ks * (melting - wall) * Math.exp(-l * l) / (Math.sqrt(Math.PI * as) * Erf.erf(l));
    double m = l * Math.sqrt(as / al);
    double liquid =
        kl * (start - melting) * Math.exp(-m * m) / (Math.sqrt(Math.PI * al) * Erf.erfc(m));
    return solid - liquid - latent * l * Math.sqrt(as);
  }

  /** Metres frozen after t seconds. */
  public double front(double t) {
    return 2 * lambda() * Math.sqrt(ks / cs * t);
  }

  /** °C, x metres from the wall. */
  public double temperature(double x, double t) {
    double l = lambda();
    double as = ks / cs;
    double al = kl / cl;
    if (x <= front(t)) {
      return wall + (melting - wall) * Erf.erf(x / (2 * Math.sqrt(as * t))) / Erf.erf(l);
    }
    return start
        - (start - melting)
            * Erf.erfc(x / (2 * Math.sqrt(al * t)))
            / Erf.erfc(l * Math.sqrt(as / al));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import org.apache.commons.math3.special.Erf;

/**
 * Two half-spaces, each at its own temperature, brought together at time 0.
 *
 * <pre>  e = sqrt(k C),  X = x / (2 sqrt(alpha t)),  eta = h (1/e1 + 1/e2)
 *
 *   perfect contact:  T_c = (e1 T1 + e2 T2) / (e1 + e2),  T = T1 + (T_c - T1) erfc X
 *   conductance h:    q = h (T1 - T2) exp(eta^2 t) erfc(eta sqrt t)
 *                     T = T1 - h (T1 - T2) / (e1 eta) [erfc X - exp(eta x / sqrt(alpha) + eta^2 t)
 *                                                             erfc(X + eta sqrt t)]</pre>
 *
 * Source: Carslaw and Jaeger, Conduction of Heat in Solids, ch. II; Incropera and DeWitt,
 * Fundamentals of Heat and Mass Transfer, ch. 5 (from memory).
 *
 * @param first on the warm or cold side alike
 * @param second in contact with it
 * @param conductance W/m2 K between them; infinity: perfect contact
 */
public record HalfSpaces(Body first, Body second, double conductance) {

  /**
   * One side.
   *
   * @param k W/m K
   * @param c J/m3 K
   * @param start °C
   */
  public record Body(double k, double c, double start) {
    /** sqrt(k C), W s^1/2 / m2 K. */
    public double effusivity() {
      return Math.sqrt(k * c);
    }

    double diffusivity() {
      return k / c;
    }
  }

  /** °C that both faces take in perfect contact, and tend to in any other. */
  public double contactTemperature() {
    double e1 = first.effusivity();
    double e2 = second.effusivity();
    return (e1 * first.start + e2 * second.start) / (e1 + e2);
  }

  /** eta, s^-1/2. */
  public double eta() {
    return conductance * (1 / first.effusivity() + 1 / second.effusivity());
  }

  /** W/m2 from the first to the second at time t. */
  public double flux(double t) {
    double dT = first.start - second.start;
    if (conductance == Double.POSITIVE_INFINITY) {
      double e = 1 / (1 / first.effusivity() + 1 / second.effusivity());
      return e * dT / Math.sqrt(Math.PI * t);
    }
    return conductance * dT * scaledErfc(eta() * Math.sqrt(t));
  }

  /** °C in the first body, x metres from the contact. */
  public double inFirst(double x, double t) {
    return in(first, second, x, t);
  }

  /** °C in the second body, x metres from the contact. */
  public double inSecond(double x, double t) {
    return in(second, first, x, t);
  }

  private double in(Body own, Body other, double x, double t) {
    double ownX = x / (2 * Math.sqrt(own.diffusivity() * t));
    if (conductance == Double.POSITIVE_INFINITY) {
      return own.start + (contactTemperature() - own.start) * Erf.erfc(ownX);
    }
    double z = ownX + eta() * Math.sqrt(t);
    double late = Math.exp(-ownX * ownX) * scaledErfc(z);
    double depth = conductance * (own.start - other.start) / (own.effusivity() * eta());
    return own.start - depth * (Erf.erfc(ownX) - late);
  }

  /** exp(z^2) erfc z without overflow; the tail by its asymptotic series. */
  private static double scaledErfc(double z) {
    if (z < 20) {
      return Math.exp(z * z) * Erf.erfc(z);
    }
    double w = 1 / (2 * z * z);
    return (1 - w * (1 - 3 * w * (1 - 5 * w))) / (z * Math.sqrt(Math.PI));
  }
}

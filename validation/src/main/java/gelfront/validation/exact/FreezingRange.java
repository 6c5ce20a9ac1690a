// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import org.apache.commons.math3.special.Erf;

/**
 * A half-space of liquid sets from a wall that is held cold, latent heat set free evenly between
 * two temperatures; one conductivity. Three regions, each with its own erf in x / (2 sqrt(alpha
 * t)): set (T below Ts), setting (heat capacity C + L / (Tl - Ts)), liquid (T above Tl). Their
 * borders lie at X1 = 2 a sqrt(alpha t) and X2 = 2 b sqrt(alpha t), alpha = k / C; temperature and
 * flux are continuous at both. With r^2 = 1 + L / (C (Tl - Ts)):
 *
 * <pre>  at a:  (Ts - Tw) exp(-a^2) / erf a = (Tl - Ts) r exp(-a^2 r^2) / (erf br - erf ar)
 *   at b:  (Tl - Ts) r exp(-b^2 r^2) / (erf br - erf ar) = (Ti - Tl) exp(-b^2) / erfc b</pre>
 *
 * Source: Carslaw and Jaeger, Conduction of Heat in Solids, ch. XI; Tien and Geiger; Cho and
 * Sunderland; Özışık and Uzzell (from memory).
 *
 * @param k W/m K
 * @param c J/m3 K without latent heat
 * @param latent J/m3
 * @param wall °C
 * @param set °C, Ts
 * @param liquid °C, Tl
 * @param start °C, above {@code liquid}
 */
public record FreezingRange(
    double k, double c, double latent, double wall, double set, double liquid, double start) {

  /** X1 / (2 sqrt(alpha t)). */
  public double a() {
    double most = Roots.find(a -> erfOfB(a) - (1 - 1e-14), 1e-9, 5);
    return Roots.find(this::residual, 1e-6, most);
  }

  /** X2 / (2 sqrt(alpha t)). */
  public double b() {
    return b(a());
  }

  private double r() {
    return Math.sqrt(1 + latent / (c * (liquid - set)));
  }

  /** erf(b r) that the condition at a asks for; passes 1 where a is too large. */
  private double erfOfB(double a) {
    double r = r();
    double setting = (liquid - set) * r * Math.exp(-a * a * r * r);
    return Erf.erf(a * r) + setting * Erf.erf(a) / ((set - wall) * Math.exp(-a * a));
  }

  private double b(double a) {
    return Erf.erfInv(Math.min(erfOfB(a), 1 - 1e-15)) / r();
  }

  private double residual(double a) {
    double r = r();
    double b = b(a);
    double mush = (liquid - set) * r * Math.exp(-b * b * r * r) / (Erf.erf(b * r) - Erf.erf(a * r));
    return mush - (start - liquid) * Math.exp(-b * b) / Erf.erfc(b);
  }

  /** Metres of set material after t seconds. */
  public double setFront(double t) {
    return 2 * a() * Math.sqrt(k / c * t);
  }

  /** Metres to where setting has just begun after t seconds. */
  public double liquidFront(double t) {
    return 2 * b() * Math.sqrt(k / c * t);
  }

  /** °C, x metres from the wall. */
  public double temperature(double x, double t) {
    double a = a();
    double b = b(a);
    double r = r();
    double s = x / (2 * Math.sqrt(k / c * t));
    if (s <= a) {
      return wall + (set - wall) * Erf.erf(s) / Erf.erf(a);
    }
    if (s >= b) {
      return start - (start - liquid) * Erf.erfc(s) / Erf.erfc(b);
    }
    double share = (Erf.erf(s * r) - Erf.erf(a * r)) / (Erf.erf(b * r) - Erf.erf(a * r));
    return set + (liquid - set) * share;
  }
}

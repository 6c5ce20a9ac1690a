// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

/**
 * Dent left in a round section after the best-fitting circle is taken away.
 *
 * <pre>
 *   lying:   dent / R = [1 / (a^2 + b^2) + 1 / c^2]^(-1/2)
 *            a = 0.481 e^0.75 tau^-1.23 G^0.381,  b = 0.913 e^2.3 tau^-2.41,  c = 1.03 e^(2/3)
 *   upright, one side 20 % thinner:
 *            dent / R = [1 / (1.69 e^1.86 tau^-1.61)^2 + 1 / (1.39 e^(2/3))^2]^(-1/2)
 *   lobe arc 6.4 sqrt(R t)
 *   opened with a liquid core, oval of amplitude R sqrt((e - tau^2 / 2) / 1.5)
 *
 * Suction that a ring bears, plane strain, incompressible (nu = 1/2):
 *   free, oval:      buckles at an all-round loss of (t / R)^2 / 2
 *   in a tight hole: E / (1 - nu^2) 0.969 (t / 2R)^2.2
 *   all round:       E e / 3 (R^2 / (R - t)^2 - 1)
 * </pre>
 *
 * with R the section's radius, t the skin's thickness, tau = t / R, e the lost share of the area, G
 * = rho g R / E. Source: a plane-strain study made for this project (gel skin on a frictionless
 * wall that only pushes, E 10-300 kPa); fits with 9 % rms and 24 % at most over its runs, 2-D only.
 * The oval is the area that a ring of fixed length loses as r = R + a cos 2 phi. The suctions are
 * closed forms: the second of Glock (1977, confined liners; from memory), the third of a thick
 * incompressible ring.
 */
final class SkinLaw {
  private static final double GRAVITY = 9.81;

  /** Tack to the wall narrows and deepens the lobe up to this much: on the high bound. */
  static final double TACK = 2.25;

  /** Poisson's number of what keeps its volume. */
  private static final double NU = 0.5;

  /** Share of the radius that counts as skin at most: a section without a core gives nothing. */
  private static final double CORE = 0.95;

  /** (n^2 - 1) / 2 of n = 2 waves round it: area lost over (a / R)^2. */
  private static final double OVAL = 1.5;

  private final double density;

  /**
   * @param density kg/m3
   */
  SkinLaw(double density) {
    this.density = density;
  }

  /** Pa that a tight ring bears before it goes in as one lobe; {@code modulus} Young's, Pa. */
  double confinedPeak(double radius, double thickness, double modulus) {
    double t = Math.min(radius, thickness);
    return modulus / (1 - NU * NU) * 0.969 * Math.pow(0.5 * t / radius, 2.2);
  }

  /** Pa that takes a share e of the area off a ring evenly; {@code modulus} Young's, Pa. */
  double allRound(double radius, double thickness, double modulus, double e) {
    double inner = 1 - Math.min(CORE, thickness / radius);
    return modulus * e / 3 * (1 / (inner * inner) - 1);
  }

  /**
   * Metres, for a part that lies with its axis across gravity; {@code modulus} Young's of the skin,
   * Pa.
   */
  double lying(double radius, double thickness, double modulus, double e) {
    if (e <= 0) {
      return 0;
    }
    double tau = tau(radius, thickness);
    double g = density * GRAVITY * radius / modulus;
    double a = 0.481 * Math.pow(e, 0.75) * Math.pow(tau, -1.23) * Math.pow(g, 0.381);
    double b = 0.913 * Math.pow(e, 2.3) * Math.pow(tau, -2.41);
    double c = 1.03 * Math.pow(e, 2.0 / 3);
    return radius / Math.sqrt(1 / (a * a + b * b) + 1 / (c * c));
  }

  /** Metres, for a part whose axis stands along gravity, one side of the skin 20 % thinner. */
  double upright(double radius, double thickness, double e) {
    if (e <= 0) {
      return 0;
    }
    double a = 1.69 * Math.pow(e, 1.86) * Math.pow(tau(radius, thickness), -1.61);
    double c = 1.39 * Math.pow(e, 2.0 / 3);
    return radius / Math.sqrt(1 / (a * a) + 1 / (c * c));
  }

  /** Metres that a free ring's flat sides come in when its liquid core loses a share e. */
  double oval(double radius, double thickness, double e) {
    double tau = thickness / radius;
    return radius * Math.sqrt(Math.max(0, e - tau * tau / 2) / OVAL);
  }

  /** Metres round the section. */
  double arc(double radius, double thickness) {
    return Math.min(2 * Math.PI * radius, 6.4 * Math.sqrt(radius * thickness));
  }

  private static double tau(double radius, double thickness) {
    return Math.max(0.02, Math.min(1, thickness / radius));
  }
}

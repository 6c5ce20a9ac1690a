// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

import gelfront.base.Entries;
import gelfront.base.Quantities;
import java.util.Map;

/**
 * Plastisol with a filler, by share of mass w:
 *
 * <pre>
 *   volumes add:          1/rho = (1 - w)/rho_p + w/rho_f,   phi = rho w / rho_f
 *   heats add by mass:    c = (1 - w) c_p + w c_f;  latent heat (1 - w) L
 *   conductivity:         k = k_p (k_f + 2 k_p + 2 phi (k_f - k_p)) / (k_f + 2 k_p - phi (k_f - k_p))
 *   expansion by volume:  beta = (1 - phi) beta_p   (the grains keep their size)
 * </pre>
 *
 * <p>Conductivity: Maxwell's rule for scattered spheres (A Treatise on Electricity and Magnetism,
 * 1873, art. 314), good to phi of about 0.3. Gelling, stiffness and viscosity are kept: unknown.
 * Spheres poured and shaken fill 0.64 of a space (Scott, Nature 188 (1960) 908, from memory): what
 * needs more is no liquid any more and is refused from 0.6 on.
 */
public final class Mixture {
  /** Share of volume up to which Maxwell's rule holds. */
  public static final double SCATTERED = 0.3;

  /** Share of volume from which grains hold each other. */
  public static final double PACKED = 0.6;

  private Mixture() {}

  /**
   * The filler's share of the hot liquid's volume.
   *
   * @param share of mass, 0 to 0.5
   * @throws IllegalArgumentException if the share is none, or too much for a liquid
   */
  public static double volumeShare(Plastisol p, Map<String, Ranged> filler, double share) {
    if (!(share >= 0 && share <= 0.5)) {
      throw new IllegalArgumentException("a filler's share of mass lies between 0 and 50 %");
    }
    double grains = share / Entries.of(filler, "density").typical();
    double phi = grains / (grains + (1 - share) / p.densityHot());
    if (phi > PACKED) {
      throw new IllegalArgumentException(
          Quantities.say(
              "%.0f %% of the mass is %.0f %% of the volume: grains touch and it can't be injected;"
                  + " stay below %.0f %% of the volume",
              share * 100, phi * 100, PACKED * 100));
    }
    return phi;
  }

  /**
   * @param filler the filler's properties by the table's names
   * @param share of mass, 0 to 0.5
   * @throws IllegalArgumentException if the share is none, or too much for a liquid
   */
  public static Plastisol of(
      Plastisol p, String fillerName, Map<String, Ranged> filler, double share) {
    double phi = volumeShare(p, filler, share);
    double rhoF = Entries.of(filler, "density").typical();
    double hot = 1 / ((1 - share) / p.densityHot() + share / rhoF);
    double cold = 1 / ((1 - share) / p.densityCold() + share / rhoF);
    double kp = p.conductivity();
    double kf = Entries.of(filler, "conductivity").typical();
    double k = kp * (kf + 2 * kp + 2 * phi * (kf - kp)) / (kf + 2 * kp - phi * (kf - kp));
    return new Plastisol(
        p.name() + " with " + fillerName,
        hot,
        cold,
        (1 - share) * p.specificHeat() + share * Entries.of(filler, "specific_heat").typical(),
        k,
        (1 - share) * p.latentHeat(),
        p.gelStart(),
        p.gelEnd(),
        p.noFlow(),
        p.firm(),
        (1 - phi) * p.expansionHot(),
        (1 - phi) * p.expansionGelled(),
        p.youngsModulus(),
        p.viscosityAt165(),
        p.measured());
  }
}

package gelfront.material;

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
 */
public final class Mixture {
  private Mixture() {}

  /**
   * @param filler the filler's properties by the table's names
   * @param share of mass, 0 to 0.5
   */
  public static Plastisol of(
      Plastisol p, String fillerName, Map<String, Ranged> filler, double share) {
    if (!(share >= 0 && share <= 0.5)) {
      throw new IllegalArgumentException("a filler's share of mass lies between 0 and 50 %");
    }
    double rhoF = filler.get("density").typical();
    double hot = 1 / ((1 - share) / p.densityHot() + share / rhoF);
    double cold = 1 / ((1 - share) / p.densityCold() + share / rhoF);
    double phi = hot * share / rhoF;
    double kp = p.conductivity();
    double kf = filler.get("conductivity").typical();
    double k = kp * (kf + 2 * kp + 2 * phi * (kf - kp)) / (kf + 2 * kp - phi * (kf - kp));
    return new Plastisol(
        p.name() + " with " + fillerName,
        hot,
        cold,
        (1 - share) * p.specificHeat() + share * filler.get("specific_heat").typical(),
        k,
        (1 - share) * p.latentHeat(),
        p.gelStart(),
        p.gelEnd(),
        p.noFlow(),
        p.firm(),
        (1 - phi) * p.expansionHot(),
        (1 - phi) * p.expansionGelled(),
        p.youngsModulus(),
        p.viscosityAt165());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

import java.util.Optional;

/**
 * A plastisol as one run sees it: one value per property (typical, or overridden in the case).
 * Temperatures in °C, SI otherwise.
 *
 * @param name as in the material table, or the user's own
 * @param densityHot kg/m3 of the hot liquid as injected, at 165 °C
 * @param densityCold kg/m3 at 25 °C, not below {@code densityHot}
 * @param specificHeat J/kg K
 * @param conductivity W/m K
 * @param latentHeat J/kg set free evenly between {@code gelStart} and {@code gelEnd}
 * @param gelStart °C where gelling begins on cooling
 * @param gelEnd °C where gelling is complete, below {@code gelStart}
 * @param noFlow °C below which it no longer flows on cooling: the set temperature
 * @param firm °C below which a part can be taken out
 * @param expansionHot 1/K, volumetric, above {@code noFlow}
 * @param expansionGelled 1/K, volumetric, below {@code noFlow}
 * @param youngsModulus Pa of the set gel at 25 °C
 * @param viscosityAt165 Pa s at 165 °C
 * @param measured viscosity over temperature, in place of {@code viscosityAt165} and an estimate
 */
public record Plastisol(
    String name,
    double densityHot,
    double densityCold,
    double specificHeat,
    double conductivity,
    double latentHeat,
    double gelStart,
    double gelEnd,
    double noFlow,
    double firm,
    double expansionHot,
    double expansionGelled,
    double youngsModulus,
    double viscosityAt165,
    Optional<ViscosityCurve> measured) {
  /** Viscosity estimated from its value at 165 °C. */
  public Plastisol(
      String name,
      double densityHot,
      double densityCold,
      double specificHeat,
      double conductivity,
      double latentHeat,
      double gelStart,
      double gelEnd,
      double noFlow,
      double firm,
      double expansionHot,
      double expansionGelled,
      double youngsModulus,
      double viscosityAt165) {
    this(
        name,
        densityHot,
        densityCold,
        specificHeat,
        conductivity,
        latentHeat,
        gelStart,
        gelEnd,
        noFlow,
        firm,
        expansionHot,
        expansionGelled,
        youngsModulus,
        viscosityAt165,
        Optional.empty());
  }

  public Plastisol {
    positive("hot density", densityHot);
    positive("cold density", densityCold);
    positive("specific heat", specificHeat);
    positive("conductivity", conductivity);
    positive("Young's modulus", youngsModulus);
    positive("viscosity", viscosityAt165);
    positive("hot expansion", expansionHot);
    positive("gelled expansion", expansionGelled);
    if (!(latentHeat >= 0) || Double.isInfinite(latentHeat)) {
      throw new IllegalArgumentException("latent heat must not be negative: " + latentHeat);
    }
    if (densityCold < densityHot) {
      throw new IllegalArgumentException(
          "it shrinks as it cools: the cold density ("
              + densityCold
              + ") must not be below the hot one ("
              + densityHot
              + ")");
    }
    if (!(gelEnd < gelStart)) {
      throw new IllegalArgumentException("gelling must end below where it starts");
    }
    if (!(firm < noFlow)) {
      throw new IllegalArgumentException(
          "a part is firm below the no-flow temperature, not above: " + firm + " and " + noFlow);
    }
  }

  /** The same with a measured viscosity. */
  public Plastisol with(ViscosityCurve curve) {
    return new Plastisol(
        name,
        densityHot,
        densityCold,
        specificHeat,
        conductivity,
        latentHeat,
        gelStart,
        gelEnd,
        noFlow,
        firm,
        expansionHot,
        expansionGelled,
        youngsModulus,
        viscosityAt165,
        Optional.of(curve));
  }

  private static void positive(String what, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " must be positive: " + value);
    }
  }
}

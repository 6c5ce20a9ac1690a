// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

/**
 * What the block or an insert is made of.
 *
 * @param name as in the material table, or the user's own
 * @param conductivity W/m K
 * @param density kg/m3
 * @param specificHeat J/kg K
 */
public record MouldMaterial(String name, double conductivity, double density, double specificHeat) {
  public MouldMaterial {
    if (!(positive(conductivity) && positive(density) && positive(specificHeat))) {
      throw new IllegalArgumentException(
          "mould material values must be positive and finite: " + name);
    }
  }

  private static boolean positive(double v) {
    return v > 0 && Double.isFinite(v);
  }

  /** J/m3 K. */
  public double volumetricHeat() {
    return density * specificHeat;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

/** Somebody's own material table with one plastisol, "mine". */
final class OwnMaterials {
  private OwnMaterials() {}

  /**
   * @param conductivity likely one, W/m K
   */
  static String of(double conductivity) {
    return """
        [plastisol.mine]
        about = "from the white jug"
        density_cold = [960, 1030, 1070, "guess"]
        density_hot = [900, 935, 970, "guess"]
        specific_heat = [1600, 1900, 2300, "guess"]
        conductivity = [0.14, %s, 0.17, "measured"]
        latent_heat = [0, 1300, 5000, "guess"]
        gel_start = [120, 128, 136, "measured"]
        gel_end = [100, 108, 116, "measured"]
        no_flow = [114, 118, 122, "measured"]
        firm = [45, 60, 80, "guess"]
        expansion_hot = [6.5e-4, 7.5e-4, 9e-4, "guess"]
        expansion_gelled = [6e-4, 7e-4, 8e-4, "guess"]
        youngs_modulus = [10e3, 50e3, 300e3, "guess"]
        viscosity_165 = [0.3, 1.5, 10, "guess"]
        """
        .formatted(conductivity);
  }
}

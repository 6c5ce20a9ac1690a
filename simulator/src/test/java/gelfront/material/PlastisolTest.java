// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class PlastisolTest {
  private static Plastisol soft(String key, double value) {
    Map<String, Double> typical = new LinkedHashMap<>();
    MaterialTable.builtIn()
        .entry("plastisol", "soft")
        .forEach((k, v) -> typical.put(k, v.typical()));
    typical.put(key, value);
    return MaterialTable.plastisol("soft", typical);
  }

  @ParameterizedTest
  @CsvSource({
    "density_cold,934,shrinks as it cools",
    "gel_end,135,gelling must end below where it starts",
    "gel_start,NaN,gelling must end below where it starts",
    "firm,125,firm below the no-flow temperature",
    "no_flow,NaN,firm below the no-flow temperature",
    "latent_heat,-1,latent heat must not be negative",
    "latent_heat,Infinity,latent heat must not be negative"
  })
  void contradictionsAreRefused(String key, double value, String why) {
    var e = assertThrows(IllegalArgumentException.class, () -> soft(key, value));

    assertTrue(e.getMessage().contains(why), e.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "density_hot,hot density",
    "density_cold,cold density",
    "specific_heat,specific heat",
    "conductivity,conductivity",
    "expansion_hot,hot expansion",
    "expansion_gelled,gelled expansion",
    "youngs_modulus,Young's modulus",
    "viscosity_165,viscosity"
  })
  void whatMustBePositiveIs(String key, String name) {
    for (double v : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      var e = assertThrows(IllegalArgumentException.class, () -> soft(key, v));
      assertTrue(e.getMessage().startsWith(name + " must be positive"), e.getMessage());
    }
  }

  @Test
  void oneThatKeepsItsVolumeIsAllowed() {
    assertDoesNotThrow(() -> soft("density_cold", 935));
    assertDoesNotThrow(() -> soft("latent_heat", 0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void mouldMaterialsArePositiveAndFinite(double v) {
    assertThrows(IllegalArgumentException.class, () -> new MouldMaterial("x", v, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new MouldMaterial("x", 1, v, 1));
    assertThrows(IllegalArgumentException.class, () -> new MouldMaterial("x", 1, 1, v));
  }
}

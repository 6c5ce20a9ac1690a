// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class MixtureTest {
  private static final MaterialTable TABLE = MaterialTable.builtIn();
  private static final Plastisol SOFT = TABLE.plastisol("soft");

  private static Plastisol mix(String filler, double share) {
    return Mixture.of(SOFT, filler, TABLE.entry("filler", filler), share);
  }

  /** 1 kg of the mixture takes the room of its parts, hot as cold. */
  @ParameterizedTest
  @CsvSource({"salt,0.01", "salt,0.5", "glitter,0.1", "hollow-spheres,0.05", "hollow-spheres,0.2"})
  void massIsKept(String filler, double share) {
    double grain = TABLE.entry("filler", filler).get("density").typical();
    Plastisol m = mix(filler, share);
    double phi = Mixture.volumeShare(SOFT, TABLE.entry("filler", filler), share);

    assertEquals((1 - share) / SOFT.densityHot() + share / grain, 1 / m.densityHot(), 1e-15);
    assertEquals((1 - share) / SOFT.densityCold() + share / grain, 1 / m.densityCold(), 1e-15);
    assertEquals(phi * grain + (1 - phi) * SOFT.densityHot(), m.densityHot(), 1e-9);
    assertEquals(share * m.densityHot() / grain, phi, 1e-12);
  }

  /** Layers across and along the heat flow bound any mixture (Wiener 1912, from memory). */
  @ParameterizedTest
  @CsvSource({"salt,0.1", "salt,0.4", "glitter,0.3", "hollow-spheres,0.05", "hollow-spheres,0.2"})
  void conductivityLiesBetweenLayersAcrossAndAlong(String filler, double share) {
    double kf = TABLE.entry("filler", filler).get("conductivity").typical();
    double kp = SOFT.conductivity();
    double phi = Mixture.volumeShare(SOFT, TABLE.entry("filler", filler), share);

    double k = mix(filler, share).conductivity();

    assertTrue(k > 1 / ((1 - phi) / kp + phi / kf), () -> "k " + k);
    assertTrue(k < (1 - phi) * kp + phi * kf, () -> "k " + k);
  }

  /** Grains that don't conduct leave 2 (1 - phi) / (2 + phi): Maxwell's own limit, art. 314. */
  @Test
  void insulatingAndPerfectGrains() {
    double share = 0.1;
    double phi = Mixture.volumeShare(SOFT, grains(1e-12), share);

    Check.of("conductivity with insulating and with perfect grains", "Maxwell, Treatise, art. 314")
        .expected(SOFT.conductivity() * 2 * (1 - phi) / (2 + phi))
        .got(Mixture.of(SOFT, "none", grains(1e-12), share).conductivity())
        .expected(SOFT.conductivity() * (1 + 2 * phi) / (1 - phi))
        .got(Mixture.of(SOFT, "silver", grains(1e12), share).conductivity())
        .within(5e-9);
    assertEquals(
        SOFT.conductivity(),
        Mixture.of(SOFT, "same", grains(SOFT.conductivity()), share).conductivity(),
        1e-15);
  }

  private static Map<String, Ranged> grains(double k) {
    return Map.of(
        "density", new Ranged(1000, 1000, 1000, "made up"),
        "specific_heat", new Ranged(800, 800, 800, "made up"),
        "conductivity", new Ranged(k, k, k, "made up"));
  }

  @Test
  void heatsAddByMassAndGrainsDontShrink() {
    Plastisol m = mix("salt", 0.25);
    double phi = Mixture.volumeShare(SOFT, TABLE.entry("filler", "salt"), 0.25);

    assertEquals(0.75 * SOFT.specificHeat() + 0.25 * 860, m.specificHeat(), 1e-9);
    assertEquals(0.75 * SOFT.latentHeat(), m.latentHeat(), 1e-9);
    assertEquals((1 - phi) * SOFT.expansionHot(), m.expansionHot(), 1e-15);
    assertEquals((1 - phi) * SOFT.expansionGelled(), m.expansionGelled(), 1e-15);
    double plain = 1 - SOFT.densityHot() / SOFT.densityCold();
    double filled = 1 - m.densityHot() / m.densityCold();
    assertEquals((1 - phi) * plain, filled, 1e-12, "only the plastisol contracts");
    assertEquals("soft with salt", m.name());
  }

  @Test
  void nothingAddedChangesNothing() {
    Plastisol m = mix("salt", 0);

    assertEquals(SOFT.densityHot(), m.densityHot(), 1e-9);
    assertEquals(SOFT.conductivity(), m.conductivity(), 1e-15);
    assertEquals(SOFT.expansionHot(), m.expansionHot(), 1e-18);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 0.51, Double.NaN})
  void sharesAreSharesOfMassUpToAHalf(double share) {
    assertThrows(IllegalArgumentException.class, () -> mix("salt", share));
  }

  /** 0.3 kg of spheres of 250 kg/m3 take 1.2 l, 0.7 kg of plastisol 0.75 l. */
  @Test
  void moreGrainsThanALiquidCanHoldAreRefused() {
    var e = assertThrows(IllegalArgumentException.class, () -> mix("hollow-spheres", 0.3));

    assertTrue(e.getMessage().startsWith("30 % of the mass is 62 % of the volume"), e.getMessage());
  }
}

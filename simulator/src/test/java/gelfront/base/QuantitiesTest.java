// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Factors by definition: inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s2 (BIPM,
 * The International System of Units, 2019; NIST SP 811, 2008, appendix B), US fluid ounce 1/128 of
 * 231 cubic inches.
 */
final class QuantitiesTest {
  private static final double INCH = 0.0254;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LENGTH | 12 mm | 0.012",
        "LENGTH | 12mm | 0.012",
        "LENGTH | +1.2e1 mm | 0.012",
        "LENGTH | -3 mm | -0.003",
        "LENGTH | .5 cm | 0.005",
        "LENGTH | 5. mm | 0.005",
        "LENGTH | 0.5 in | 0.0127",
        "LENGTH | 1/2 in | 0.0127",
        "LENGTH | 1 1/2 in | 0.0381",
        "LENGTH | 1-1/2 in | 0.0381",
        "LENGTH | -1 1/2 in | -0.0381",
        "LENGTH | 3/8\" | 0.009525",
        "LENGTH | 3 / 8 inch | 0.009525",
        "LENGTH | 15 thou | 0.000381",
        "LENGTH | 1 ft | 0.3048",
        "LENGTH | 250 um | 0.00025",
        "LENGTH | 250 \u03bcm | 0.00025",
        "TEMPERATURE | 165 degC | 165",
        "TEMPERATURE | 165 deg C | 165",
        "TEMPERATURE | 165 °C | 165",
        "TEMPERATURE | 165 ºC | 165",
        "TEMPERATURE | 165C | 165",
        "TEMPERATURE | 212 degF | 100",
        "TEMPERATURE | 32 F | 0",
        "TEMPERATURE | -40 °F | -40",
        "TEMPERATURE | 273.15 K | 0",
        "TIME | 1.5 min | 90",
        "TIME | 1/2 min | 30",
        "TIME | 2 h | 7200",
        "PRESSURE | 1 bar | 1e5",
        "PRESSURE | 20 kPa | 2e4",
        "FORCE | 2 kN | 2000",
        "FORCE | 1 kgf | 9.80665",
        "VOLUME | 100 ml | 1e-4",
        "VOLUME | 100 mL | 1e-4",
        "VOLUME | 2 cm^3 | 2e-6",
        "VOLUME | 2 cm³ | 2e-6",
        "ANGLE | 180 deg | 3.141592653589793",
        "DENSITY | 1.03 g/cm3 | 1030",
        "DENSITY | 1030 kg/m^3 | 1030",
        "DENSITY | 1030 kg per m³ | 1030",
        "SPECIFIC_HEAT | 1.9 kJ/(kg K) | 1900",
        "SPECIFIC_HEAT | 1900 J/kg·K | 1900",
        "SPECIFIC_HEAT | 1900 J/kg/K | 1900",
        "CONDUCTIVITY | 0.145 W/(m·K) | 0.145",
        "CONDUCTIVITY | 0.145 W/m K | 0.145",
        "FILM | 10 W/(m² K) | 10",
        "FILM | 10 W/m^2K | 10",
        "SPECIFIC_ENERGY | 1.3 kJ/kg | 1300",
        "EXPANSION | 7e-4 1/K | 7e-4",
        "EXPANSION | 7e-4/K | 7e-4",
        "EXPANSION | 7e-4 per K | 7e-4",
        "STIFFNESS | 50 kPa | 5e4",
        "VISCOSITY | 1500 mPa·s | 1.5",
        "VISCOSITY | 1500 cP | 1.5",
        "SHARE | 5 % | 0.05",
        "SHARE | 5% | 0.05",
        "SHARE | 1/2 percent | 0.005",
      },
      quoteCharacter = '~')
  void readsWhatPeopleWrite(Dimension d, String text, double si) {
    assertEquals(si, Quantities.parse(text, d), 1e-12 * Math.max(1e-6, Math.abs(si)) + 1e-13);
  }

  @Test
  void derivedFactorsFollowFromTheirDefinitions() {
    double pound = 0.45359237 * 9.80665;

    Check.of(
            "inch, pound, psi, fluid ounce, kgf, in3",
            "SI brochure 2019; NIST SP 811, 2008, app. B")
        .expected(INCH)
        .got(Quantities.parse("1 in", Dimension.LENGTH))
        .expected(pound)
        .got(Quantities.parse("1 lbf", Dimension.FORCE))
        .expected(pound / (INCH * INCH))
        .got(Quantities.parse("1 psi", Dimension.PRESSURE))
        .expected(231 * Math.pow(INCH, 3) / 128)
        .got(Quantities.parse("1 fl oz", Dimension.VOLUME))
        .expected(9.80665)
        .got(Quantities.parse("1 kgf", Dimension.FORCE))
        .expected(Math.pow(INCH, 3))
        .got(Quantities.parse("1 in3", Dimension.VOLUME))
        .within(2e-13);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3,5 mm | decimal comma",
        "1.000,5 mm | decimal comma",
        ",5 mm | decimal comma",
        "1,200 mm | decimal comma",
        "12 | has no unit",
        "1/2 | has no unit",
        "'' | is not a quantity",
        "mm | is not a quantity",
        "wide | is not a quantity",
        "- 3 mm | is not a quantity",
        "NaN mm | is not a quantity",
        "inf mm | is not a quantity",
        "Infinity mm | is not a quantity",
        "0x10 mm | is not a unit of length",
        "1e400 mm | not a finite value",
        "-1e400 mm | not a finite value",
        "1/0 in | not a finite value",
        "0/0 in | not a finite value",
        "12 mil | is not a unit of length; known: mm, cm",
        "12 Mm | is not a unit of length",
        "12 degC | is not a unit of length",
        "12 mm 5 | is not a unit of length",
        "1 2 3/4 in | is not a unit of length",
      })
  void refusesAndSaysWhy(String text, String why) {
    var e =
        assertThrows(
            IllegalArgumentException.class, () -> Quantities.parse(text, Dimension.LENGTH));

    assertTrue(e.getMessage().contains(why), e.getMessage());
    assertTrue(e.getMessage().contains("\"" + text), e.getMessage());
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void everyExampleIsOfItsDimensionAndEveryUnitIsKnown(Dimension d) {
    assertTrue(Double.isFinite(Quantities.parse(d.example(), d)));
    for (String unit : d.unitList()) {
      assertTrue(d.knows(unit), unit);
      // proportional, but for the zeros of the temperature scales
      double one = d.toSi(1, unit) - d.toSi(0, unit);
      assertEquals(7 * one, d.toSi(7, unit) - d.toSi(0, unit), 1e-9 * one, unit);
      assertTrue(one > 0, unit);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "fr-FR"})
  void theMachinesLanguageChangesNothing(String language) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));

      assertEquals(0.0125, Quantities.parse("12.5 mm", Dimension.LENGTH), 1e-15);
      assertEquals("12.5 mm", Quantities.mm(0.0125));
      assertEquals("1234 mm", Quantities.mm(1.234));
      assertEquals("0.25 ml", Quantities.ml(0.25e-6));
      assertEquals("0.0007 ml", Quantities.ml(0.0007e-6));
      assertEquals("0.00 ml", Quantities.ml(0));
      var e =
          assertThrows(
              IllegalArgumentException.class,
              () -> Quantities.parse("1 x", Dimension.SPECIFIC_HEAT));
      assertTrue(e.getMessage().contains("a unit of specific heat"), e.getMessage());
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @CsvSource({"0.0003,0.30 mm", "0.003,3.0 mm", "-0.003,-3.0 mm", "0.3,300 mm"})
  void millimetresForPeople(double metres, String shown) {
    assertEquals(shown, Quantities.mm(metres));
  }

  @Test
  void aPlaceOnAnAxisIsNotBelowZero() {
    assertEquals("0.0", Quantities.say("%.1f", Quantities.tenths(-2e-5)));
    assertEquals("-0.1", Quantities.say("%.1f", Quantities.tenths(-8e-5)));
  }

  @Test
  void nothingIsNeverToldBelowZero() {
    assertEquals("y 0, z -1 mm", Quantities.say("y %.0f, z %.0f mm", -0.3, -0.5));
    assertEquals("100 % of -0: +0.00|    0.0|-0.1", say("-0", -1e-3, -0.04, -0.06));
    assertEquals("0.000000, 0", Quantities.say("%f, %.0f", -1e-7, -0.0));
  }

  private static String say(Object... values) {
    return Quantities.say("100 %% of %s: %+.2f|%7.1f|%.1f", values);
  }
}

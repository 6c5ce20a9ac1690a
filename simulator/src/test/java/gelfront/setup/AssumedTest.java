// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.material.Plastisol;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What is filled in is told, as it is used. */
final class AssumedTest {
  private static Map<String, Statement> assumed(String text) {
    Map<String, Statement> byName = new TreeMap<>();
    for (Statement s : Cases.load(text).assumed()) {
      assertEquals(null, byName.put(s.name(), s), () -> s.name() + " is told twice");
      assertFalse(s.source().isBlank(), s::name);
    }
    return byName;
  }

  @Test
  void everythingThatIsFilledInIsTold() {
    assertEquals(
        List.of(
            "block: air",
            "block: air film",
            "block: contact",
            "block: contact shrunk off",
            "block: material",
            "block: start",
            "gate: shape",
            "plastisol: conductivity",
            "plastisol: density cold",
            "plastisol: density hot",
            "plastisol: expansion gelled",
            "plastisol: expansion hot",
            "plastisol: firm",
            "plastisol: gel end",
            "plastisol: gel start",
            "plastisol: latent heat",
            "plastisol: no flow",
            "plastisol: specific heat",
            "plastisol: viscosity 165",
            "plastisol: youngs modulus",
            "shot: fill time",
            "shot: hold pressure",
            "shot: hold time",
            "sprue: mouth diameter",
            "up",
            "visible dent"),
        List.copyOf(assumed(Cases.SOUND).keySet()));
  }

  @Test
  void whatIsStatedIsNotAssumed() {
    String text =
        Cases.with("block", "air = \"20 degC\"", "contact = \"2000 W/m2K\"")
            .replace("[shot]", "firm = \"55 degC\"\n[shot]\nhold_time = \"9 s\"");
    Map<String, Statement> all = assumed(text);

    for (String name :
        List.of("block: air", "block: contact", "plastisol: firm", "shot: hold time")) {
      assertFalse(all.containsKey(name), name);
    }
    assertTrue(Cases.load(text).given().contains(new Statement("block: air", "20 degC", "")));
  }

  @Test
  void pausesOfARowAreAssumedWhereTheyArentStated() {
    Map<String, Statement> all = assumed(Cases.with("series", "shots = 3"));
    assertEquals("60 s", all.get("series: idle").value());
    assertEquals("60 s", all.get("series: open").value());

    all = assumed(Cases.with("series", "idle = \"45 s\""));
    assertFalse(all.containsKey("series: idle"));
    assertEquals("45 s", all.get("series: open").value(), "open all the time between");
    all = assumed(Cases.with("series", "idle = \"45 s\"", "open = \"30 s\""));
    assertFalse(all.containsKey("series: open"));
  }

  @Test
  void valuesAreToldWithRangeAndSource() {
    Map<String, Statement> all = assumed(Cases.SOUND);

    assertEquals(
        new Statement(
            "plastisol: no flow", "125 °C (100 °C to 150 °C)", "E: the least known value"),
        all.get("plastisol: no flow"));
    assertEquals(
        new Statement("block: contact", "2500 W/m2 K (1000 to 10000)", "S28, C"),
        all.get("block: contact"));
    assertEquals("135 °C (110 °C to 160 °C)", all.get("plastisol: gel start").value());
    assertEquals("1.3 kJ/kg (0.0 kJ/kg to 5.0 kJ/kg)", all.get("plastisol: latent heat").value());
    assertEquals("50 kPa (10 kPa to 300 kPa)", all.get("plastisol: youngs modulus").value());
    assertEquals(
        "7.5e-4 per K (6.5e-4 per K to 9.0e-4 per K)", all.get("plastisol: expansion hot").value());
  }

  @Test
  void densitiesMayBeAlike() {
    String text = Cases.with("plastisol", "density_hot = \"1030 kg/m3\"");

    assertEquals(1030, Cases.read(text).plastisol().densityHot());
  }

  @Test
  void aStatedNoFlowMovesTheGelRangeAndTheListSaysSo() {
    String text = Cases.with("plastisol", "no_flow = \"140 degC\"");
    Plastisol p = Cases.read(text).plastisol();
    Map<String, Statement> all = assumed(text);

    assertEquals(150, p.gelStart());
    assertEquals(130, p.gelEnd());
    assertEquals("150 °C (125 °C to 175 °C)", all.get("plastisol: gel start").value());
    assertEquals("130 °C (105 °C to 155 °C)", all.get("plastisol: gel end").value());
    assertTrue(all.get("plastisol: gel end").source().endsWith("the stated no-flow temperature"));
  }

  @Test
  void aStatedGelRangeStays() {
    Plastisol p =
        Cases.read(Cases.with("plastisol", "no_flow = \"140 degC\"", "gel_start = \"144 degC\""))
            .plastisol();

    assertEquals(144, p.gelStart());
    assertEquals(130, p.gelEnd());
  }

  @Test
  void aFillerIsToldWithItsOwnValuesAndThoseOfTheMixture() {
    String text = Cases.with("plastisol", "filler = \"salt\"", "filler_share = \"10 %\"");
    Plastisol p = Cases.read(text).plastisol();
    Map<String, Statement> all = assumed(text);

    assertEquals("soft with salt", p.name());
    assertEquals(
        new Statement("filler: density", "2165 kg/m3 (2160 kg/m3 to 2170 kg/m3)", "M"),
        all.get("filler: density"));
    // 1 / (0.9 / 935 + 0.1 / 2165) and 1 / (0.9 / 1030 + 0.1 / 2165)
    assertEquals("991 kg/m3", all.get("mixture: density hot").value());
    assertEquals("1087 kg/m3", all.get("mixture: density cold").value());
    assertEquals("1796 J/kg K", all.get("mixture: specific heat").value());
    assertTrue(all.get("mixture: conductivity").source().contains("5 % of the volume filler"));
  }

  @Test
  void gradesDiffer() {
    Plastisol soft = Cases.read(Cases.SOUND).plastisol();
    Plastisol firm = Cases.read(Cases.SOUND.replace("\"soft\"", "\"firm\"")).plastisol();

    assertTrue(firm.youngsModulus() > soft.youngsModulus());
  }
}

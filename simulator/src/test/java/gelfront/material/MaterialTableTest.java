// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class MaterialTableTest {
  private static final Pattern MARK = Pattern.compile("\\b(S[0-9]+|[ECMP])\\b");

  private static final MaterialTable TABLE = MaterialTable.builtIn();

  private static final String BRASS =
      """
      # a comment
      [mould.brass]
      about = "brass"
      conductivity = [105, 115, 125, "S5"]
      density = [8400, 8450, 8500, "S5"]
      specific_heat = [380, 390, 390, "S5"]
      """;

  private static String text() throws IOException {
    try (InputStream in = MaterialTable.class.getResourceAsStream("materials.toml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Marks in the head of the file, "# S26 public data page". */
  private static Set<String> explained(String text) {
    Set<String> marks = new TreeSet<>();
    Matcher m = Pattern.compile("(?m)^#   (\\S+)  +\\S.*$").matcher(text);
    while (m.find()) {
      marks.add(m.group(1));
    }
    return marks;
  }

  @Test
  void everyMarkIsExplainedAndEveryExplanationUsed() throws IOException {
    Set<String> used = new TreeSet<>();
    for (String kind : List.of("plastisol", "filler", "mould", "film")) {
      for (String name : TABLE.names(kind)) {
        TABLE
            .entry(kind, name)
            .forEach(
                (key, v) -> {
                  Set<String> marks = new TreeSet<>();
                  Matcher m = MARK.matcher(v.source());
                  while (m.find()) {
                    marks.add(m.group());
                  }
                  assertTrue(!marks.isEmpty(), () -> name + " " + key + ": " + v.source());
                  used.addAll(marks);
                });
      }
    }

    assertEquals(explained(text()), used);
  }

  /** The values the project starts from, low / typical / high, with their marks. */
  @ParameterizedTest
  @CsvSource({
    "density_cold,960,1030,1070,'S4, S5'",
    "density_hot,900,935,970,E",
    "specific_heat,1600,1900,2300,'S7, M'",
    "conductivity,0.12,0.145,0.17,'S5, S7, S8'",
    "expansion_hot,6.5e-4,7.5e-4,9e-4,M",
    "expansion_gelled,6e-4,7e-4,8e-4,'S7, S11, E'",
    "viscosity_165,0.3,1.5,10,E",
    "no_flow,100,125,150,E: the least known value",
    "firm,45,60,80,E",
    "latent_heat,0,1300,5000,'S1, S21'",
    "youngs_modulus,10e3,50e3,300e3,S3"
  })
  void softPlastisol(String key, double low, double typical, double high, String source) {
    assertEquals(new Ranged(low, typical, high, source), TABLE.entry("plastisol", "soft").get(key));
  }

  @ParameterizedTest
  @CsvSource({
    "aluminium-6061,167,2700,896",
    "aluminium-7075,130,2810,915",
    "aluminium-cast,160,2800,880",
    "carbon-steel,50,7850,480",
    "stainless-steel,16.5,7900,480",
    "brass,115,8450,390",
    "printed-resin,0.20,1170,1350",
    "aluminium-filled-epoxy,1.0,1650,1100",
    "silicone,0.30,1180,1350",
    "plaster,0.4,1050,1000",
    "mdf,0.12,750,1650"
  })
  void mouldMaterials(String name, double k, double rho, double c) {
    assertEquals(new MouldMaterial(name, k, rho, c), TABLE.mould(name));
    assertEquals(rho * c, TABLE.mould(name).volumetricHeat());
  }

  /**
   * Contraction from 165 to 25 °C 7 to 11 % by volume; diffusivity of the soft grade, estimated by
   * itself, 7.6e-8 m2/s, the harder ones near it, well inside its range of 6e-8 to 9.5e-8.
   */
  @ParameterizedTest
  @ValueSource(strings = {"soft", "medium", "firm"})
  void gradesAreOfOnePiece(String grade) {
    Plastisol p = TABLE.plastisol(grade);
    double alpha = p.conductivity() / (0.5 * (p.densityCold() + p.densityHot()) * p.specificHeat());
    double byDensity = Math.log(p.densityCold() / p.densityHot());
    double byExpansion =
        p.expansionHot() * (165 - p.noFlow()) + p.expansionGelled() * (p.noFlow() - 25);

    assertEquals(7.6e-8, alpha, grade.equals("soft") ? 0.2e-8 : 0.6e-8);
    assertTrue(byDensity > 0.07 && byDensity < 0.11, () -> "by density " + byDensity);
    assertTrue(byExpansion > 0.07 && byExpansion < 0.11, () -> "by expansion " + byExpansion);
    assertEquals(byDensity, byExpansion, 0.01, "both say how much it shrinks");
    assertEquals(p.noFlow() + 10, p.gelStart());
    assertEquals(p.noFlow() - 10, p.gelEnd());
  }

  @Test
  void harderGradesAreDenserStifferThickerAndSetHotter() {
    List<String> grades = List.of("soft", "medium", "firm");
    for (int i = 1; i < grades.size(); i++) {
      Plastisol a = TABLE.plastisol(grades.get(i - 1));
      Plastisol b = TABLE.plastisol(grades.get(i));
      assertTrue(b.densityCold() > a.densityCold() && b.densityHot() > a.densityHot());
      assertTrue(b.youngsModulus() > a.youngsModulus());
      assertTrue(b.viscosityAt165() > a.viscosityAt165());
      assertTrue(b.noFlow() > a.noFlow() && b.firm() > a.firm());
    }
  }

  @Test
  void surfaces() {
    assertEquals(new Ranged(1000, 2500, 10000, "S28, C"), TABLE.film("contact"));
    assertEquals(new Ranged(100, 500, 1000, "S28, C"), TABLE.film("contact-shrunk-off"));
    assertEquals(new Ranged(5, 9, 15, "C, M"), TABLE.film("still-air"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plastisols | soft | no kind of material \"plastisols\"; known: filler, film, mould, plastisol",
        "mould | aluminum-6061 | no mould named aluminium-6061X",
      })
  void unknownNamesAreToldWithTheKnown(String kind, String name, String why) {
    var e = assertThrows(IllegalArgumentException.class, () -> TABLE.entry(kind, name));

    String wanted = why.replace("aluminium-6061X", name + "; did you mean \"aluminium-6061\"?");
    assertEquals(wanted, e.getMessage());
  }

  @Test
  void anUnknownKindHasNoNames() {
    assertThrows(IllegalArgumentException.class, () -> TABLE.names("fillers"));
  }

  /** What is exchanged in a sound table, and the words that tell it, with line and column. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[mould.brass] | [mold.brass] | t.toml:2:1: no kind of material \"mold\"; did you mean",
        "[mould.brass] | [mould] | t.toml:3:1: about must be a table",
        "about = \"brass\" | # none | t.toml:2:1: brass needs about",
        "conductivity = | conductance = | t.toml:4:1: unknown property \"conductance\"; did you mean",
        "density = [8400, 8450, 8500, \"S5\"] | # none | t.toml:2:1: brass needs density = [low",
        "[8400, 8450, 8500, \"S5\"] | 8450 | t.toml:5:1: density must be [low, typical, high",
        "[8400, 8450, 8500, \"S5\"] | [8400, 8450, 8500] | t.toml:5:1: density must be [low",
        "8500, \"S5\"] | 8500, \" \"] | t.toml:5:1: density must be [low",
        "8500, \"S5\"] | \"8500\", \"S5\"] | t.toml:5:1: density must be [low",
        "8400, 8450 | 8450, 8400 | t.toml:5:1: density: low, typical, high must be finite and rise",
        "8500, \"S5\"] | inf, \"S5\"] | t.toml:5:1: density: low, typical, high must be finite",
        "8450, | nan, | t.toml:5:1: density: low, typical, high must be finite",
        "density = | conductivity = | t.toml:5:1: ",
        "8450, | 8450; | t.toml:5:22: ",
      },
      quoteCharacter = '~')
  void aTableWithAMistakeSaysWhere(String sound, String broken, String told) {
    assertEquals(115, MaterialTable.parse("t.toml", BRASS).mould("brass").conductivity());
    String text = BRASS.replace(sound, broken);

    var e = assertThrows(IllegalArgumentException.class, () -> MaterialTable.parse("t.toml", text));

    assertTrue(e.getMessage().startsWith(told), e.getMessage());
  }

  @Test
  void entriesCantBeChangedFromOutside() {
    Map<String, Ranged> e = TABLE.entry("mould", "brass");

    assertThrows(UnsupportedOperationException.class, e::clear);
  }
}

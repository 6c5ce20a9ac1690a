// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every key that is listed is read: another value makes another case. */
final class CaseKeysTest {
  /** All that a declared feed allows, each key once. */
  private static final String DECLARED =
      """
      name = "Pea" #> "Bean"
      units = { length = "mm" } #> { length = "in" }
      up = [0, 0, 1] #> [0, 1, 0]
      clamping_force = "2 kN" #> "3 kN"
      visible_dent = "0.2 mm" #> "0.3 mm"
      [[part.caliper]]
      distance = "0 mm" #> "1 mm"
      width = "3 mm" #> "4 mm"
      height = "4 mm" #> "5 mm"
      [[part.caliper]]
      distance = "20 mm"
      width = "8 mm"
      height = "9 mm"
      [[part.copy]]
      shift = [0, 20, 0] #> [0, 30, 0]
      turn = "90 deg" #> "180 deg"
      axis = [0, 1, 0] #> [1, 0, 0]
      about = [1, 0, 0] #> [2, 0, 0]
      [[part.copy]]
      mirror = [1, 0, 0] #> [0, 1, 0]
      [gate]
      at = [0, "0 mm", "0 mm"] #> [0.1, "0 mm", "0 mm"]
      direction = [-1, 0, 0] #> [0, 1, 0]
      shape = "rectangular" #> "round"
      size = 0.4 #> 0.5
      height = "2 mm" #> "3 mm"
      land = "3 mm" #> "4 mm"
      [runner]
      shape = "rectangular" #> "half-round"
      size = "4 mm" #> "5 mm"
      height = "4 mm" #> "5 mm"
      length = "9 mm" #> "10 mm"
      [reservoir]
      diameter = "9 mm" #> "10 mm"
      length = "9 mm" #> "10 mm"
      [[another_gate]]
      at = [0, "0 mm", "0 mm"] #> [0.1, "0 mm", "0 mm"]
      direction = [0, 1, 0] #> [0, -1, 0]
      shape = "rectangular" #> "half-round"
      size = "2 mm" #> "3 mm"
      height = "1 mm" #> "2 mm"
      land = "2 mm" #> "3 mm"
      runner = "6 mm" #> "5 mm"
      way = [[0, 1, 0], [1, 1, 0]] #> [0, 1, 0]
      [sprue]
      at = [0, 9, 0] #> [0, 8, 0]
      diameter = "8 mm" #> "9 mm"
      mouth_diameter = "10 mm" #> "11 mm"
      length = "28 mm" #> "29 mm"
      direction = [-1, 0, 0] #> [0, 0, 1]
      [extender]
      bore = "9 mm" #> "8 mm"
      height = "20 mm" #> "21 mm"
      wall = "2 mm" #> "3 mm"
      material = "silicone" #> "mdf"
      start = "60 degC" #> "61 degC"
      air_film = "9 W/m2K" #> "10 W/m2K"
      [block]
      material = "brass" #> "mdf"
      wall = "15 mm" #> "16 mm"
      start = "30 degC" #> "31 degC"
      air = "23 degC" #> "24 degC"
      air_film = "9 W/m2K" #> "10 W/m2K"
      contact = "2500 W/m2K" #> "2501 W/m2K"
      contact_shrunk_off = "400 W/m2K" #> "401 W/m2K"
      [[block.warm_spot]]
      centre = [0, 0, 0] #> [1, 0, 0]
      radius = "3 mm" #> "4 mm"
      temperature = "40 degC" #> "41 degC"
      [[block.insert]]
      centre = [0, 0, 0] #> [1, 0, 0]
      radius = "3 mm" #> "4 mm"
      material = "brass" #> "mdf"
      [[block.face]]
      side = "-x" #> "bottom"
      film = "500 W/m2K" #> "501 W/m2K"
      temperature = "15 degC" #> "16 degC"
      [[block.face]]
      side = "top"
      cooled_by = "fan" #> "water"
      [[block.channel]]
      from = ["-20 mm", "0 mm", "18 mm"] #> ["-21 mm", "0 mm", "18 mm"]
      to = ["80 mm", "0 mm", "18 mm"] #> ["81 mm", "0 mm", "18 mm"]
      diameter = "8 mm" #> "10 mm"
      film = "3000 W/m2K" #> "3001 W/m2K"
      temperature = "15 degC" #> "16 degC"
      [plastisol]
      grade = "soft" #> "medium"
      filler = "salt" #> "glitter"
      filler_share = "5 %" #> "6 %"
      density_hot = "930 kg/m3" #> "931 kg/m3"
      density_cold = "1030 kg/m3" #> "1031 kg/m3"
      specific_heat = "1900 J/kgK" #> "1901 J/kgK"
      conductivity = "0.145 W/mK" #> "0.146 W/mK"
      latent_heat = "1.3 kJ/kg" #> "1.4 kJ/kg"
      gel_start = "135 degC" #> "136 degC"
      gel_end = "115 degC" #> "116 degC"
      no_flow = "125 degC" #> "126 degC"
      firm = "60 degC" #> "61 degC"
      expansion_hot = "7.5e-4 1/K" #> "7.6e-4 1/K"
      expansion_gelled = "7e-4 1/K" #> "7.1e-4 1/K"
      youngs_modulus = "50 kPa" #> "51 kPa"
      [shot]
      temperature = "165 degC" #> "166 degC"
      fill_time = "2 s" #> "3 s"
      hold_time = "5 s" #> "6 s"
      hold_pressure = "20 kPa" #> "21 kPa"
      top_up = ["20 s"] #> ["20 s", "30 s"]
      injector = "100 ml" #> "101 ml"
      open_at = "90 s" #> "91 s"
      [fill]
      on = true #> false
      most_pressure = "150 kPa" #> "160 kPa"
      parting_gap = "20 um" #> "21 um"
      [[fill.vent]]
      at = [0, 0, 0] #> [1, 0, 0]
      width = "5 mm" #> "6 mm"
      depth = "0.03 mm" #> "0.04 mm"
      length = "9 mm" #> "10 mm"
      [numerics]
      level = "quick" #> "fine"
      voxel = "0.5 mm" #> "0.6 mm"
      whole = false #> true
      [[filing]]
      at = [0, 0, 0] #> [1, 0, 0]
      reach = "2 mm" #> "3 mm"
      depth = "0.5 mm" #> "0.6 mm"
      [limits]
      gate_least = "0.4 mm" #> "0.5 mm"
      gate_widest = "6 mm" #> "7 mm"
      sprue_widest = "14 mm" #> "15 mm"
      [[limits.gate_place]]
      at = ["20 mm", "0 mm", "0 mm"] #> ["19 mm", "0 mm", "0 mm"]
      direction = [1, 0, 0] #> [0, 1, 0]
      """;

  /** Keys that exclude some of those above. */
  private static final String OTHERS =
      """
      materials = "own.toml" #> "others.toml"
      [part]
      mesh = "a.stl" #> ["a.stl", "b.stl"]
      unit = "mm" #> "inch"
      [feed]
      in_mesh = true #> false
      gate = ["0 mm", "0 mm", "0 mm"] #> ["1 mm", "0 mm", "0 mm"]
      mouth = ["9 mm", "0 mm", "0 mm"] #> ["8 mm", "0 mm", "0 mm"]
      [block]
      box_min = ["0 mm", "0 mm", "0 mm"] #> ["1 mm", "0 mm", "0 mm"]
      box_max = ["9 mm", "9 mm", "9 mm"] #> ["8 mm", "9 mm", "9 mm"]
      mesh = "a.stl" #> ["a.stl", "b.stl"]
      unit = "mm" #> "inch"
      [[block.warm_spot]]
      box_min = ["0 mm", "0 mm", "0 mm"] #> ["1 mm", "0 mm", "0 mm"]
      box_max = ["9 mm", "9 mm", "9 mm"] #> ["8 mm", "9 mm", "9 mm"]
      temperature = "40 degC"
      [[block.insert]]
      box_min = ["0 mm", "0 mm", "0 mm"] #> ["1 mm", "0 mm", "0 mm"]
      box_max = ["9 mm", "9 mm", "9 mm"] #> ["8 mm", "9 mm", "9 mm"]
      material = "brass"
      [plastisol]
      grade = "mine"
      viscosity_165 = "1.5 Pas" #> "1.6 Pas"
      [shot]
      temperature = "165 degC"
      [fill]
      pressure = "50 kPa" #> "60 kPa"
      [series]
      shots = 3 #> 4
      idle = "40 s" #> "50 s"
      cycle = "300 s" #> "310 s"
      open = "20 s" #> "30 s"
      """;

  private static final String TAPERED =
      """
      cavities = 2 #> 3
      [part]
      mesh = "a.stl"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "3 mm"
      land = "3 mm"
      [sprue]
      diameter = "8 mm"
      length = "28 mm"
      taper = "4 deg" #> "5 deg"
      [[plastisol.viscosity]]
      temperature = "165 degC" #> "166 degC"
      value = "1.5 Pas" #> "1.6 Pas"
      [[plastisol.viscosity]]
      temperature = "125 degC"
      value = "4e4 Pas"
      [shot]
      temperature = "165 degC"
      """;

  @TempDir private static Path folder;

  /** Cases as they are, by their text: read once. */
  private static final Map<String, LoadedCase> AS_THEY_ARE = new HashMap<>();

  private static List<String> texts() {
    return List.of(DECLARED, OTHERS, TAPERED);
  }

  /** Without the other values; the one of line {@code changed} exchanged. */
  private static String text(String text, int changed) {
    List<String> lines = new ArrayList<>();
    List<String> all = text.lines().toList();
    for (int i = 0; i < all.size(); i++) {
      String[] halves = all.get(i).split(" #> ", -1);
      String key = halves[0].replaceFirst("=.*", "= ");
      lines.add(i == changed ? key + halves[1] : halves[0]);
    }
    return String.join("\n", lines) + "\n";
  }

  /** Table head to keys that are given another value. */
  private static Map<String, Set<String>> tried() {
    Map<String, Set<String>> tried = new TreeMap<>();
    for (String text : texts()) {
      String table = "";
      for (String line : text.lines().toList()) {
        table = line.startsWith("[") ? line : table;
        if (line.contains("#>")) {
          tried.computeIfAbsent(table, t -> new TreeSet<>()).add(line.replaceFirst(" =.*", ""));
        }
      }
    }
    return tried;
  }

  @Test
  void everyListedKeyIsTried() {
    Map<String, Set<String>> listed = new TreeMap<>();
    for (CaseKeys.Key k : CaseKeys.all()) {
      listed.computeIfAbsent(k.table(), t -> new TreeSet<>()).add(k.name());
    }
    listed
        .get("[part]")
        .removeAll(List.of("caliper", "copy")); // these hold tables, which are tried
    listed.get("[block]").removeAll(List.of("warm_spot", "insert", "face", "channel"));
    listed.get("[fill]").remove("vent");
    listed.get("[plastisol]").remove("viscosity");
    listed.get("[limits]").remove("gate_place");

    assertEquals(listed, tried());
  }

  static List<Arguments> keys() {
    List<Arguments> all = new ArrayList<>();
    for (String text : texts()) {
      List<String> lines = text.lines().toList();
      for (int i = 0; i < lines.size(); i++) {
        if (lines.get(i).contains("#>")) {
          all.add(Arguments.of(lines.get(i), text, i));
        }
      }
    }
    return all;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("keys")
  void anotherValueMakesAnotherCaseOrAnError(String line, String text, int at) throws Exception {
    Files.writeString(folder.resolve("a.stl"), "");
    Files.writeString(folder.resolve("b.stl"), "");
    Files.writeString(folder.resolve("own.toml"), OwnMaterials.of(0.15));
    Files.writeString(folder.resolve("others.toml"), OwnMaterials.of(0.16));
    LoadedCase as =
        AS_THEY_ARE.computeIfAbsent(text, t -> CaseFile.parse("bait.toml", text(t, -1), folder));

    LoadedCase other;
    try {
      other = CaseFile.parse("bait.toml", text(text, at), folder);
    } catch (CaseException e) {
      assertTrue(
          line.startsWith("shape") || line.startsWith("in_mesh") || line.startsWith("units"),
          () -> line + ": " + e.getMessage());
      return;
    }

    assertNotEquals(as.setup(), other.setup());
    if (!line.startsWith("units")) {
      assertNotEquals(as.given(), other.given(), "the report lists it");
    }
  }

  @Test
  void theTableForPeopleNamesEachKeyOnce() {
    List<String> rows = CaseKeys.markdown().lines().toList();

    assertEquals(CaseKeys.all().size() + 2, rows.size());
    assertEquals(rows.size(), rows.stream().distinct().count());
    assertTrue(rows.stream().allMatch(r -> r.split("\\|", -1).length == 5), "three cells a row");
    assertTrue(rows.contains("| `[gate]` | `land` | length of the narrow piece |"), "" + rows);
    assertTrue(rows.contains("| `[[filing]]` | `depth` | metal taken off |"), "" + rows);
    assertTrue(rows.stream().noneMatch(r -> r.contains("||") || r.contains("|  |")), "no meaning");
  }

  @Test
  void unknownTablesAreNotAsked() {
    assertEquals(List.of("level", "voxel", "whole"), CaseKeys.of("numerics"));
    assertTrue(CaseKeys.of("").contains("filing"));
  }
}

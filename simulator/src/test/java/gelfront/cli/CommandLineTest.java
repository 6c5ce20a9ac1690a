// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.result.ResultFolder;
import gelfront.result.SyntheticRun;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program as its users see it: arguments in; words, files and an exit code out. */
final class CommandLineTest {
  /** Small, poured at its thick end, calculated in well under a second. */
  static final String CASE =
      """
      name = "Pea"
      [[part.caliper]]
      distance = "0 mm"
      width = "3 mm"
      height = "3 mm"
      [[part.caliper]]
      distance = "8 mm"
      width = "6 mm"
      height = "6 mm"
      [[part.caliper]]
      distance = "14 mm"
      width = "3 mm"
      height = "3 mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "2.5 mm"
      land = "2 mm"
      [sprue]
      diameter = "5 mm"
      length = "8 mm"
      [block]
      wall = "6 mm"
      [shot]
      temperature = "165 degC"
      [numerics]
      level = "quick"
      """;

  @TempDir private Path folder;
  private ByteArrayOutputStream out;
  private ByteArrayOutputStream err;
  private Path caseFile;

  @BeforeEach
  void writeCase() throws IOException {
    caseFile = Files.writeString(folder.resolve("pea.toml"), CASE);
  }

  private int run(Object... args) {
    out = new ByteArrayOutputStream();
    err = new ByteArrayOutputStream();
    return Main.run(strings(args), Program.print(out), Program.print(err));
  }

  private static String[] strings(Object... args) {
    return Stream.of(args).map(String::valueOf).toArray(String[]::new);
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out.toByteArray());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> list = Files.list(folder)) {
      return list.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  private void assertOneLineOfError(String... words) {
    assertEquals(1, err().lines().count(), err());
    for (String word : words) {
      assertTrue(err().contains(word), () -> "no " + word + " in " + err());
    }
    assertFalse(err().contains("Exception"), err());
    assertEquals("", out());
  }

  @Test
  void checkWritesAResultBesideTheCaseAndEndsWithVerdictAndReport() throws IOException {
    int code = run("check", caseFile);

    assertEquals(0, code, err());
    Path result = folder.resolve("pea-result");
    for (String file :
        List.of("report.html", "findings.json", "pockets.csv", "series.csv", "voxels.vti")) {
      assertTrue(Files.size(result.resolve(file)) > 0, file);
    }
    List<String> lines = out().lines().toList();
    String verdict = ResultFolder.read(result).findings().verdict();
    assertEquals("Pea: " + verdict, lines.get(lines.size() - 2));
    assertEquals("Report: " + result.resolve("report.html"), lines.get(lines.size() - 1));
    assertEquals("", err(), "nobody watches: no progress");
  }

  @Test
  void levelNormalAlsoSaysWhetherTheVerdictHangsOnTheVoxels() throws IOException {
    Files.writeString(caseFile, CASE.replace("quick", "normal"));

    assertEquals(0, run("check", caseFile, "--threads", "1"), err());
    JsonNode n = findings().get("voxel_size");
    assertEquals("normal", n.at("/here/level").asText());
    assertEquals(0.5, n.at("/here/voxel_mm").asDouble(), 0.05);
    assertEquals(0.7, n.at("/coarser/voxel_mm").asDouble(), 0.07);
    assertTrue(out().contains("voxel size"), out());
    String report = Files.readString(folder.resolve("pea-result/report.html"));
    assertTrue(report.contains("<p class=\"voxels\">In voxels of 0.50 mm (normal): "));

    JsonNode alone = quick();
    for (String key : List.of("depth_low_mm", "depth_high_mm")) {
      double beside = n.at("/coarser/" + key).asDouble();
      assertEquals(alone.at("/pockets/0/dents/0/" + key).asDouble(0), beside, key);
    }

    Files.writeString(caseFile, CASE.replace("quick", "normal"));
    assertEquals(0, run("check", caseFile, "--one-level"), err());
    assertFalse(findings().has("voxel_size"));
    assertFalse(out().contains("voxel size"), out());
  }

  private JsonNode findings() throws IOException {
    return new ObjectMapper().readTree(folder.resolve("pea-result/findings.json").toFile());
  }

  private JsonNode quick() throws IOException {
    Files.writeString(caseFile, CASE);
    assertEquals(0, run("check", caseFile), err());
    assertFalse(findings().has("voxel_size"), "quick has nothing coarser");
    return findings();
  }

  @Test
  void theSameCaseLeavesTheSameBytesWhateverTheThreads() throws IOException {
    run("check", caseFile, "-o", folder.resolve("one"), "--threads", "1");
    run("check", caseFile, "-o", folder.resolve("two"), "--threads", "3");

    try (Stream<Path> files = Files.list(folder.resolve("one"))) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString();
        if (!name.equals("provenance.json")) {
          assertEquals(-1, Files.mismatch(file, folder.resolve("two").resolve(name)), name);
        }
      }
    }
  }

  @Test
  void checkAsJsonPrintsWhatFindingsJsonHolds() throws IOException {
    int code = run("check", caseFile, "-o", folder.resolve("r"), "--json");

    assertEquals(0, code, err());
    assertEquals(new ObjectMapper().readTree(folder.resolve("r/findings.json").toFile()), json());
  }

  @Test
  void everyMistakeOfACaseIsToldAndAnEarlierResultStays() throws IOException {
    run("check", caseFile);
    byte[] before = Files.readAllBytes(folder.resolve("pea-result/run.json"));
    Files.writeString(
        caseFile, CASE.replace("\"2.5 mm\"", "2.5").replace("[shot]", "[shot]\nholdtime = 3"));

    int code = run("check", caseFile);

    assertEquals(3, code);
    assertEquals(2, err().lines().count(), err());
    assertTrue(err().lines().allMatch(l -> l.matches("pea\\.toml:\\d+:\\d+: .*")), err());
    assertTrue(err().contains("hold_time"), err());
    assertEquals(
        -1,
        java.util.Arrays.mismatch(
            before, Files.readAllBytes(folder.resolve("pea-result/run.json"))));
    assertEquals(List.of("pea-result", "pea.toml"), names());
  }

  @Test
  void aGateBesideThePartIsRefusedInOneLineWithTheCase() throws IOException {
    Files.writeString(caseFile, CASE.replace("at = [\"0 mm\"", "at = [\"40 mm\""));

    assertEquals(3, run("check", caseFile));

    assertOneLineOfError("pea.toml:15:1: ", "gate");
    assertEquals(List.of("pea.toml"), names());
  }

  @Test
  void aFolderOfSomebodyElseIsNotReplaced() throws IOException {
    Path photos = Files.createDirectory(folder.resolve("photos"));
    Files.writeString(photos.resolve("boat.jpg"), "x");

    assertEquals(4, run("check", caseFile, "-o", photos));

    assertOneLineOfError("photos");
    assertEquals("x", Files.readString(photos.resolve("boat.jpg")));
  }

  @Test
  void aFileInPlaceOfTheFolderIsNotReplaced() throws IOException {
    assertEquals(4, run("check", caseFile, "-o", caseFile));

    assertOneLineOfError("pea.toml");
    assertEquals(CASE, Files.readString(caseFile));
  }

  @Test
  void whoCancelsFindsNothingHalfWritten() throws IOException {
    out = new ByteArrayOutputStream();
    err = new ByteArrayOutputStream();
    int[] asked = {0};
    Console console =
        new Console(Program.print(out), Program.print(err), false, () -> asked[0]++ > 40, false);

    int code = Main.run(strings("check", caseFile), console);

    assertEquals(130, code);
    assertOneLineOfError("cancelled");
    assertEquals(List.of("pea.toml"), names());
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void onATerminalProgressIsDrawnAndWipedUnlessQuiet(boolean quiet) {
    out = new ByteArrayOutputStream();
    err = new ByteArrayOutputStream();
    int[] asked = {0};
    Console console =
        new Console(Program.print(out), Program.print(err), true, () -> asked[0]++ > 40, false);

    Main.run(strings("check", caseFile, quiet ? "--quiet" : "--threads=1"), console);

    String end = "cancelled while cooling" + System.lineSeparator();
    assertTrue(quiet ? err().equals(end) : err().endsWith(" \r" + end), err());
    assertEquals(quiet, !err().contains("cooling ["), err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"empty", "junk", "truncated", "missing"})
  void meshesThatCantBeReadAreRefusedInOneLine(String kind) throws IOException {
    Path mesh = folder.resolve("bad.stl");
    byte[] good = Files.readAllBytes(TestMeshes.write(folder.resolve("good.stl")));
    switch (kind) {
      case "empty" -> Files.write(mesh, new byte[0]);
      case "junk" -> Files.writeString(mesh, "this is no mesh at all\n");
      case "truncated" -> Files.write(mesh, java.util.Arrays.copyOf(good, good.length - 70));
      default -> assertFalse(Files.exists(mesh));
    }

    assertEquals(3, run("inspect", mesh));
    assertOneLineOfError("bad.stl");

    assertEquals(3, run("inspect", mesh, "--json"));
    assertEquals("refused", json().get("verdict").asText());
    assertEquals("", err());
  }

  @Test
  void inspectMeasuresInMillimetres() throws IOException {
    Path mesh = TestMeshes.write(folder.resolve("box.stl"));

    assertEquals(0, run("inspect", mesh, "--json"));

    JsonNode n = json();
    assertEquals("ok", n.get("verdict").asText());
    assertEquals(12, n.get("triangles").asInt());
    assertEquals(1, n.get("shells").asInt());
    assertTrue(n.get("closed").asBoolean());
    assertEquals(20 * 10 * 6, n.get("volume_mm3").asDouble(), 1e-3);
    assertEquals(0, n.get("volume_error_mm3").asDouble());
    assertFalse(n.get("area_is_upper_bound").asBoolean());
    assertEquals(2 * (200 + 120 + 60), n.get("area_mm2").asDouble(), 1e-3);
    assertEquals(20, n.get("box").get("max_mm").get(0).asDouble(), 1e-4);
  }

  /** 35 mm of a cylinder of 10 mm: what both cover counts once. */
  @Test
  void inspectCountsWhatShellsShareOnce() throws IOException {
    Path mesh = TestMeshes.writeOverlapping(folder.resolve("two.stl"));
    double volume = Math.PI * 25 * 35;

    assertEquals(0, run("inspect", mesh, "--json"), err());
    JsonNode n = json();
    assertEquals("warning", n.get("verdict").asText());
    assertEquals(1, n.get("overlaps").asInt());
    assertEquals(volume, n.get("volume_mm3").asDouble(), 0.004 * volume);
    assertTrue(n.get("volume_error_mm3").asDouble() < 0.004 * volume, out());
    assertTrue(n.get("area_is_upper_bound").asBoolean());

    assertEquals(0, run("inspect", mesh), err());
    assertTrue(out().contains("where shells overlap counted once), area at most"), out());
  }

  @Test
  void inspectTakesAUnitAndRefusesUnknownOnes() throws IOException {
    Path mesh = TestMeshes.write(folder.resolve("box.stl"));

    run("inspect", mesh, "--unit", "inch", "--json");
    assertEquals(20 * 25.4, json().get("box").get("max_mm").get(0).asDouble(), 1e-3);

    assertEquals(2, run("inspect", mesh, "--unit", "furlong"));
    assertTrue(err().contains("furlong"), err());
  }

  @Test
  void startWritesACaseThatCanBeCheckedAndNeverOverwrites() throws IOException {
    Path mesh = TestMeshes.write(folder.resolve("box.stl"));

    assertEquals(0, run("start", mesh), err());
    Path written = folder.resolve("box.toml");
    assertTrue(Files.readString(written).contains("mesh = \"box.stl\""));
    Files.writeString(
        written, Files.readString(written).replace("level = \"normal\"", "level = \"quick\""));
    assertEquals(0, run("check", written), err());

    assertEquals(4, run("start", mesh));
    assertOneLineOfError("box.toml");
  }

  @Test
  void keysListsWhatACaseMayHold() throws IOException {
    assertEquals(0, run("keys"), err());
    assertEquals(gelfront.setup.CaseKeys.markdown(), out());
    assertTrue(out().contains("| `[shot]` | `hold_time` |"), out());

    assertEquals(0, run("keys", "--json"), err());
    assertEquals(gelfront.setup.CaseKeys.all().size(), json().size());
    JsonNode first = json().get(0);
    assertEquals("name", first.get("key").asText());
    assertFalse(first.get("meaning").asText().isEmpty());
  }

  @Test
  void probeAnswersEveryPlaceWhereverTheResultStands() throws IOException {
    Path result = folder.resolve("r");
    var stored = SyntheticRun.small();
    ResultFolder.write(result, stored, List.of());
    var centre = stored.findings().pockets().get(0).centre();
    String inside = centre.x() * 1e3 + "," + centre.y() * 1e3 + "," + centre.z() * 1e3;

    assertEquals(0, run("probe", "--at", inside, inside, result, "--json"), err());
    assertEquals(2, json().size());
    JsonNode n = json().get(0);
    assertTrue(n.get("inside").asBoolean());
    assertEquals("part", n.get("region").asText());
    assertEquals(1, n.get("pocket").asInt());
    // the made-up run sets at C R^2 = 99.3 s on the axis, and its cells are 1.5 mm
    assertEquals(99.3, n.get("set_time_s").asDouble(), 3);
    assertEquals(n.get("times_s").size(), n.get("temperatures_degC").size());

    assertEquals(3, run("probe", result, "--at", "-500,0,0", "--json"));
    assertFalse(json().get(0).get("inside").asBoolean());
    assertEquals(2, run("probe", result, "--at", "1,2"));
    assertEquals(3, run("probe", folder, "--at", "1,2,3"));
    assertOneLineOfError(folder.getFileName().toString());
  }

  @Test
  void theDemoDoesNotOverwriteWhatItsUserChanged() throws IOException {
    Path demo = folder.resolve("demo");
    Path changed = new ExampleCase(DemoCommand.EXAMPLE).copyTo(demo);
    Files.writeString(changed, "# mine\n");

    assertEquals(4, run("demo", "-o", demo));

    assertOneLineOfError("two-bulbs-neck.toml");
    assertEquals("# mine\n", Files.readString(changed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "frobnicate", "check", "inspect --unti mm x.stl", "check a b"})
  void wrongUsageEndsWithTwo(String words) {
    assertEquals(2, run((Object[]) (words.isEmpty() ? new String[0] : words.split(" "))));

    assertFalse(err().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "inspect", "demo", "start", "keys", "probe", "timing"})
  void everyCommandHasHelp(String command) {
    assertEquals(0, run(command, "--help"));
    assertTrue(out().startsWith("Usage: gelfront " + command), out());
    assertEquals(0, run("--version"));
    assertTrue(out().startsWith("gelfront "), out());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every command that the README shows is run on small parts, in its order, or stands in one of the
 * lists below, which say why not.
 */
final class ReadmeCommandsTest {
  private static final Path ROOT = Path.of("..");
  private static final Path EXAMPLES = Path.of("../meshes/src/main/resources/gelfront/examples");

  /** Read by the command line with all their options, but not run; and why. */
  private static final Map<String, String> ONLY_READ =
      Map.of(
          "demo", "half a minute; ExampleCasesTest calculates its cases",
          "demo [-o FOLDER]", "as above",
          "check CASE --doubt", "twenty runs; doubt CASE does the same with six",
          "check gate-ladder.toml", "half a minute for five bulbs in one block",
          "calibrate gate-ladder.toml gate-ladder-trials.csv --name mine",
              "minutes; CalibrateCommandTest runs a smaller ladder",
          "calibrate CASE LOG --at x,y,z", "CalibrateCommandTest makes a log that fits",
          "calibrate CASE TRIALS", "as above",
          "remedies CASE", "dozens of runs; AnswerCommandsTest does it",
          "timing", "minutes, while nothing else may run");

  /** Not the command line's; and why. */
  private static final Map<String, String> ELSEWHERE =
      Map.of(
          "mvnw verify", "runs this test",
          "mvnw package", "a build within a build; .ci/run opens what it leaves",
          "mvnw -Papp -DskipTests package", "as above, with a Java",
          "view", "the window needs a display and the module viewer, which tests it",
          "view part-result", "as above",
          "view --gallery FOLDER", "as above",
          "view --timing", "as above",
          "view [MESH, CASE or RESULT]", "as above");

  /** A map by a scheduler: makes sense one after the other only. */
  private static final Set<String> IN_A_ROW =
      Set.of(
          "study jobs", "run", "collect", "study jobs CASE X Y -o FOLDER", "study collect FOLDER");

  /** Alone it says what it wants to know. */
  private static final String ASKS = "symptoms";

  @TempDir private static Path folder;

  @BeforeAll
  static void makeWhatCommandsName() throws IOException {
    TestMeshes.write(folder.resolve("part.stl"));
    TestMeshes.writeHalves(folder.resolve("low.stl"), folder.resolve("high.stl"));
    Path ladder = folder.resolve("gate-ladder.stl");
    Files.copy(EXAMPLES.resolve(ladder.getFileName()), ladder);
    Files.writeString(folder.resolve("case.toml"), CommandLineTest.CASE);
  }

  private static List<String> all() throws IOException {
    String readme = Files.readString(ROOT.resolve("README.md"));
    List<String> all = new ArrayList<>(ReadmeCommands.shown(readme));
    all.addAll(ReadmeCommands.table(readme));
    return all;
  }

  static Stream<String> run() throws IOException {
    Set<String> not = new TreeSet<>(IN_A_ROW);
    not.addAll(ONLY_READ.keySet());
    not.addAll(ELSEWHERE.keySet());
    not.add(ASKS);
    return all().stream().filter(c -> !not.contains(c));
  }

  @ParameterizedTest
  @MethodSource("run")
  void doesWhatItSays(String command) {
    Program.Answer a = Program.run(arguments(command).toArray());

    assertEquals(0, a.code(), a::err);
    assertFalse(a.out().isBlank());
  }

  /** With small files in place of what the README calls CASE, MESH and so on. */
  private static List<String> arguments(String command) {
    List<String> words = ReadmeCommands.words(command);
    List<String> all = new ArrayList<>();
    for (String w : words) {
      switch (w) {
        case "CASE" -> all.add(at("case.toml"));
        case "MESH" -> all.add(at("part.stl"));
        case "RESULT" -> all.add(at("case-result"));
        case "SOLID" -> all.addAll(List.of(at("low.stl"), at("high.stl")));
        case "LOG", "TRIALS" -> all.add(at("log.csv"));
        case "FILE" -> all.add(at(words.get(0).equals("start") ? "first.toml" : "cavity.stl"));
        case "FOLDER" -> all.add(at(words.get(0) + "-folder"));
        case "UNIT" -> all.add("mm");
        case "N" -> all.add("6");
        case "x,y,z" -> all.add(words.get(0).equals("cavity") ? "20,0,0" : "8,0,0");
        default -> all.add(w.matches("[\\w-]+\\.(stl|toml|csv)") ? at(w) : w);
      }
    }
    return all;
  }

  private static String at(String name) {
    return folder.resolve(name).toString();
  }

  static Set<String> onlyRead() {
    return new TreeSet<>(ONLY_READ.keySet());
  }

  @ParameterizedTest
  @MethodSource("onlyRead")
  void isUnderstood(String command) {
    ByteArrayOutputStream nothing = new ByteArrayOutputStream();
    Console console =
        new Console(Program.print(nothing), Program.print(nothing), false, () -> false, false);

    var parsed = Main.commandLine(console).parseArgs(arguments(command).toArray(String[]::new));

    assertTrue(parsed.hasSubcommand());
  }

  @Test
  void theListsNameOnlyWhatTheReadmeShows() throws IOException {
    Set<String> listed = new TreeSet<>(IN_A_ROW);
    listed.addAll(ONLY_READ.keySet());
    listed.addAll(ELSEWHERE.keySet());
    listed.add(ASKS);

    listed.removeAll(all());

    assertEquals(Set.of(), listed);
    assertTrue(run().count() > 15, () -> "too few are run");
  }

  @Test
  void whatIsElsewhereIsThere() throws IOException {
    String window =
        Files.readString(ROOT.resolve("viewer/src/main/java/gelfront/viewer/Arguments.java"));
    String launcher = Files.readString(ROOT.resolve("gelfront"));

    assertTrue(Files.exists(ROOT.resolve("mvnw")));
    assertTrue(Files.readString(ROOT.resolve("viewer/pom.xml")).contains("<id>app</id>"));
    assertTrue(launcher.contains("= view ]"));
    for (String option : List.of("--gallery", "--timing")) {
      assertTrue(window.contains("equals(\"" + option + "\")"), option);
    }
  }

  @Test
  void symptomsAloneSaysWhatItWantsToKnow() {
    Program.Answer a = Program.run(arguments(ASKS).toArray());

    assertEquals(2, a.code());
    assertTrue(a.err().contains("--surface"), a::err);
  }

  @Test
  void aListOfJobsIsRunLineByLineAndCollected() throws IOException {
    String jobs = at("jobs");
    String x = "gate = 2..3 mm/2";
    String y = "hold = 2..4 s/2";

    assertEquals(0, Program.run("study", "jobs", at("case.toml"), x, y, "-o", jobs).code());
    List<String> lines = Files.readAllLines(Path.of(jobs, "jobs.txt"));
    assertEquals(5, lines.size(), "four, and the case as it is");
    for (String line : lines) {
      Object[] words = ReadmeCommands.words(line.replace("'", "\"")).toArray();
      assertEquals(0, Program.run(words).code(), line);
    }

    Program.Answer a = Program.run("study", "collect", jobs);
    assertEquals(0, a.code(), a::err);
  }
}

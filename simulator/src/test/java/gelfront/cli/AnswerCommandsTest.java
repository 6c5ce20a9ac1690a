// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.report.Cautions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Commands that answer a maker's question, as their users see them. */
final class AnswerCommandsTest {
  @TempDir private Path folder;
  private Path pea;
  private String out = "";
  private String err = "";

  @BeforeEach
  void writeCase() throws IOException {
    pea = Files.writeString(folder.resolve("pea.toml"), CommandLineTest.CASE);
  }

  private int run(Object... args) {
    Program.Answer a = Program.run(args);
    out = a.out();
    err = a.err();
    return a.code();
  }

  private static JsonNode json(String text) throws IOException {
    return new ObjectMapper().readTree(text);
  }

  private JsonNode file(String name) throws IOException {
    return json(Files.readString(folder.resolve(name)));
  }

  private static void assertLoadsNothing(String page) {
    assertFalse(page.contains("http:") || page.contains("https:") || page.contains("src="), page);
  }

  @Test
  void aSeriesHasARowForEachShotAndEachIsHotterUntilTheySettle() throws IOException {
    assertEquals(0, run("series", pea, "--shots", "3", "--no-flow"), () -> err);
    assertTrue(out.contains("shot   mould °C") && out.contains("Page: "), out);
    JsonNode shots = file("pea-study/series.json").get("shots");
    assertEquals(3, shots.size());
    double first = shots.get(0).get("mould_before_degC").asDouble();
    double second = shots.get(1).get("mould_before_degC").asDouble();
    double third = shots.get(2).get("mould_before_degC").asDouble();
    assertTrue(first < second && second < third, first + ", " + second + ", " + third);
    String csv = Files.readString(folder.resolve("pea-study/series.csv"));
    assertTrue(csv.lines().count() >= 4, csv);
    assertLoadsNothing(Files.readString(folder.resolve("pea-study/series.html")));

    assertEquals(0, run("series", pea, "--shots", "3", "--no-flow", "--json"), () -> err);
    assertEquals(file("pea-study/series.json"), json(out));
  }

  @ParameterizedTest
  @CsvSource({"2, 3 to 200", "201, 3 to 200"})
  void aSeriesOfTooFewOrTooManyShotsIsRefused(int shots, String words) {
    assertEquals(2, run("series", pea, "--shots", shots));
    assertTrue(err.contains(words), err);
    assertFalse(Files.exists(folder.resolve("pea-study")));
  }

  @Test
  void comparedDesignsShowWhatWasChangedAndWhatCameOut() throws IOException {
    Path wide = folder.resolve("wide.toml");
    Files.writeString(wide, CommandLineTest.CASE.replace("size = \"2.5 mm\"", "size = \"3.5 mm\""));
    Path to = folder.resolve("side by side");
    assertEquals(0, run("check", pea, "--no-flow"), () -> err);

    assertEquals(0, run("compare", folder.resolve("pea-result"), wide, "-o", to), () -> err);

    assertTrue(out.contains("What was changed") && out.contains("What came out"), out);
    assertTrue(
        out.lines().anyMatch(l -> l.contains("2.5 mm") && l.contains("3.5 mm")),
        () -> "gates: " + out);
    assertLoadsNothing(Files.readString(to.resolve("compare.html")).replace("src=\"data:", ""));
    JsonNode json = json(Files.readString(to.resolve("compare.json")));
    assertEquals(2, json.get("designs").size());
    assertEquals(0, run("compare", folder.resolve("pea-result"), wide, "-o", to, "--json"));
    assertEquals(json, json(out));
  }

  @Test
  void whatCantBeComparedIsSaidInALine() throws IOException {
    assertEquals(2, run("compare", pea));
    assertTrue(err.contains("one design has nothing to be compared with"), err);
    assertEquals(3, run("compare", pea, folder.resolve("none-result"), "-o", folder));
    assertTrue(err.contains("none-result") && err.lines().count() == 1, err);
    Path other = Files.createDirectory(folder.resolve("photos"));
    assertEquals(3, run("compare", other, pea, "-o", folder.resolve("c")));
    assertTrue(err.contains("photos") && err.lines().count() == 1, err);
    assertFalse(Files.exists(folder.resolve("c")), "nothing was written");
  }

  @Test
  void symptomsTellADentFromTrappedAirAndWhichFindingBearsOnIt() throws IOException {
    assertEquals(0, run("symptoms", "--surface", "smooth", "--shape", "round"), () -> err);
    assertTrue(out.toLowerCase(java.util.Locale.ROOT).contains("air"), out);
    String air = out;

    assertEquals(0, run("check", pea, "--no-flow", "--quiet"), () -> err);
    Path page = folder.resolve("what.html");
    assertEquals(
        0,
        run(
            "symptoms",
            "--surface",
            "textured",
            "--shape",
            "caved",
            folder.resolve("pea-result"),
            "-o",
            page),
        () -> err);
    assertTrue(out.contains("The result says:"), out);
    assertFalse(out.strip().endsWith(air.strip()), "two different verdicts");
    String html = Files.readString(page);
    assertLoadsNothing(html);
    Cautions.ALL.forEach(c -> assertTrue(html.contains(c.substring(0, 20)), c));
    assertEquals(0, run("symptoms", "--surface", "textured", "--json"), () -> err);
    assertTrue(json(out).has("verdict"), out);
  }

  @Test
  void symptomsThatNobodyCanMeanAreAskedFor() {
    assertEquals(2, run("symptoms"));
    assertTrue(err.contains("say what you see"), err);
    assertEquals(2, run("symptoms", "--surface", "textred"));
    assertTrue(err.contains("did you mean \"textured\""), err);
    assertEquals(3, run("symptoms", "--surface", "smooth", folder.resolve("none-result")));
    assertEquals(1, err.lines().count(), err);
  }

  @Test
  void remediesAreATableInOrderOfEffortWithAnAnswerBelow() throws IOException {
    String asksMuch = "visible_dent = \"0.03 mm\"\n" + CommandLineTest.CASE;
    Files.writeString(pea, asksMuch);
    assertEquals(0, run("remedies", pea, "--no-flow"), () -> err);
    JsonNode json = file("pea-study/remedies.json");
    List<String> efforts =
        Stream.iterate(0, i -> i < json.get("remedies").size(), i -> i + 1)
            .map(i -> json.get("remedies").get(i).get("effort").asText())
            .toList();
    assertTrue(efforts.size() > 10, efforts.toString());
    assertEquals(efforts.stream().sorted(AnswerCommandsTest::byEffort).toList(), efforts);
    assertTrue(out.contains("gate 3 mm instead of 2.5 mm"), out);
    assertTrue(out.contains("Mind: "), out);
    assertTrue(
        out.contains("Pea: ") && out.contains(json.get("verdict").asText()),
        () -> json.get("verdict") + " in " + out);
    assertLoadsNothing(Files.readString(folder.resolve("pea-study/remedies.html")));
  }

  private static int byEffort(String a, String b) {
    List<String> order = List.of("recipe", "file_work", "redesign");
    return Integer.compare(order.indexOf(a), order.indexOf(b));
  }

  @Test
  void remediesOfACaseThatCantBeCalculatedAreRefusedInALine() throws IOException {
    String far = CommandLineTest.CASE.replace("at = [\"0 mm\"", "at = [\"-9 mm\"");
    Path beside = Files.writeString(folder.resolve("beside.toml"), far);
    assertEquals(3, run("remedies", beside, "--no-flow"), () -> out);
    assertTrue(err.startsWith("beside.toml") && err.lines().count() == 1, err);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** From text to case, and what is told about texts that are none. */
final class CaseFileTest {
  @Test
  void theSoundCaseInSi() {
    Case c = Cases.read(Cases.SOUND);

    FeedSystem.Declared feed = (FeedSystem.Declared) c.feed();
    assertEquals("bait", c.name());
    assertEquals(Section.round(2.5e-3), feed.gate().section());
    assertEquals(3e-3, feed.gate().land(), 1e-15);
    assertEquals(8e-3, feed.sprue().innerDiameter(), 1e-15);
    assertEquals(8e-3, feed.sprue().mouthDiameter(), 1e-15);
    assertEquals(feed.gate().direction(), feed.sprue().direction());
    assertEquals(0.015, c.block().wall(), 1e-15);
    assertEquals(165, c.shot().temperature());
    assertEquals(1, c.cavities());
    assertEquals(List.of(), c.warnings());
    PartShape.Row tail = ((PartShape.Calipers) c.part()).rows().get(1);
    assertEquals(20e-3, tail.distance(), 1e-15);
    assertEquals(8e-3, tail.width(), 1e-15);
    assertEquals(9e-3, tail.height(), 1e-15);
  }

  @Test
  void allMistakesAreToldAtOnceEachAtItsPlace() {
    List<Mistake> found =
        Cases.mistakes(
            """
            nmae = "Pea"
            up = [0, 0, 0]
            cavities = 0
            [part]
            mesh = "nowhere.stl"
            unit = "furlong"
            [gate]
            at = ["0 mm", 2, "3,5 mm"]
            direction = [1, "x", 0]
            size = "2.5"
            [sprue]
            diameter = "8 m"
            lenght = "28 mm"
            [block]
            material = "aluminum-6061"
            start = "86 degX"
            [[block.insert]]
            material = "brass"
            radius = "3 mm"
            [plastisol]
            filler = "salt"
            [shot]
            temperature = "330 degC"
            hold_time = 3
            """);

    String told = Cases.words(found);
    for (String one :
        List.of(
            "bait.toml:1:1: unknown key \"nmae\"; did you mean \"name\"?",
            "bait.toml:2:1: up must point somewhere",
            "bait.toml:3:1: cavities must be a whole number",
            "bait.toml:5:1: there is no file \"nowhere.stl\"",
            "bait.toml:6:1: unit = \"furlong\" is none of mm, cm, m",
            "bait.toml:7:1: [gate] needs land",
            "bait.toml:8:1: at: 2 has no unit",
            "bait.toml:8:1: at: \"3,5 mm\" has a decimal comma",
            "bait.toml:9:1: direction must be three numbers",
            "bait.toml:10:1: size: \"2.5\" has no unit",
            "bait.toml:11:1: [sprue] needs length",
            "bait.toml:12:1: diameter = 8 m is out of range: 1 mm to 100 mm; did you mean 8 mm?",
            "bait.toml:13:1: unknown key \"lenght\" in [sprue]; did you mean \"length\"?",
            "bait.toml:15:1: material = \"aluminum-6061\" is none of",
            "bait.toml:16:1: start: \"86 degX\" can't be read: \"degX\" is not a unit of temperature",
            "bait.toml:19:1: a ball needs centre",
            "bait.toml:21:1: filler needs filler_share",
            "bait.toml:23:1: temperature = 330 degC is out of range: 100 degC to 240 degC; did you"
                + " mean 330 degF?",
            "bait.toml:24:1: hold_time: 3 has no unit: write \"20 s\"")) {
      assertTrue(told.contains(one), () -> one + "\nis not in\n" + told);
    }
    assertEquals(19, found.size(), told);
    for (int i = 1; i < found.size(); i++) {
      assertTrue(found.get(i).line() >= found.get(i - 1).line(), "in the file's order");
    }
  }

  @Test
  void anEmptyFileNeedsAllThatIsNeeded() {
    String told = Cases.words(Cases.mistakes(""));

    assertTrue(told.contains("bait.toml: the case needs a [part]"), told);
    assertTrue(told.contains("bait.toml: the case needs a [gate] and a [sprue]"), told);
    assertTrue(told.contains("bait.toml: the case needs a [shot]"), told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[gate] | colour | unknown key \"colour\" in [gate]; known: at, direction, shape",
        "[gate] | lnd | did you mean \"land\"?",
        "[shot] | holdtime | did you mean \"hold_time\"?",
        "[shot] | temp | did you mean \"temperature\"?",
        "[block] | box | did you mean \"box_min\"?",
        "[plastisol] | NO_FLOW | did you mean \"no_flow\"?",
        "[sprue] | dia | did you mean \"diameter\"?",
        "[numerics] | voxels | did you mean \"voxel\"?",
      })
  void unknownKeysAreToldWithTheNearestKnown(String table, String key, String told) {
    String text = Cases.SOUND.replace(table, table + "\n" + key + " = \"3 mm\"");

    List<Mistake> found = Cases.mistakes(text);

    assertEquals(1, found.size(), Cases.words(found));
    assertTrue(found.get(0).message().contains(told), found.get(0).message());
    String line = text.lines().toList().get(found.get(0).line() - 1);
    assertEquals(key + " = \"3 mm\"", line);
  }

  @Test
  void bareNumbersTakeTheUnitTheFileStates() {
    String bare = Cases.SOUND.replaceAll("\"([0-9.]+) (mm|degC)\"", "$1");
    Case stated = Cases.read(Cases.SOUND);

    Case c = Cases.read("units = { length = \"mm\", temperature = \"degC\" }\n" + bare);
    Case inches = Cases.read("units = { length = \"in\", temperature = \"F\" }\n" + inInches(bare));

    assertEquals(stated.part(), c.part());
    assertEquals(stated.feed(), c.feed());
    assertEquals(stated.shot(), c.shot());
    assertEquals(
        0.1 * 0.0254, ((FeedSystem.Declared) inches.feed()).gate().section().width(), 1e-12);
    assertEquals((330 - 32) / 1.8, inches.shot().temperature(), 1e-9);
  }

  @Test
  void bareNumbersWithoutStatedUnitsAreMistakesEach() {
    String bare = Cases.SOUND.replaceAll("\"([0-9.]+) (mm|degC)\"", "$1");

    List<Mistake> found = Cases.mistakes(bare);

    long lines = bare.lines().filter(l -> l.matches(".*= [0-9.]+|at = .*")).count();
    assertEquals(lines, found.stream().mapToInt(Mistake::line).distinct().count());
    assertTrue(found.stream().allMatch(m -> m.message().contains("has no unit: write \"")));
  }

  private static String inInches(String bare) {
    return bare.replace("165", "330")
        .replace("= 2.5", "= 0.1")
        .replace("= 28", "= 1")
        .replace("= 20", "= 1")
        .replace("= 15", "= 0.5")
        .replaceAll("= [3489]\n", "= 0.3\n");
  }

  @Test
  void theReportShowsBareNumbersWithTheirUnit() {
    String text = Cases.SOUND.replace("\"2.5 mm\"", "2.5").replace("[\"0 mm\", ", "[0.5, ");

    LoadedCase c = Cases.load("units = { length = \"mm\" }\n" + text);

    assertTrue(c.given().contains(new Statement("gate: size", "2.5 mm", "")), "" + c.given());
    assertTrue(c.given().contains(new Statement("gate: at", "(0.5 mm, 0 mm, 0 mm)", "")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "units = 3 | units must be a table",
        "units = { lenght = 'mm' } | nothing is measured in \"lenght\"; did you mean \"length\"?",
        "units = { length = 'degC' } | units: length = \"degC\" is none of mm, cm",
        "units = { length = 1 } | units: length = \"\" is none of mm, cm",
        "[units];length = 'fathom' | units: length = \"fathom\" is none of",
      },
      quoteCharacter = '~')
  void unitsThatAreNone(String line, String words) {
    String told =
        Cases.words(
            Cases.mistakes(line.replace('\'', '"').replace(';', '\n') + "\n" + Cases.SOUND));

    assertTrue(told.contains(line.startsWith("[") ? "bait.toml:2:1: " : "bait.toml:1:"), told);
    assertTrue(told.contains(words), told);
  }

  @Test
  void whatIsStatedTwiceIsToldWithAllOtherMistakes() {
    String text = Cases.SOUND.replace("land = ", "size = \"3 mm\"\nlnd = ") + "[shot]\n";

    String told = Cases.words(Cases.mistakes(text));

    assertTrue(told.matches("(?s).*bait.toml:13:1: size previously defined.*"), told);
    assertTrue(told.matches("(?s).*bait.toml:14:1: unknown key \"lnd\".*"), told);
    assertTrue(told.matches("(?s).*bait.toml:26:1: shot previously defined.*"), told);
  }

  /** Its keys would otherwise be told as unknown ones of the table before it. */
  @Test
  void belowAHeadThatStandsTwiceOnlyThatIsTold() {
    List<Mistake> found = Cases.mistakes(Cases.SOUND + "[gate]\nsize = \"3 mm\"\n");

    assertEquals(1, found.size(), Cases.words(found));
    assertTrue(Cases.words(found).contains("bait.toml:25:1: gate previously defined at line 9"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "size = 2.5 mm | a value with its unit goes in quotes",
        "size = 1/2\" | a value with its unit goes in quotes",
        "size = 165°C | a value with its unit goes in quotes",
        "size = 2,5 | a decimal comma?",
        "size = | Unexpected end of line",
        "size \"2.5 mm\" | Unexpected",
        "size = \"2.5 mm | Unexpected end of line, expected \" or a character; a quote is missing",
        "size = \u201c2.5 mm\u201d | curly quotes: write straight ones",
        "shape = round | a word goes in quotes, as in \"soft\"",
        "size: \"2.5 mm\" | write = between a key and its value",
        "size = \"2.5 mm\" // wide | a remark begins with #",
        "gate | a head goes in brackets, as in [gate]",
        "{\"size\": 2.5} | a case holds lines such as size = \"4 mm\" under heads such as [gate]",
        "mesh = \"C:\\parts\\bait.stl\" | write paths with /, or in single quotes",
        "size = [1, 2 | Unexpected",
        "= 3 | Unexpected '='",
        "[gate | Unexpected",
        "size = 99999999999999999999 | too large",
      },
      quoteCharacter = '~')
  void linesThatAreNoTomlAreToldWithLineAndHint(String line, String told) {
    List<Mistake> found = Cases.mistakes(Cases.SOUND.replace("size = \"2.5 mm\"", line));

    assertTrue(found.get(0).message().contains(told), Cases.words(found));
    assertTrue(found.get(0).line() >= 12 && found.get(0).line() <= 13, Cases.words(found));
    assertTrue(found.get(0).column() >= 1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"gate", "shot", "block", "numerics", "plastisol", "runner"})
  void tablesMustBeTables(String table) {
    String text = table + " = 3\n" + Cases.SOUND.replaceAll("(?s)\\[" + table + "\\]\n[^\\[]*", "");
    String cut =
        table.equals("gate") ? Cases.SOUND.replaceAll("(?s)\\[gate\\].*?(?=\\[sprue)", "") : "";

    String told = Cases.words(Cases.mistakes(cut.isEmpty() ? text : table + " = 3\n" + cut));

    assertTrue(told.contains("bait.toml:1:1: [" + table + "] must be a table"), told);
  }

  @Test
  void arraysOfTablesWantDoubleBrackets() {
    String told =
        Cases.words(Cases.mistakes(Cases.SOUND + "[filing]\n[block.insert]\nradius = 3\n"));

    assertTrue(told.contains("write [[filing]] with double brackets"), told);
    assertTrue(told.contains("write [[block.insert]] with double brackets"), told);
    assertTrue(
        Cases.words(Cases.mistakes("filing = [3]\n" + Cases.SOUND)).contains("must hold tables"));
  }

  @Test
  void byteOrderMarkAndForeignLineEndsAreRead() {
    assertEquals(Cases.read(Cases.SOUND), Cases.read("\ufeff" + Cases.SOUND.replace("\n", "\r\n")));
  }

  @Test
  void messagesHoldNoControlCharactersAndEnd() {
    String key = "\"\\u001b[31m\\u202e" + "x".repeat(5000) + "\"";

    Mistake m = Cases.mistakes(key + " = 1\n" + Cases.SOUND).get(0);

    assertFalse(m.message().chars().anyMatch(c -> c < ' ' || c == 0x202e), m.message());
    assertTrue(m.message().length() < 500);
  }

  @Test
  void endlesslyNestedBracketsAreRefused() {
    String told = Cases.words(Cases.mistakes("name = " + "[".repeat(200_000) + "\n"));

    assertTrue(told.startsWith("bait.toml"), told);
  }

  @Test
  void theMachinesLanguageChangesNothing() {
    Locale before = Locale.getDefault();
    LoadedCase usual = Cases.load(Cases.SOUND);
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));

      assertEquals(usual, Cases.load(Cases.SOUND));
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertEquals(usual, Cases.load(Cases.SOUND));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void filesThatCantBeReadSayWhy(@TempDir Path folder) throws IOException {
    Path big = Files.write(folder.resolve("big.toml"), new byte[(1 << 20) + 1]);
    Path odd =
        Files.write(
            folder.resolve("odd.toml"), "name = \"Köder\"".getBytes(StandardCharsets.ISO_8859_1));

    refused(folder.resolve("none.toml"), "there is no such file");
    refused(folder, "is no ordinary file");
    refused(big, "is larger than 1 MiB");
    refused(odd, "it is not UTF-8");
  }

  private static void refused(Path file, String why) {
    var e = assertThrows(CaseException.class, () -> CaseFile.read(file));

    assertTrue(e.getMessage().startsWith(file + ": "), e.getMessage());
    assertTrue(e.getMessage().contains(why), e.getMessage());
    assertEquals(1, e.getMessage().lines().count());
  }
}

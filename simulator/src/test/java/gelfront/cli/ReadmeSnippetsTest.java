// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.material.MaterialTable;
import gelfront.setup.CaseException;
import gelfront.setup.CaseFile;
import gelfront.setup.CaseKeys;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines and tables of a case that the README shows in passing, put into the case that it has. */
final class ReadmeSnippetsTest {
  private static final Pattern LINE = Pattern.compile("`(\\w+ = ?[^`\n]*)`");
  private static final Pattern TABLE = Pattern.compile("`(\\[\\[?[a-z_.-]+]]?)`");

  @TempDir private Path folder;

  /** A text and the place of a line in it. */
  private record Placed(String text, int line) {}

  @BeforeEach
  void makeWhatLinesName() throws IOException {
    TestMeshes.write(folder.resolve("grub.stl"));
    try (InputStream in = MaterialTable.class.getResourceAsStream("materials.toml")) {
      String soft =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .replaceFirst("(?s)^.*(?=\\[plastisol\\.soft])", "")
              .replaceFirst("(?s)\\[plastisol\\.medium].*$", "")
              .replace("plastisol.soft", "plastisol.white-jug");
      Files.writeString(folder.resolve("mine.toml"), soft);
    }
  }

  private static String readme() throws IOException {
    return Files.readString(Path.of("../README.md"));
  }

  private static String itsCase() throws IOException {
    String readme = readme();
    int from = readme.indexOf("```toml\n") + 8;
    return "materials = \"mine.toml\"\n" + readme.substring(from, readme.indexOf("```", from));
  }

  private static Stream<String> found(Pattern p) throws IOException {
    String text = readme().replaceAll("(?s)```.*?```", "");
    return p.matcher(text).results().map((MatchResult m) -> m.group(1)).distinct();
  }

  static Stream<String> lines() throws IOException {
    return found(LINE);
  }

  static Stream<String> tables() throws IOException {
    return found(TABLE);
  }

  @ParameterizedTest
  @MethodSource("lines")
  void aLineIsUnderstoodWhereItsKeyBelongs(String line) throws IOException {
    assertTrue(understood(line), line);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sizes = \"3 mm\"", "side = \"-w\"", "cooled_by = \"hope\"", "turn = 1"})
  void aWrongLineIsNot(String line) throws IOException {
    assertFalse(understood(line), line);
  }

  @ParameterizedTest
  @MethodSource("tables")
  void aTableIsOneThatACaseMayHold(String table) {
    Set<String> known =
        CaseKeys.all().stream().map(CaseKeys.Key::table).collect(Collectors.toSet());

    assertTrue(known.contains(table) || table.startsWith("[plastisol."), table);
  }

  @Test
  void itsLimitsCanBeAdded() throws IOException {
    String limits =
        readme()
            .lines()
            .dropWhile(l -> !l.equals("    [limits]"))
            .takeWhile(l -> l.startsWith("    "))
            .collect(Collectors.joining("\n"));

    var c = CaseFile.parse("readme.toml", itsCase() + limits, folder).setup();

    assertEquals(6e-3, c.limits().gateWidest().orElseThrow(), 1e-12);
    assertEquals(1, c.limits().gatePlaces().size());
  }

  /** Values that are left open with dots, or not begun, are known by their key alone. */
  private boolean understood(String line) throws IOException {
    String key = line.substring(0, line.indexOf(' '));
    List<String> tables =
        CaseKeys.all().stream().filter(k -> k.name().equals(key)).map(CaseKeys.Key::table).toList();
    if (line.contains("...") || line.endsWith("=")) {
      return !tables.isEmpty();
    }
    for (String table : tables) {
      if (isNoMistake(placed(table, key, line))) {
        return true;
      }
    }
    return false;
  }

  private boolean isNoMistake(Placed p) {
    try {
      CaseFile.parse("readme.toml", p.text(), folder);
      return true;
    } catch (CaseException e) { // what else the table needs is told elsewhere
      return e.mistakes().stream().noneMatch(m -> m.line() == p.line() || m.line() == 0);
    }
  }

  /** The README's case with a line in a table; what the case states under that key goes. */
  private static Placed placed(String table, String key, String line) throws IOException {
    List<String> lines = new ArrayList<>();
    String in = "";
    int at = table.isEmpty() ? add(lines, line) : 0;
    for (String l : itsCase().lines().toList()) {
      in = l.startsWith("[") ? l.replaceAll("\\s.*", "") : in;
      if (!in.equals(table) || !l.startsWith(key + " ")) {
        lines.add(l);
      }
      if (l.startsWith("[") && in.equals(table)) {
        at = add(lines, line);
      }
    }
    if (at == 0) {
      lines.add(table);
      at = add(lines, line);
    }
    return new Placed(String.join("\n", lines) + "\n", at);
  }

  private static int add(List<String> lines, String line) {
    lines.add(line);
    return lines.size();
  }
}

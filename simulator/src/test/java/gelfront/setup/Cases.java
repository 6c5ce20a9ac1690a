// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Case texts to begin from. */
final class Cases {
  /** Measured with calipers, so that no file is needed; line 1 is the first caliper row. */
  static final String SOUND =
      """
      [[part.caliper]]
      distance = "0 mm"
      width = "3 mm"
      height = "4 mm"
      [[part.caliper]]
      distance = "20 mm"
      width = "8 mm"
      height = "9 mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "2.5 mm"
      land = "3 mm"
      [sprue]
      diameter = "8 mm"
      length = "28 mm"
      [block]
      wall = "15 mm"
      [plastisol]
      grade = "soft"
      [shot]
      temperature = "165 degC"
      [numerics]
      level = "quick"
      """;

  private static final Path FOLDER = Path.of("").toAbsolutePath();

  private Cases() {}

  static LoadedCase load(String text) {
    return CaseFile.parse("bait.toml", text, FOLDER);
  }

  static Case read(String text) {
    return load(text).setup();
  }

  /** The sound case with a table's lines added to: "block" and "air = ..." for instance. */
  static String with(String table, String... lines) {
    String added = String.join("\n", lines) + "\n";
    String head = "[" + table + "]\n";
    return table.isEmpty()
        ? added + SOUND
        : SOUND.contains(head) ? SOUND.replace(head, head + added) : SOUND + head + added;
  }

  static List<Mistake> mistakes(String text) {
    return assertThrows(CaseException.class, () -> load(text)).mistakes();
  }

  static String words(List<Mistake> mistakes) {
    return mistakes.stream().map(m -> m.in("bait.toml")).collect(Collectors.joining("\n"));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A thin, wide plate behind a small gate: the shot freezes on its way. */
final class UnfilledTest {
  private static final String CASE =
      """
      name = "Plate"
      [[part.caliper]]
      distance = "0 mm"
      width = "10 mm"
      height = "2 mm"
      [[part.caliper]]
      distance = "40 mm"
      width = "16 mm"
      height = "2 mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "1.5 mm"
      land = "2 mm"
      [sprue]
      diameter = "6 mm"
      length = "10 mm"
      [block]
      material = "aluminium-6061"
      wall = "8 mm"
      start = "25 degC"
      [plastisol]
      grade = "medium"
      [shot]
      temperature = "160 degC"
      fill_time = "2 s"
      [fill]
      on = true
      [numerics]
      level = "quick"
      """;

  @TempDir private static Path folder;
  private static String out = "";
  private static String page = "";

  @BeforeAll
  static void check() throws IOException {
    Path file = Files.writeString(folder.resolve("plate.toml"), CASE);
    ByteArrayOutputStream o = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(o, true, StandardCharsets.UTF_8);
    String[] args = {"check", "--one-level", file.toString()};
    assertEquals(0, Main.run(args, print, print));
    out = o.toString(StandardCharsets.UTF_8);
    page = Files.readString(folder.resolve("plate-result/report.html"));
  }

  @Test
  void aPartThatStaysEmptyIsNeitherCleanNorFed() {
    assertTrue(out.contains("Plate: This part doesn't fill: "), out);
    assertTrue(out.contains("because no liquid comes there."), out);
    assertFalse(out.contains("No dent") || out.contains("can reach every place"), out);
    assertFalse(out.toLowerCase(Locale.ROOT).contains("shoot a little cooler"), out);
    assertTrue(out.contains("  - Shoot hotter or faster, or warm the mould"), out);
  }

  @Test
  void soSaysThePage() {
    assertTrue(page.contains("<title>Plate: doesn&#39;t fill</title>"), page.substring(0, 900));
    assertTrue(page.contains("✗ doesn&#39;t fill"));
    assertFalse(page.contains("✓"));
  }

  @Test
  void aFillTimeThatThePlungerCantKeepIsNotCalledTooLong() {
    assertTrue(out.contains("A fill time of 2.0 s can't be kept"), out);
    assertTrue(out.contains("of the shot is in. Press harder"), out);
  }
}

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
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shots that can't be, or can't fill: told with file, line and place. */
final class ShotInputTest {
  private static final String SHOT = "temperature = \"165 degC\"";
  private static final String CALCULATED = CommandLineTest.CASE + "[fill]\non = true\n";
  private static final String VENT =
      "[[fill.vent]]\nat = [%s]\nwidth = \"2 mm\"\ndepth = \"0.03 mm\"\nlength = \"8 mm\"\n";

  @TempDir private Path folder;
  private String out;
  private String err;

  private int check(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("pea.toml"), text);
    ByteArrayOutputStream o = new ByteArrayOutputStream();
    ByteArrayOutputStream e = new ByteArrayOutputStream();
    int code =
        Main.run(
            new String[] {"check", file.toString()},
            new PrintStream(o, true, StandardCharsets.UTF_8),
            new PrintStream(e, true, StandardCharsets.UTF_8));
    out = o.toString(StandardCharsets.UTF_8);
    err = e.toString(StandardCharsets.UTF_8);
    return code;
  }

  private void refused(String text, String line, String why) throws IOException {
    assertEquals(3, check(text), err);
    assertEquals(1, err.lines().count(), err);
    assertTrue(lineOf(text, err).startsWith(line), err);
    assertTrue(err.contains(why), err);
  }

  /** The line of the case that a message names. */
  private static String lineOf(String text, String message) {
    List<String> lines = text.lines().toList();
    return lines.get(Integer.parseInt(message.split("pea.toml:", -1)[1].split(":", -1)[0]) - 1);
  }

  private static String vent(String at) {
    return VENT.replace("%s", at);
  }

  @Test
  void aVentOnTheGateOrAsideOfTheCavityIsToldAtItsOwnLine() throws IOException {
    String good = vent("\"14 mm\", \"0 mm\", \"0 mm\"");
    String onGate = vent("\"-1 mm\", \"0 mm\", \"0 mm\"");
    String astray = vent("\"8 mm\", \"20 mm\", \"0 mm\"");

    refused(CALCULATED + good + onGate, "at = [\"-1 mm\"", "[-1.0, 0.0, 0.0] mm lies on the gate");
    refused(
        CALCULATED + good + good + astray, "at = [\"8 mm\"", "[8.0, 20.0, 0.0] mm doesn't meet");
  }

  @Test
  void anInjectorSmallerThanTheShotIsToldAtItsLine() throws IOException {
    String large =
        CALCULATED
            .replace("width = \"6 mm\"", "width = \"18 mm\"")
            .replace("height = \"6 mm\"", "height = \"18 mm\"");

    refused(
        large.replace(SHOT, SHOT + "\ninjector = \"1 ml\""),
        "injector = ",
        "the injector holds 1.0 ml");
  }

  @Test
  void aShotOfNoTimeIsToldAtItsLine() throws IOException {
    refused(
        CALCULATED.replace(SHOT, SHOT + "\nfill_time = \"0 s\""),
        "fill_time = ",
        "a fill time of zero can't be calculated");
  }

  @Test
  void fillingForLongerThanTheWayInStaysOpenIsToldAtItsLine() throws IOException {
    String slow = CALCULATED.replace(SHOT, SHOT + "\nfill_time = \"90 s\"");

    assertEquals(0, check(slow), err);
    assertTrue(out.contains("longer than the way in stays open: it sets after"), out);
    String warned =
        out.lines().filter(l -> l.contains("longer than the way in")).findFirst().orElseThrow();
    assertTrue(lineOf(slow, warned).startsWith("fill_time = "), warned);
    check(CALCULATED);
    assertFalse(out.contains("longer than the way in"), out);
  }

  @Test
  void soItIsWhereTheShotItselfIsNotCalculated() throws IOException {
    String slow = CommandLineTest.CASE.replace(SHOT, SHOT + "\nfill_time = \"90 s\"");

    assertEquals(0, check(slow), err);
    String warned =
        out.lines().filter(l -> l.contains("longer than the gate at")).findFirst().orElseThrow();
    assertTrue(lineOf(slow, warned).startsWith("fill_time = "), warned);
    check(CommandLineTest.CASE);
    assertFalse(out.contains("longer than the gate at"), out);
  }
}

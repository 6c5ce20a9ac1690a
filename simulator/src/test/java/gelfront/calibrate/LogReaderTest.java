// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LogReaderTest {
  private static double celsius(int i) {
    return 30 + 130 * Math.exp(-i / 15.0);
  }

  private static String lines(int from, int to, IntFunction<String> line) {
    return IntStream.range(from, to).mapToObj(line).collect(Collectors.joining("\n", "", "\n"));
  }

  private static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  private static TemperatureLog read(String text) {
    return LogReader.read("cup.csv", text, Optional.empty());
  }

  private static void assertRead(TemperatureLog log, double step) {
    assertEquals(40, log.times().length);
    for (int i = 0; i < 40; i++) {
      assertEquals(step * i, log.times()[i] - log.times()[0], 1e-6);
      assertEquals(celsius(i), log.temperatures()[i], 0.006);
    }
  }

  @Test
  void headingsWithUnits() {
    String text =
        "Logger X\nTime (s),Temperature (°C)\n"
            + lines(0, 40, i -> say("%d,%.2f", 2 * i, celsius(i)));
    assertRead(read(text), 2);
    assertTrue(read(text).notes().isEmpty());
  }

  @Test
  void noHeadingsAtAll() {
    TemperatureLog log = read(lines(0, 40, i -> say("%d\t%.2f", i, celsius(i))));
    assertRead(log, 1);
    assertEquals("No unit of temperature is stated: taken for °C.", log.notes().get(0));
  }

  @Test
  void decimalCommasBetweenSemicolons() {
    String text =
        "Zeit [min];Temp [°C]\n"
            + lines(0, 40, i -> say("%.1f;%.2f", 0.5 * i, celsius(i)).replace('.', ','));
    assertRead(read(text), 30);
  }

  @Test
  void fahrenheitInHeadingsOrCells() {
    String heading = "elapsed (s),probe (°F)\n";
    assertRead(read(heading + lines(0, 40, i -> say("%d,%.2f", i, celsius(i) * 1.8 + 32))), 1);
    assertRead(read(lines(0, 40, i -> say("%d,%.2f °F", i, celsius(i) * 1.8 + 32))), 1);
  }

  @Test
  void clockTimesDatesAndSpans() {
    assertRead(
        read(
            "time,temp °C\n"
                + lines(0, 40, i -> say("%d:%02d,%.2f", i / 30, 2 * i % 60, celsius(i)))),
        2);
    assertRead(
        read(
            "date time;T1 °C\n"
                + lines(
                    0,
                    40,
                    i -> say("2026-03-01 12:%02d:%02d;%.2f", i / 30, 2 * i % 60, celsius(i)))),
        2);
    assertRead(
        read(
            "Date/Time\tT °C\n"
                + lines(
                    0,
                    40,
                    i -> say("3/1/2026 1:%02d:%02d PM\t%.2f", i / 30, 2 * i % 60, celsius(i)))),
        2);
    IntFunction<String> pastMidnight =
        i ->
            i < 20
                ? say("23:59:%02d,%.2f", 20 + 2 * i, celsius(i))
                : say("00:00:%02d,%.2f", 2 * (i - 20), celsius(i));
    assertRead(read("time,temp °C\n" + lines(0, 40, pastMidnight)), 2);
  }

  @Test
  void theColumnIsAskedForWhereThereAreSeveral() {
    String text = "s,cup °C,room °C\n" + lines(0, 40, i -> say("%d,%.2f,21.0", i, celsius(i)));
    String said = assertThrows(LogException.class, () -> read(text)).getMessage();
    assertEquals(
        "cup.csv: several temperatures among [s, cup °C, room °C]: say which by --column", said);
    assertRead(LogReader.read("cup.csv", text, Optional.of("cup °C")), 1);
    assertThrows(LogException.class, () -> LogReader.read("cup.csv", text, Optional.of("cup")));
  }

  private static void assertRefused(String words, String text) {
    String said = assertThrows(LogException.class, () -> read(text)).getMessage();
    assertTrue(said.startsWith(words), said);
  }

  @Test
  void whatCantBeTrustedIsRefusedWithItsLine() {
    String good = lines(0, 40, i -> say("%d,%.2f", i, celsius(i)));
    assertRefused("cup.csv: no line has a time and a temperature", "hello\nworld\n");
    assertRefused(
        "cup.csv: 10 readings are too few", lines(0, 10, i -> say("%d,%.2f", i, celsius(i))));
    assertRefused("cup.csv:41: the clock jumps back", good + "20,40\n");
    assertRefused("cup.csv:41: nothing was logged for 61 s before this", good + "100,40\n101,39\n");
    assertRefused("cup.csv: every reading is the same", lines(0, 40, i -> i + ",85.0"));
    assertRefused(
        "cup.csv:1: 15 readings stand at the highest value",
        lines(0, 40, i -> say("%d,%.2f", i, i < 15 ? 150 : celsius(i))));
    assertRefused("cup.csv: it hardly cools", lines(0, 40, i -> say("%d,%.2f", i, 40 + 0.1 * i)));
    assertRefused(
        "cup.csv:2: °C and °F are mixed",
        "0,160 °C\n1,318 °F\n" + lines(2, 40, i -> say("%d,%.2f °C", i, celsius(i))));
    assertRefused(
        "cup.csv:11: 10 of 40 lines have no reading",
        lines(0, 40, i -> i / 10 == 1 ? i + ",OL" : say("%d,%.2f", i, celsius(i))));
    assertRefused(
        "cup.csv:1: 320 °C is no plastisol: is the unit right?",
        lines(0, 40, i -> say("%d,%.2f", i, 2 * celsius(i))));
  }

  @Test
  void aFewBadLinesAreLeftOutAndNoted() {
    TemperatureLog log =
        read(lines(0, 40, i -> i == 7 ? "7,---" : say("%d,%.2f °C", i, celsius(i))));
    assertEquals(39, log.times().length);
    assertEquals("1 lines without a reading left out, the first is 8", log.notes().get(0));
  }

  @Test
  void coolingStartsAtTheHottestReading() {
    TemperatureLog log =
        read(lines(0, 40, i -> say("%d,%.2f °C", i, i < 5 ? 20 + i : celsius(i - 5)))).cooling();
    assertEquals(35, log.times().length);
    assertEquals(0, log.times()[0]);
    assertEquals(160, log.temperatures()[0], 0.01);
  }

  @Test
  void whichReadingOfAFlatTopIsTheHottestDoesNotMoveTheStart() {
    IntFunction<String> thick =
        i -> say("%d,%.2f °C", i, i < 3 ? 20 + i : i < 20 ? 160 + 0.04 * i : celsius(i - 20));
    TemperatureLog cooling = read(lines(0, 60, thick)).cooling();
    assertEquals(57, cooling.times().length);
    assertEquals(0, cooling.times()[0]);
  }

  @Test
  void aThermometerOfWholeDegreesMayStandAtTheTopOfAThickCup() {
    IntFunction<String> whole =
        i -> say("%d,%.0f °F", i, i < 12 ? 320 : celsius(i - 11) * 1.8 + 32);
    String note = read(lines(0, 60, whole)).notes().get(0);
    assertTrue(note.startsWith("12 readings stand at the highest value, 160 °C"), note);
  }

  @Test
  void thinningTakesMeans() {
    TemperatureLog log = read(lines(0, 40, i -> say("%d,%.2f °C", i, celsius(i)))).thinned(8);
    assertEquals(8, log.times().length);
    assertEquals(2, log.times()[0], 1e-9);
    double mean = IntStream.range(0, 5).mapToDouble(LogReaderTest::celsius).average().orElseThrow();
    assertEquals(mean, log.temperatures()[0], 0.01);
  }
}

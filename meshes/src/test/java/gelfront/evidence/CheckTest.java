// SPDX-License-Identifier: Apache-2.0
package gelfront.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The line that a check leaves is what it asserts. */
final class CheckTest {
  private static final Path FILE = Path.of("target", "checks", "checktest-pair-of-pears.tsv");
  private static final Path DRAWN = FILE.resolveSibling("checktest-pair-of-pears.svg");

  /** They are no checks against the outside. */
  @AfterEach
  void clear() throws IOException {
    Files.deleteIfExists(FILE);
    Files.deleteIfExists(DRAWN);
  }

  private static Check check() {
    return Check.of("pair of pears", "this test");
  }

  private static List<String> line() throws IOException {
    return List.of(Files.readString(FILE).strip().split("\t", -1));
  }

  @Test
  void theWorstPairIsTold() throws IOException {
    check().expected(100).got(100.5).expected(10).got(9.9).within(0.011);

    List<String> line = line();
    assertEquals(List.of("CheckTest", "pair of pears", "this test"), line.subList(0, 3));
    assertEquals(List.of("10.000", "9.9000", "1.0 %", "1.1 %", "2", "holds"), line.subList(3, 9));
  }

  @Test
  void whatFailsFailsAndSaysSo() throws IOException {
    assertThrows(AssertionError.class, () -> check().expected(10).got(9.8).within(0.01));
    assertEquals("FAILS", line().get(8));
    assertThrows(
        AssertionError.class,
        () -> check().expected(1).got(1).expected(1).got(Double.NaN).within(9));
    assertThrows(AssertionError.class, () -> check().error(-0.02).within(0.01));
  }

  @Test
  void errorsMayBeSharesOfASpan() throws IOException {
    check().expected(0).got(0.5).within(0.01, 100);

    assertEquals("0.50 % of 100.00", line().get(5));
  }

  @Test
  void curvesAreDrawn() throws IOException {
    check().at(2).expected(4).got(4.1).at(1).expected(1).got(1).plot("s", "K").within(0.1);

    String svg = Files.readString(DRAWN);
    assertEquals(2, svg.split("<circle", -1).length - 1);
    assertTrue(svg.contains("<polyline") && svg.contains(">K</text>"));
    assertEquals(DRAWN.getFileName().toString(), line().get(9));
  }

  @Test
  void digitsAreShownWhereTheyAreChecked() throws IOException {
    check().expected(0.86033359).got(0.86033361).within(6e-8, 1);

    assertEquals(List.of("0.8603335900", "0.8603336100"), line().subList(3, 5));
  }

  @Test
  void practiceIsToldAndWhereFiguresCameFrom() throws IOException {
    check().stored("pears.json", "PearRun").told("sweet", "sour", "differs");

    assertEquals(List.of("sweet", "sour", "", "", "1", "differs"), line().subList(3, 9));
    assertEquals("pears.json, PearRun", line().get(10));
  }

  @Test
  void nothingCheckedIsAMistake() {
    assertThrows(IllegalStateException.class, () -> check().within(1));
    assertThrows(IllegalStateException.class, () -> check().got(1));
    assertFalse(Files.exists(FILE));
  }
}

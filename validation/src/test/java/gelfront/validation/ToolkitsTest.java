// SPDX-License-Identifier: Apache-2.0
package gelfront.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The standard case by general-purpose toolkits: toolkits.md is what {@code
 * validation/toolkits/run} printed. What they say of the reference, and what gelfront costs beside
 * them.
 */
final class ToolkitsTest {
  /** Processor time of the toolkit over gelfront's at equal or better error. */
  private static final double ASKED = 20;

  /** Largest error from which on a run is no equal of ours. */
  private static final double NO_EQUAL = 0.05;

  private static final String REFERENCE = "axisymmetric finite elements, standard-case.json";

  private List<String> lines;

  @BeforeEach
  void read() throws IOException {
    try (InputStream in = ToolkitsTest.class.getResourceAsStream("toolkits.md")) {
      lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  /** Rows of the table whose head begins so, without gelfront's own. */
  private List<String[]> rows(String head) {
    int from = lines.indexOf(lines.stream().filter(l -> l.startsWith(head)).findFirst().get());
    return lines.subList(from + 2, lines.size()).stream()
        .takeWhile(l -> l.startsWith("|"))
        .map(l -> Arrays.stream(l.substring(1).split("\\|", -1)).map(String::strip))
        .map(cells -> cells.toArray(String[]::new))
        .filter(cells -> !cells[0].startsWith("gelfront"))
        .toList();
  }

  private static double share(String percent) {
    return Double.parseDouble(percent) / 100;
  }

  private static Check check(String by, String what, String source) {
    return Check.of(by + ": " + what, source).stored("toolkits.md", "`validation/toolkits/run`");
  }

  /** The finest tetrahedra know nothing of gelfront, nor of how the reference was made. */
  @Test
  void tetrahedraEndWithTheReference() {
    List<String[]> runs = rows("| run | unknowns");
    assertEquals(3, runs.size());
    String[] finest = runs.get(1);
    check(finest[0], "last below 90 °C", REFERENCE).error(share(finest[7])).within(0.003);
    check(finest[0], "the gate sets", REFERENCE).error(share(finest[4])).within(0.015);
  }

  @Test
  void atEqualErrorATwentiethOfTheTime() {
    List<String[]> runs = rows("| toolkit run");
    assertEquals(3, runs.size());
    long equal = runs.stream().filter(ToolkitsTest::told).count();
    assertTrue(equal > 0);
  }

  private static boolean told(String[] run) {
    double ratio = Double.parseDouble(run[4]);
    String found =
        String.format(Locale.ROOT, "%.1f times, %s %% and %s %% off", ratio, run[1], run[3]);
    boolean equal = share(run[1]) < NO_EQUAL;
    String less = equal ? "FAILS" : "less, but no equal error";
    check(run[0], "its processor time over gelfront's, both errors", "same machine and hour")
        .told("at least 20 times at equal error", found, ratio >= ASKED ? "agrees" : less);
    assertTrue(!equal || ratio >= ASKED, run[0]);
    return equal;
  }
}

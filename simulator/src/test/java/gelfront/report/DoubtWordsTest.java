// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Doubt;
import gelfront.answer.Ran;
import gelfront.answer.SomeRun;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How sure a verdict is, in sentences. */
final class DoubtWordsTest {
  private static final String SAME = "The verdict is the same in all of them";

  private static Ran dent(double lowMm, double highMm) {
    return Ran.well(SomeRun.dent(lowMm, highMm));
  }

  private static String words(Ran... cases) {
    Doubt.Unknown u = new Doubt.Unknown("no-flow temperature", "degC", 100, 125, 150, "E", "Look.");
    Ran none = Ran.failed("not wanted");
    return String.join(
        "\n",
        DoubtWords.of(
            new Doubt(
                "bait",
                "quick",
                0.2e-3,
                List.of(u),
                List.of(),
                Arrays.stream(cases).map(r -> new Doubt.PlausibleCase(List.of(120.0), r)).toList(),
                none,
                none,
                none,
                List.of(),
                List.of(new Doubt.Influence(0, -0.8, -0.95, -0.4)),
                "rank correlation")));
  }

  @Test
  void whatDecidesIsMeasuredOnlyWhereAVerdictHangsOnIt() {
    assertTrue(words(dent(0, 0.1), dent(0, 0.3)).contains("Measure this first: no-flow"));
    for (String sure :
        List.of(words(dent(0, 0.01), dent(0, 0.02)), words(dent(0.3, 0.5), dent(0.4, 0.6)))) {
      assertTrue(sure.contains(SAME), sure);
      assertFalse(sure.contains("Measure this first"), sure);
    }
    assertFalse(words(dent(0, 0.01), Ran.failed("too cold")).contains(SAME));
  }

  @Test
  void oneCaseWithoutAResultIsOne() {
    String one = words(dent(0, 0.3), Ran.failed("too cold"));
    assertTrue(one.contains("1 plausible case gave no result"), one);
    assertEquals(1, one.split("gave no result", -1).length - 1);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ScreeningTest {
  private static final double[][] POINTS = LatinHypercube.points(20, 5);

  @Test
  void whatDecidesIsToldFromWhatDoesNot() {
    double[] answer =
        Arrays.stream(POINTS).mapToDouble(p -> Math.exp(3 * p[1]) - 0.8 * p[3]).toArray();

    Screening.Rank[] r = Screening.of(POINTS, answer);

    assertTrue(r[1].correlation() > 0.9 && r[1].low() > 0.7, r[1].toString());
    for (int u : new int[] {0, 2, 4}) {
      assertTrue(r[u].low() < 0 && r[u].high() > 0, r[u].toString());
    }
    assertTrue(r[3].correlation() < 0, r[3].toString());
  }

  @Test
  void whatOnlyRisesWithOneInputHasRankOne() {
    double[] answer = Arrays.stream(POINTS).mapToDouble(p -> Math.pow(p[2], 5)).toArray();
    assertEquals(1, Screening.of(POINTS, answer)[2].correlation(), 1e-12);
  }

  @Test
  void anAnswerThatIsTheSameThroughoutIsDecidedByNothing() {
    for (Screening.Rank r : Screening.of(POINTS, new double[20])) {
      assertEquals(new Screening.Rank(0, 0, 0), r);
    }
  }

  @Test
  void noRunsNoRanks() {
    assertEquals(0, Screening.of(new double[0][], new double[0]).length);
  }
}

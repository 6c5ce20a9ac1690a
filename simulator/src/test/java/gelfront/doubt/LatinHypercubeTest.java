// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class LatinHypercubeTest {
  @Test
  void eachStripOfEachUnknownHoldsOnePoint() {
    double[][] p = LatinHypercube.points(20, 13);
    double[] strips = new double[20];
    Arrays.setAll(strips, i -> (i + 0.5) / 20);
    for (int u = 0; u < 13; u++) {
      int at = u;
      double[] of = Arrays.stream(p).mapToDouble(row -> row[at]).sorted().toArray();
      assertArrayEquals(strips, of, 1e-12);
    }
  }

  /** Columns drawn at random have 0.22 each, and the worst of 78 pairs some 0.6. */
  @Test
  void unknownsAreHardlyCorrelated() {
    double worst = LatinHypercube.worst(LatinHypercube.points(20, 13));
    assertTrue(worst < 0.45, "" + worst);
    assertTrue(worst > 0);
  }

  @Test
  void thePlanIsTheSameEachTime() {
    assertTrue(Arrays.deepEquals(LatinHypercube.points(12, 4), LatinHypercube.points(12, 4)));
  }

  @Test
  void oneUnknownIsSpreadEvenly() {
    assertEquals(
        0.5,
        Arrays.stream(LatinHypercube.points(9, 1)).mapToDouble(r -> r[0]).average().orElseThrow(),
        1e-12);
  }
}

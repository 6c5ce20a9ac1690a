// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.grid.Cavity;
import gelfront.material.ViscosityCurve;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

final class MobilityTest {
  private static final double NO_FLOW = 100;

  private final Cavity cavity = Tube.of(20, 6);
  private final ViscosityCurve curve =
      new ViscosityCurve(new double[] {100, 160}, new double[] {5, 1});

  /** Air that has just come in is as warm as the liquid beside it: the sprue of a fed shot. */
  @Test
  void besideAirAsWarmAsTheLiquidItFlowsAsAnywhere() {
    boolean[] flowing = new boolean[cavity.count()];
    for (int c = 0; c < flowing.length; c++) {
      flowing[c] = cavity.grid().position(c, 0) >= 4;
    }
    double[] temperature = new double[cavity.count()];
    Arrays.fill(temperature, 150);
    Liquid liquid = new Liquid(cavity, false);
    liquid.update(flowing);

    double[] w = new Mobility(cavity).solve(liquid, flowing, temperature, curve, NO_FLOW);

    double most = Arrays.stream(w).max().orElseThrow();
    assertTrue(most > 0 && most < 1, "" + most);
    assertTrue(Arrays.stream(w).allMatch(v -> v > 0), "every block flows");
  }
}

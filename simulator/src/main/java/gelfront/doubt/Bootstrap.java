// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.random.RandomDataGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/** Samples drawn anew from the same runs, the same each time, and what they leave open. */
final class Bootstrap {
  private static final int DRAWS = 400;
  private static final long SEED = 7;

  private final int[][] draws = new int[DRAWS][];

  /**
   * @param runs how many there are
   */
  Bootstrap(int runs) {
    RandomDataGenerator random = new RandomDataGenerator(new Well19937c(SEED));
    for (int k = 0; k < DRAWS; k++) {
      draws[k] = new int[runs];
      Arrays.setAll(draws[k], i -> random.nextInt(0, runs - 1));
    }
  }

  /**
   * The interval that 90 % of the samples lie in, by percentiles.
   *
   * @param statistic of a sample: numbers of its runs
   * @return low and high end
   */
  double[] interval(ToDoubleFunction<int[]> statistic) {
    Percentile percentile = new Percentile();
    percentile.setData(Arrays.stream(draws).mapToDouble(statistic).toArray());
    return new double[] {percentile.evaluate(5), percentile.evaluate(95)};
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import java.util.Arrays;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.random.RandomDataGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;

/**
 * Few points that cover many unknowns: each unknown's range is cut into as many equal strips as
 * there are points, and each strip holds one point (McKay, Beckman and Conover, Technometrics 21
 * (1979) 239, from memory). Of many such plans that is taken whose unknowns are least correlated,
 * so that what one does is not taken for another's doing.
 */
final class LatinHypercube {
  private static final int PLANS = 2000;
  private static final long SEED = 20;

  private LatinHypercube() {}

  /**
   * The same points each time.
   *
   * @return by point and unknown, above 0 and below 1: middles of strips
   */
  static double[][] points(int points, int unknowns) {
    RandomDataGenerator random = new RandomDataGenerator(new Well19937c(SEED));
    double[][] best = plan(random, points, unknowns);
    double least = worst(best);
    for (int i = 1; i < PLANS && unknowns > 1; i++) {
      double[][] other = plan(random, points, unknowns);
      double correlation = worst(other);
      if (correlation < least) {
        least = correlation;
        best = other;
      }
    }
    return best;
  }

  private static double[][] plan(RandomDataGenerator random, int points, int unknowns) {
    double[][] p = new double[points][unknowns];
    for (int u = 0; u < unknowns; u++) {
      int[] strip = random.nextPermutation(points, points);
      for (int i = 0; i < points; i++) {
        p[i][u] = (strip[i] + 0.5) / points;
      }
    }
    return p;
  }

  /** Greatest correlation between two unknowns, 0 to 1. */
  static double worst(double[][] plan) {
    if (plan[0].length < 2 || plan.length < 3) {
      return 0;
    }
    RealMatrix all = new PearsonsCorrelation(plan).getCorrelationMatrix();
    RealMatrix others = all.subtract(MatrixUtils.createRealIdentityMatrix(all.getRowDimension()));
    return Arrays.stream(others.getData())
        .flatMapToDouble(Arrays::stream)
        .map(Math::abs)
        .max()
        .orElse(0);
  }
}

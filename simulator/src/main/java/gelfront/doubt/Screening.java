// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import java.util.Arrays;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;

/**
 * Which inputs decide, from few runs: Spearman's rank correlation of each with the answer, and the
 * interval that it takes in 90 % of samples drawn anew from the same runs (bootstrap, percentiles).
 */
final class Screening {
  private Screening() {}

  /**
   * @param correlation -1 to 1; 0 where the answer is the same throughout
   * @param low of its interval
   * @param high of its interval
   */
  record Rank(double correlation, double low, double high) {}

  /**
   * @param inputs by run and input
   * @param answer by run
   * @return one for each input
   */
  static Rank[] of(double[][] inputs, double[] answer) {
    int n = answer.length;
    int count = n == 0 ? 0 : inputs[0].length;
    Bootstrap anew = new Bootstrap(n);
    Rank[] ranks = new Rank[count];
    for (int u = 0; u < count; u++) {
      int at = u;
      double[] x = Arrays.stream(inputs).mapToDouble(row -> row[at]).toArray();
      double[] open = anew.interval(d -> correlation(pick(x, d), pick(answer, d)));
      ranks[u] = new Rank(correlation(x, answer), open[0], open[1]);
    }
    return ranks;
  }

  private static double[] pick(double[] v, int[] at) {
    return Arrays.stream(at).mapToDouble(i -> v[i]).toArray();
  }

  private static double correlation(double[] x, double[] y) {
    if (x.length < 3) {
      return 0;
    }
    double c = new SpearmansCorrelation().correlation(x, y);
    return Double.isNaN(c) ? 0 : c;
  }
}

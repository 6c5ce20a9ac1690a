package gelfront.doubt;

import java.util.Arrays;
import org.apache.commons.math3.random.RandomDataGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * Which inputs decide, from few runs: Spearman's rank correlation of each with the answer, and the
 * interval that it takes in 90 % of samples drawn anew from the same runs (bootstrap, percentiles).
 */
final class Screening {
  private static final int DRAWS = 400;
  private static final long SEED = 7;

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
    RandomDataGenerator random = new RandomDataGenerator(new Well19937c(SEED));
    int[][] draws = new int[DRAWS][n];
    for (int[] draw : draws) {
      Arrays.setAll(draw, i -> random.nextInt(0, n - 1));
    }
    Rank[] ranks = new Rank[count];
    for (int u = 0; u < count; u++) {
      int at = u;
      double[] x = Arrays.stream(inputs).mapToDouble(row -> row[at]).toArray();
      double[] drawn =
          Arrays.stream(draws).mapToDouble(d -> correlation(pick(x, d), pick(answer, d))).toArray();
      Percentile percentile = new Percentile();
      percentile.setData(drawn);
      ranks[u] = new Rank(correlation(x, answer), percentile.evaluate(5), percentile.evaluate(95));
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

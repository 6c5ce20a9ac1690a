// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import java.util.Arrays;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Shares of an answer's variance that inputs have, from two samples A and B and for each input u
 * the sample A_u, which is A with u from B:
 *
 * <pre>
 *   alone  S_u = 1/N sum f(B) (f(A_u) - f(A)) / V       (Saltelli et al., CPC 181 (2010) 259)
 *   total  T_u = 1/(2N) sum (f(A) - f(A_u))^2 / V       (Jansen, CPC 117 (1999) 35)
 * </pre>
 *
 * <p>Both from memory, held against Ishigami's function in closed form. "Total" counts what an
 * input does together with others, too. Points are a Sobol sequence of twice the dimension.
 */
final class VarianceShares {

  /** Points of a Sobol sequence that are left out: the first is a corner. */
  private static final int SKIP = 1;

  private final int n;
  private final int inputs;
  private final double[][] points;

  /**
   * @param n points of each sample, a power of two for the evenest cover
   * @param inputs that the answer depends on
   */
  VarianceShares(int n, int inputs) {
    if (n < 2 || inputs < 1) {
      throw new IllegalArgumentException("shares of variance need points and inputs");
    }
    this.n = n;
    this.inputs = inputs;
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(2 * inputs);
    sobol.skipTo(SKIP);
    double[][] both = new double[n][];
    Arrays.setAll(both, i -> sobol.nextVector());
    points = new double[n * (inputs + 2)][];
    for (int i = 0; i < n; i++) {
      points[i] = Arrays.copyOf(both[i], inputs);
      points[n + i] = Arrays.copyOfRange(both[i], inputs, 2 * inputs);
      for (int u = 0; u < inputs; u++) {
        double[] mixed = points[i].clone();
        mixed[u] = points[n + i][u];
        points[(2 + u) * n + i] = mixed;
      }
    }
  }

  /** Where the answer is wanted: by point and input, 0 to 1; A, B, then A_u for each input. */
  double[][] points() {
    return points;
  }

  /**
   * @param alone share that an input has by itself
   * @param total share that it has a hand in
   * @param low of the interval that holds the total in 90 % of samples drawn anew
   * @param high of that interval
   */
  record Share(double alone, double total, double low, double high) {}

  /**
   * @param answers at {@link #points}
   * @return one for each input; zeros where the answer is the same throughout
   */
  Share[] of(double[] answers) {
    if (answers.length != points.length) {
      throw new IllegalArgumentException("one answer for each point");
    }
    int[] all = new int[n];
    Arrays.setAll(all, i -> i);
    Bootstrap anew = new Bootstrap(n);
    Share[] shares = new Share[inputs];
    for (int u = 0; u < inputs; u++) {
      int at = u;
      double[] open = anew.interval(d -> total(answers, at, d));
      shares[u] = new Share(alone(answers, u, all), total(answers, u, all), open[0], open[1]);
    }
    return shares;
  }

  private double variance(double[] f, int[] of) {
    double[] both = new double[2 * of.length];
    for (int i = 0; i < of.length; i++) {
      both[2 * i] = f[of[i]];
      both[2 * i + 1] = f[n + of[i]];
    }
    return StatUtils.populationVariance(both);
  }

  private double alone(double[] f, int u, int[] of) {
    double mean = 0;
    for (int i : of) {
      mean += 0.5 * (f[i] + f[n + i]) / of.length;
    }
    double sum = 0;
    for (int i : of) {
      sum += (f[n + i] - mean) * (f[(2 + u) * n + i] - f[i]);
    }
    double v = variance(f, of);
    return v > 0 ? sum / of.length / v : 0;
  }

  private double total(double[] f, int u, int[] of) {
    double sum = 0;
    for (int i : of) {
      double d = f[i] - f[(2 + u) * n + i];
      sum += d * d;
    }
    double v = variance(f, of);
    return v > 0 ? sum / (2.0 * of.length) / v : 0;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

/**
 * Liquid in developed laminar flow that enters a round tube at one temperature, 1, and cools at a
 * wall of another, 0; constant properties, no conduction along the tube.
 *
 * <pre>
 *   bulk = sum 8 G_n / lambda_n^2 exp(-2 lambda_n^2 x*)    centre = sum C_n exp(-2 lambda_n^2 x*)
 *   x* = (x / D) / Pe = pi alpha x / (4 Q)
 * </pre>
 *
 * <p>Graetz's series (Shah and London, Laminar Flow Forced Convection in Ducts, 1978). The first
 * five eigenvalues and coefficients were computed for the project; the further ones are the
 * asymptotic lambda_n = 4 n + 8/3, G_n = 1.01276 lambda_n^(-1/3), C_n = (-1)^n 2.84606
 * lambda_n^(-2/3) of Sellars, Tribus and Klein (1956), from memory.
 */
public final class Graetz {
  private static final int TERMS = 60;
  private static final double[] LAMBDA = {
    2.70436442, 6.67903145, 10.67337954, 14.67107846, 18.66987186
  };
  private static final double[] CENTRE = {1.476435, -0.806124, 0.588762, -0.475850};
  private static final double[] BULK = {0.819050, 0.097527, 0.032504, 0.015440};

  private Graetz() {}

  private static double lambda(int n) {
    return n < LAMBDA.length ? LAMBDA[n] : 4 * n + 8.0 / 3;
  }

  private static double bulkWeight(int n) {
    return n < BULK.length ? BULK[n] : 8 * 1.01276 * Math.pow(lambda(n), -7.0 / 3);
  }

  private static double centreWeight(int n) {
    double sign = n % 2 == 0 ? 1 : -1;
    return n < CENTRE.length ? CENTRE[n] : sign * 2.84606 * Math.pow(lambda(n), -2.0 / 3);
  }

  private static double decay(int n, double xStar) {
    return Math.exp(-2 * lambda(n) * lambda(n) * xStar);
  }

  /** Mean by volume rate. */
  public static double bulk(double xStar) {
    double sum = 0;
    for (int n = 0; n < TERMS; n++) {
      sum += bulkWeight(n) * decay(n, xStar);
    }
    return sum;
  }

  /** On the axis; from x* = 0.001 on, where the series has come to rest. */
  public static double centre(double xStar) {
    double sum = 0;
    for (int n = 0; n < TERMS; n++) {
      sum += centreWeight(n) * decay(n, xStar);
    }
    return sum;
  }

  /** -d bulk / d x*: heat to the wall; from x* = 1e-4 on. */
  public static double loss(double xStar) {
    double sum = 0;
    for (int n = 0; n < TERMS; n++) {
      sum += 2 * lambda(n) * lambda(n) * bulkWeight(n) * decay(n, xStar);
    }
    return sum;
  }

  /** x* at which the centre falls through {@code theta}, between 0.05 and 0.98. */
  public static double freezing(double theta) {
    return Roots.find(x -> centre(x) - theta, 1e-3, 1);
  }
}

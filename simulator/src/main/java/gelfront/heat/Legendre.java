// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

/**
 * Coefficients of the second-order Runge-Kutta-Legendre method (Meyer, Balsara and Aslam, J.
 * Comput. Phys. 257 (2014) 594): with w1 = 4 / (s^2 + s - 2)
 *
 * <pre>  b_j = (j^2 + j - 2) / (2 j (j + 1)),  mu_j = (2 j - 1) / j b_j / b_(j-1),
 *   nu_j = -(j - 1) / j b_j / b_(j-2)</pre>
 */
final class Legendre {
  private Legendre() {}

  static double b(int j) {
    return j < 2 ? 1.0 / 3 : (j * (double) j + j - 2) / (2.0 * j * (j + 1));
  }

  static double mu(int j) {
    return (2.0 * j - 1) / j * b(j) / b(j - 1);
  }

  static double nu(int j) {
    return -(j - 1.0) / j * b(j) / b(j - 2);
  }

  /**
   * The time integral of Y obeys the method's recursion, too; so it is a sum over the stages, and
   * this is what each stage's Y_(j-1) counts in it.
   */
  static double[] meanWeights(int s, double w1) {
    double[] reaching = new double[s + 3];
    double[] weight = new double[s + 1];
    reaching[s] = 1;
    for (int j = s; j >= 2; j--) {
      if (j < s) {
        reaching[j] = mu(j + 1) * reaching[j + 1] + nu(j + 2) * reaching[j + 2];
      }
      weight[j] = mu(j) * w1 * reaching[j];
    }
    return weight;
  }

  static int stagesFor(double reach) {
    int s = (int) Math.ceil(0.5 * (Math.sqrt(9 + 16 * reach) - 1));
    s = Math.max(3, s);
    return s % 2 == 0 ? s + 1 : s;
  }
}

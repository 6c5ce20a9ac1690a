// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.network;

/** Thomas's elimination. */
final class Tridiagonal {
  private Tridiagonal() {}

  /**
   * Solves -below[i-1] x[i-1] + own[i] x[i] - above[i] x[i+1] = right[i].
   *
   * @param own modified
   * @param right modified: the solution
   */
  static void solve(double[] below, double[] own, double[] above, double[] right) {
    int n = own.length;
    for (int i = 1; i < n; i++) {
      double f = below[i - 1] / own[i - 1];
      own[i] -= f * above[i - 1];
      right[i] += f * right[i - 1];
    }
    right[n - 1] /= own[n - 1];
    for (int i = n - 2; i >= 0; i--) {
      right[i] = (right[i] + above[i] * right[i + 1]) / own[i];
    }
  }
}

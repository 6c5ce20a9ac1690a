// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.network;

import java.util.Arrays;

/**
 * Suction and rates along the slices that are joined to the mouth, and what the skin gives.
 *
 * <pre>
 *   Q = M (q' - q) / way,  Q in - Q out = S - y,   y = S max(0, (q - 0.9 b) / 0.2 b)
 * </pre>
 */
final class Pull {
  private static final int MOST_PASSES = 200;

  /** m3/s into each slice from the one before, the first from the mouth; one more, 0. */
  final double[] rate;

  /** Share of what a slice draws that its skin gives. */
  final double[] given;

  /**
   * @param conducts m3/(Pa s) into each slice from the one before, the first from the mouth
   * @param draws m3/s per slice
   */
  Pull(double[] conducts, double[] draws, double bears) {
    int n = draws.length;
    double from = 0.9 * bears;
    double range = 0.2 * bears;
    boolean[] gives = new boolean[n];
    double[] q;
    int passes = 0;
    do {
      if (passes++ == MOST_PASSES) {
        throw new IllegalStateException("where the skin gives way is not found");
      }
      q = solve(conducts, draws, gives, from, range);
    } while (update(gives, q, from));
    rate = new double[n + 1];
    given = new double[n];
    for (int i = 0; i < n; i++) {
      rate[i] = conducts[i] * (q[i] - (i > 0 ? q[i - 1] : 0));
      given[i] = Math.min(1, Math.max(0, (q[i] - from) / range));
    }
  }

  private static double[] solve(
      double[] conducts, double[] draws, boolean[] gives, double from, double range) {
    int n = draws.length;
    double[] own = new double[n];
    double[] right = new double[n];
    for (int i = 0; i < n; i++) {
      double yields = gives[i] ? draws[i] / range : 0;
      own[i] = conducts[i] + (i + 1 < n ? conducts[i + 1] : 0) + yields;
      right[i] = draws[i] + yields * from;
    }
    double[] link = Arrays.copyOfRange(conducts, 1, n);
    Tridiagonal.solve(link, own, link, right);
    return right;
  }

  private static boolean update(boolean[] gives, double[] q, double from) {
    boolean changed = false;
    for (int i = 0; i < q.length; i++) {
      changed |= gives[i] != q[i] > from;
      gives[i] = q[i] > from;
    }
    return changed;
  }
}

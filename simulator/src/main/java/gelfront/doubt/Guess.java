// SPDX-License-Identifier: Apache-2.0
package gelfront.doubt;

import org.apache.commons.math3.distribution.TriangularDistribution;

/**
 * A triangular distribution over low, likely, high; over their logarithms where they span decades.
 * It says no more than that values in the middle are likelier than at the ends, which is all that
 * is known of most of them.
 *
 * @param low positive where {@code decades}
 * @param decades whether logarithms are evenly spread rather than values
 */
record Guess(double low, double likely, double high, boolean decades) {
  Guess {
    if (!(low <= likely && likely <= high && low < high) || (decades && low <= 0)) {
      throw new IllegalArgumentException(
          "a guess needs low, likely, high: " + low + ", " + likely + ", " + high);
    }
  }

  /** The value that a share of all cases lies under, 0 to 1. */
  double at(double share) {
    TriangularDistribution d =
        new TriangularDistribution(scaled(low), scaled(likely), scaled(high));
    double v = d.inverseCumulativeProbability(share);
    return decades ? Math.exp(v) : v;
  }

  private double scaled(double v) {
    return decades ? Math.log(v) : v;
  }
}

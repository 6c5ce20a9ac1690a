// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import java.util.Arrays;

/** Tables of numbers as text: lines of values between commas. */
final class Rows {
  private Rows() {}

  static double[][] of(String table) {
    return table
        .lines()
        .map(l -> Arrays.stream(l.split(",", -1)).mapToDouble(Double::parseDouble).toArray())
        .toArray(double[][]::new);
  }
}

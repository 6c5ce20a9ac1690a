// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import java.util.Arrays;

/**
 * A 3MF transform: the rows of a 4 x 3 matrix, a point being a row before it, so that x' = m0 x +
 * m3 y + m6 z + m9 (3MF Core Specification 1.3, 3.3).
 */
record Transform(double[] m) {
  static final Transform NONE = new Transform(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0});

  double along(int axis, double x, double y, double z) {
    return m[axis] * x + m[3 + axis] * y + m[6 + axis] * z + m[9 + axis];
  }

  /** First this, then the other. */
  Transform then(Transform o) {
    double[] r = new double[12];
    for (int row = 0; row < 4; row++) {
      for (int c = 0; c < 3; c++) {
        double sum = row == 3 ? o.m[9 + c] : 0;
        for (int k = 0; k < 3; k++) {
          sum += m[3 * row + k] * o.m[3 * k + c];
        }
        r[3 * row + c] = sum;
      }
    }
    return new Transform(r);
  }

  /** Negative where it mirrors. */
  double determinant() {
    return m[0] * (m[4] * m[8] - m[5] * m[7])
        - m[1] * (m[3] * m[8] - m[5] * m[6])
        + m[2] * (m[3] * m[7] - m[4] * m[6]);
  }

  boolean finite() {
    return Arrays.stream(m).allMatch(Double::isFinite);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.shape;

import gelfront.mesh.TriangleMesh;

/**
 * A body from caliper rows: elliptical sections, smooth along x without overshoot (monotone cubic,
 * Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238).
 */
public final class Loft {
  private static final int SEGMENTS = 48;

  /** Metres between sections. */
  private static final double STEP = 1.5e-3;

  private static final double LONGEST = 1;

  private Loft() {}

  /**
   * @param x distances from the nose, rising, metres; two at least
   * @param width along y at these, positive, metres
   * @param height along z at these, positive, metres
   */
  public static TriangleMesh of(double[] x, double[] width, double[] height) {
    if (x.length < 2 || width.length != x.length || height.length != x.length) {
      throw new IllegalArgumentException("two rows at least, each with a width and a height");
    }
    double[] slopeY = slopes(x, width);
    double[] slopeZ = slopes(x, height);
    if (!(x[x.length - 1] - x[0] <= LONGEST)) {
      throw new IllegalArgumentException("the rows span more than a metre");
    }
    int n = (int) Math.max(2, Math.ceil((x[x.length - 1] - x[0]) / STEP) + 1);
    double[] at = new double[n];
    double[] ry = new double[n];
    double[] rz = new double[n];
    for (int i = 0; i < n; i++) {
      at[i] = x[0] + (x[x.length - 1] - x[0]) * i / (n - 1);
      ry[i] = 0.5 * value(x, width, slopeY, at[i]);
      rz[i] = 0.5 * value(x, height, slopeZ, at[i]);
    }
    return Solids.elliptic(at, ry, rz, SEGMENTS);
  }

  private static double[] slopes(double[] x, double[] y) {
    int n = x.length;
    double[] secant = new double[n - 1];
    for (int i = 0; i + 1 < n; i++) {
      if (!(x[i + 1] > x[i]) || !(y[i] > 0) || !(y[i + 1] > 0)) {
        throw new IllegalArgumentException(
            "distances must rise and sizes be positive at rows " + (i + 1) + " and " + (i + 2));
      }
      secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }
    double[] m = new double[n];
    m[0] = secant[0];
    m[n - 1] = secant[n - 2];
    for (int i = 1; i + 1 < n; i++) {
      boolean turns = secant[i - 1] * secant[i] <= 0;
      m[i] = turns ? 0 : 2 / (1 / secant[i - 1] + 1 / secant[i]);
    }
    return m;
  }

  private static double value(double[] x, double[] y, double[] m, double at) {
    int i = 0;
    while (i + 2 < x.length && at > x[i + 1]) {
      i++;
    }
    double h = x[i + 1] - x[i];
    double t = Math.max(0, Math.min(1, (at - x[i]) / h));
    double t2 = t * t;
    double t3 = t2 * t;
    return (2 * t3 - 3 * t2 + 1) * y[i]
        + (t3 - 2 * t2 + t) * h * m[i]
        + (3 * t2 - 2 * t3) * y[i + 1]
        + (t3 - t2) * h * m[i + 1];
  }
}

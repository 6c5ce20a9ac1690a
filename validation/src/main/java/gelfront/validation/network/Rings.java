// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.network;

import java.util.Arrays;

/**
 * Temperatures of a slice in rings of equal width, and how they even out across it.
 *
 * <pre>  rho c dT/dt = 1/r d(r k dT/dr)/dr,  -k dT/dr = h (T - T_wall) at the wall</pre>
 *
 * <p>Finite volumes, backward Euler.
 */
final class Rings {
  static final int COUNT = 24;

  final double radius;
  final double length;
  final double[] t = new double[COUNT];
  final double[] volume = new double[COUNT];

  /** Of each ring, per its volume at the start. */
  final double[] mass = new double[COUNT];

  private final Melt melt;

  /** W/K from each ring to the next; the last to the wall. */
  private final double[] conducts = new double[COUNT];

  Rings(FeedDesign.Slice slice, Melt melt) {
    this.melt = melt;
    radius = slice.radius();
    length = slice.length();
    Arrays.fill(t, melt.hot());
    Arrays.fill(mass, 1);
    double width = radius / COUNT;
    for (int k = 0; k < COUNT; k++) {
      volume[k] = Math.PI * (2 * k + 1) * width * width * length;
      conducts[k] = 2 * Math.PI * (k + 1) * length * melt.conductivity();
    }
    double way = 0.5 * width / melt.conductivity() + 1 / melt.film();
    conducts[COUNT - 1] = 2 * Math.PI * radius * length * slice.slope() / way;
  }

  /**
   * @param gains W per ring from along the axis
   */
  void conduct(double dt, double[] gains) {
    double[] own = new double[COUNT];
    double[] right = new double[COUNT];
    for (int k = 0; k < COUNT; k++) {
      double c = melt.capacity() * volume[k] * mass[k] / dt;
      own[k] = c + conducts[k] + (k > 0 ? conducts[k - 1] : 0);
      right[k] = c * t[k] + gains[k];
    }
    right[COUNT - 1] += conducts[COUNT - 1] * melt.wall();
    Tridiagonal.solve(conducts, own, conducts, right);
    System.arraycopy(right, 0, t, 0, COUNT);
  }

  /** °C at the wall, on the plastisol's side. */
  double atWall() {
    double half = 2 * Math.PI * radius * length * melt.conductivity() / (0.5 * radius / COUNT);
    double out = conducts[COUNT - 1] * (t[COUNT - 1] - melt.wall());
    return t[COUNT - 1] - out / half;
  }

  boolean flows() {
    return t[0] > melt.noFlow();
  }
}

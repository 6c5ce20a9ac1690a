// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.network;

/**
 * Developed laminar flow through a slice, viscosity varying with the radius; what is colder than
 * no-flow stands.
 *
 * <pre>
 *   u(r) = G integral from r to r_open of r' / (2 eta) dr',   Q = G pi / 2 integral of r^3 / eta dr
 * </pre>
 *
 * <p>ln eta and temperature straight between the rings' middles.
 */
final class Stream {
  private static final int FINE = 6;
  private static final int POINTS = FINE * Rings.COUNT;

  /** m4/(Pa s): volume rate per pressure gradient. */
  final double mobility;

  /** Metres to the no-flow isotherm. */
  final double open;

  /** Share of the rate in each ring. */
  final double[] share = new double[Rings.COUNT];

  /**
   * @param funnel metres from the axis beyond which nothing passes on its way to a narrower tube
   */
  Stream(Rings rings, Melt melt, double funnel) {
    double step = rings.radius / POINTS;
    double[] fluid = new double[POINTS];
    double width = 0;
    for (int i = 0; i < POINTS; i++) {
      double t = temperature(rings, (i + 0.5) / FINE);
      boolean flows = t > melt.noFlow();
      fluid[i] = flows ? Math.exp(-melt.lnViscosity().applyAsDouble(t)) : 0;
      width += flows ? step : 0;
    }
    open = width;
    mobility = pass(fluid, step, rings.radius, new double[Rings.COUNT]);
    double through = pass(fluid, step, funnel, share);
    for (int k = 0; k < Rings.COUNT; k++) {
      share[k] /= through;
    }
  }

  /** Volume rate within a radius at which liquid sticks; adds to what passes in each ring. */
  private static double pass(double[] fluid, double step, double within, double[] ring) {
    double speed = 0;
    double sum = 0;
    for (int i = POINTS - 1; i >= 0; i--) {
      double r = (i + 0.5) * step;
      double shear = r < within ? 0.5 * r * fluid[i] * step : 0;
      double q = 2 * Math.PI * r * step * (speed + 0.5 * shear);
      speed += shear;
      ring[i / FINE] += q;
      sum += q;
    }
    return sum;
  }

  /**
   * @param place in rings from the axis
   */
  private static double temperature(Rings rings, double place) {
    double u = place - 0.5;
    int k = (int) Math.floor(u);
    if (k < 0) {
      return rings.t[0];
    }
    if (k >= Rings.COUNT - 1) {
      double last = rings.t[Rings.COUNT - 1];
      return last + (rings.atWall() - last) * (u - k) / 0.5;
    }
    return rings.t[k] + (rings.t[k + 1] - rings.t[k]) * (u - k);
  }
}

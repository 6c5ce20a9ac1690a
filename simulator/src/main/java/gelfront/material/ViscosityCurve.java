// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

import java.util.Arrays;

/**
 * Viscosity over temperature: its logarithm is piecewise linear, level beyond the ends, and doesn't
 * rise with temperature.
 */
public final class ViscosityCurve {
  private static final double LN_10 = Math.log(10);

  /**
   * Shape between no-flow (0) and 165 °C (1): decades above the viscosity at 165 °C. An estimate,
   * no source: thin where hot, five decades up to where it no longer flows.
   */
  private static final double[] SHARE = {-1.0 / 6, 1.0 / 12, 1.0 / 3, 7.0 / 12, 1, 1.25};

  private static final double[] DECADES = {6.5, 4.5, 2.2, 0.8, 0, -0.2};

  private final double[] temperature;
  private final double[] logarithm;

  /**
   * @param temperature °C, rising, one at least
   * @param decades log10 of Pa s at these, nowhere rising
   */
  public ViscosityCurve(double[] temperature, double[] decades) {
    if (temperature.length < 1 || temperature.length != decades.length) {
      throw new IllegalArgumentException("one viscosity per temperature, one at least");
    }
    this.temperature = temperature.clone();
    logarithm = new double[decades.length];
    for (int i = 0; i < decades.length; i++) {
      logarithm[i] = decades[i] * LN_10;
      boolean rises = i == 0 || temperature[i] > temperature[i - 1];
      if (!rises || !Double.isFinite(temperature[i]) || !Double.isFinite(decades[i])) {
        throw new IllegalArgumentException("temperatures must rise, all values be finite");
      }
      if (i > 0 && decades[i] > decades[i - 1]) {
        throw new IllegalArgumentException("a plastisol doesn't get thinner as it cools");
      }
    }
  }

  /** As measured; else an estimate from no-flow temperature and the viscosity at 165 °C. */
  public static ViscosityCurve of(Plastisol p) {
    return p.measured().orElseGet(() -> estimate(p));
  }

  private static ViscosityCurve estimate(Plastisol p) {
    double[] t = new double[SHARE.length];
    double[] decades = new double[SHARE.length];
    double range = Math.max(1, 165 - p.noFlow());
    for (int i = 0; i < t.length; i++) {
      t[i] = p.noFlow() + SHARE[i] * range;
      decades[i] = Math.log10(p.viscosityAt165()) + DECADES[i];
    }
    return new ViscosityCurve(t, decades);
  }

  /** °C and natural logarithm of Pa s at each point, temperatures rising. */
  public double[][] points() {
    return new double[][] {temperature.clone(), logarithm.clone()};
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ViscosityCurve c
        && Arrays.equals(temperature, c.temperature)
        && Arrays.equals(logarithm, c.logarithm);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(temperature) + 31 * Arrays.hashCode(logarithm);
  }

  /** Natural logarithm of Pa s at °C. */
  public double logarithm(double t) {
    int last = temperature.length - 1;
    if (!(t > temperature[0])) {
      return logarithm[0];
    }
    if (t >= temperature[last]) {
      return logarithm[last];
    }
    int i = 0;
    while (t > temperature[i + 1]) {
      i++;
    }
    double share = (t - temperature[i]) / (temperature[i + 1] - temperature[i]);
    return logarithm[i] + share * (logarithm[i + 1] - logarithm[i]);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

import java.util.Arrays;

/**
 * Enthalpy and conductivity over temperature, both piecewise linear.
 *
 * <p>h(T) = integral of rho c dT + rho L (1 - gel fraction), J/m3; strictly rising, so that T
 * follows from h. Beyond its ends a curve goes on with its last slope; conductivity stays level.
 */
public final class HeatCurves {
  private final double[] temperature;
  private final double[] enthalpy;
  private final double[] kTemperature;
  private final double[] kValue;

  /**
   * @param temperature °C, rising, two at least
   * @param enthalpy J/m3 at these, strictly rising
   * @param kTemperature °C, rising, one at least
   * @param kValue W/m K at these, positive
   */
  public HeatCurves(
      double[] temperature, double[] enthalpy, double[] kTemperature, double[] kValue) {
    this.temperature = rising(temperature.clone());
    this.enthalpy = rising(enthalpy.clone());
    this.kTemperature = rising(kTemperature.clone());
    this.kValue = positive(kValue.clone());
    if (temperature.length < 2 || temperature.length != enthalpy.length) {
      throw new IllegalArgumentException("an enthalpy curve needs two points at least");
    }
    if (kTemperature.length < 1 || kTemperature.length != kValue.length) {
      throw new IllegalArgumentException("one conductivity per temperature");
    }
  }

  private static double[] rising(double[] a) {
    for (int i = 0; i < a.length; i++) {
      if (!Double.isFinite(a[i]) || (i > 0 && !(a[i] > a[i - 1]))) {
        throw new IllegalArgumentException("values must be finite and rise: " + Arrays.toString(a));
      }
    }
    return a;
  }

  private static double[] positive(double[] a) {
    if (!Arrays.stream(a).allMatch(v -> v > 0 && Double.isFinite(v))) {
      throw new IllegalArgumentException("values must be positive: " + Arrays.toString(a));
    }
    return a;
  }

  /**
   * Constant heat capacity and conductivity; latent heat spread evenly over the gel range. The
   * density is the mean of hot and cold: while it is fed, a cavity holds more and more mass.
   */
  public static HeatCurves of(Plastisol p) {
    double rho = 0.5 * (p.densityHot() + p.densityCold());
    double c = rho * p.specificHeat();
    double l = rho * p.latentHeat();
    double range = p.gelStart() - p.gelEnd();
    return new HeatCurves(
        new double[] {p.gelEnd() - 100, p.gelEnd(), p.gelStart(), p.gelStart() + 100},
        new double[] {-100 * c, 0, range * c + l, (range + 100) * c + l},
        new double[] {25},
        new double[] {p.conductivity()});
  }

  /** J/m3 at °C. */
  public double enthalpy(double t) {
    int i = segment(temperature, t);
    return enthalpy[i]
        + (enthalpy[i + 1] - enthalpy[i])
            * (t - temperature[i])
            / (temperature[i + 1] - temperature[i]);
  }

  /** °C at J/m3. */
  public double temperature(double h) {
    int i = segment(enthalpy, h);
    return temperature[i]
        + (temperature[i + 1] - temperature[i])
            * (h - enthalpy[i])
            / (enthalpy[i + 1] - enthalpy[i]);
  }

  /** dh/dT at °C, J/m3 K; of the segment below at a corner. */
  public double slope(double t) {
    int i = segment(temperature, t);
    return (enthalpy[i + 1] - enthalpy[i]) / (temperature[i + 1] - temperature[i]);
  }

  public boolean constantConductivity() {
    return kValue.length == 1;
  }

  /** W/m K at °C. */
  public double conductivity(double t) {
    if (kValue.length == 1 || t <= kTemperature[0]) {
      return kValue[0];
    }
    if (t >= kTemperature[kValue.length - 1]) {
      return kValue[kValue.length - 1];
    }
    int i = segment(kTemperature, t);
    return kValue[i]
        + (kValue[i + 1] - kValue[i])
            * (t - kTemperature[i])
            / (kTemperature[i + 1] - kTemperature[i]);
  }

  private static int segment(double[] nodes, double x) {
    int last = nodes.length - 2;
    if (nodes.length <= 8) { // the usual curve: a short walk beats a search
      int i = 0;
      while (i < last && x > nodes[i + 1]) {
        i++;
      }
      return i;
    }
    int at = Arrays.binarySearch(nodes, x);
    int i = at >= 0 ? at - 1 : -at - 2;
    return Math.max(0, Math.min(last, i));
  }
}

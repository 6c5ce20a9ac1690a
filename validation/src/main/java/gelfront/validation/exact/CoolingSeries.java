// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.BesselJ;

/**
 * A slab, long cylinder or ball, warm throughout, put into surroundings that stay at one
 * temperature.
 *
 * <pre>  theta(r, Fo) = sum over n of C_n phi(zeta_n r / R) exp(-zeta_n^2 Fo)
 *
 *            eigenvalues               C_n                              phi(s)
 *  slab      zeta tan zeta = Bi        4 sin z / (2 z + sin 2z)         cos s
 *  cylinder  zeta J1 = Bi J0           2 J1 / (z (J0^2 + J1^2))         J0(s)
 *  ball      1 - zeta cot zeta = Bi    4 (sin z - z cos z) / (2z - sin 2z)   sin s / s</pre>
 *
 * theta = (T - T_around) / (T_start - T_around), Fo = alpha t / R^2, Bi = h R / k, R = half the
 * thickness, or the radius. Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer,
 * ch. 5; Carslaw and Jaeger, Conduction of Heat in Solids, ch. III, VII, IX (from memory).
 */
public final class CoolingSeries {
  private static final int TERMS = 40;

  /** What cools. */
  public enum Shape {
    SLAB,
    CYLINDER,
    BALL
  }

  private final Shape shape;
  private final double[] zeta = new double[TERMS];
  private final double[] c = new double[TERMS];

  /**
   * @param biot positive; infinity: the surface takes the outside temperature at once
   */
  public CoolingSeries(Shape shape, double biot) {
    if (!(biot > 0)) {
      throw new IllegalArgumentException("the Biot number must be positive: " + biot);
    }
    this.shape = shape;
    for (int n = 0; n < TERMS; n++) {
      zeta[n] = root(n, biot);
      c[n] = amplitude(zeta[n]);
    }
  }

  private double root(int n, double biot) {
    double inner = biot == Double.POSITIVE_INFINITY ? 0 : 1;
    double outer = biot == Double.POSITIVE_INFINITY ? 1 : biot;
    return switch (shape) {
      case SLAB ->
          Roots.find(
              z -> inner * z * Math.sin(z) - outer * Math.cos(z), n * Math.PI, (n + 1) * Math.PI);
      case CYLINDER ->
          Roots.find(z -> inner * z * j(1, z) - outer * j(0, z), zeroOfJ1(n), zeroOfJ1(n + 1));
      case BALL ->
          Roots.find(
              z -> inner * (Math.sin(z) - z * Math.cos(z)) - outer * Math.sin(z),
              n * Math.PI + 1e-9,
              (n + 1) * Math.PI + (inner == 0 ? 1 : 0));
    };
  }

  /** J0 has just one zero between two neighbouring ones of J1, and so has the whole condition. */
  private static double zeroOfJ1(int n) {
    return n == 0 ? 0 : Roots.find(z -> j(1, z), n * Math.PI, (n + 0.5) * Math.PI);
  }

  private static double j(int order, double x) {
    return BesselJ.value(order, x);
  }

  private double amplitude(double z) {
    return switch (shape) {
      case SLAB -> 4 * Math.sin(z) / (2 * z + Math.sin(2 * z));
      case CYLINDER -> 2 * j(1, z) / (z * (j(0, z) * j(0, z) + j(1, z) * j(1, z)));
      case BALL -> 4 * (Math.sin(z) - z * Math.cos(z)) / (2 * z - Math.sin(2 * z));
    };
  }

  /** zeta_n, n from 1 to 40. */
  public double eigenvalue(int n) {
    return zeta[n - 1];
  }

  /** C_n, n from 1 to 40. */
  public double coefficient(int n) {
    return c[n - 1];
  }

  /** theta at the share {@code r} of the radius. */
  public double at(double r, double fourier) {
    return sum(
        fourier,
        z ->
            switch (shape) {
              case SLAB -> Math.cos(z * r);
              case CYLINDER -> j(0, z * r);
              case BALL -> r == 0 ? 1 : Math.sin(z * r) / (z * r);
            });
  }

  public double centre(double fourier) {
    return at(0, fourier);
  }

  /** theta, mean over the volume. */
  public double mean(double fourier) {
    return sum(
        fourier,
        z ->
            switch (shape) {
              case SLAB -> Math.sin(z) / z;
              case CYLINDER -> 2 * j(1, z) / z;
              case BALL -> 3 * (Math.sin(z) - z * Math.cos(z)) / (z * z * z);
            });
  }

  private double sum(double fourier, DoubleUnaryOperator shareOfMode) {
    double s = 0;
    for (int n = 0; n < TERMS; n++) {
      double decay = Math.exp(-zeta[n] * zeta[n] * fourier);
      s += decay > 1e-18 ? c[n] * shareOfMode.applyAsDouble(zeta[n]) * decay : 0;
    }
    return s;
  }

  /** Fourier number at which the centre has come down to {@code theta}. */
  public double fourierAtCentre(double theta) {
    return fourierAt(0, theta, 5e-3);
  }

  /** Fourier number, 0.001 or more, at which the share {@code r} of the radius has done so. */
  public double fourierAt(double r, double theta) {
    return fourierAt(r, theta, 1e-3);
  }

  private double fourierAt(double r, double theta, double least) {
    return at(r, least) < theta
        ? least
        : Roots.find(f -> at(r, f) - theta, least, 50 / (zeta[0] * zeta[0]));
  }
}

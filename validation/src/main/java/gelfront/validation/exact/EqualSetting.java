// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import gelfront.validation.exact.CoolingSeries.Shape;

/**
 * Which plate and which ball set together with a long round bar, the surface held at one
 * temperature and no latent heat: with Fo the {@link CoolingSeries Fourier number} at which the
 * centre reaches theta, a bar of diameter d sets together with
 *
 * <pre>  a plate d / a thick, a = sqrt(Fo_slab / Fo_cylinder);
 *   a ball of diameter d / b, b = sqrt(Fo_ball / Fo_cylinder).</pre>
 *
 * Source: the series of {@link CoolingSeries}.
 */
public final class EqualSetting {
  private EqualSetting() {}

  /** Bar diameter over plate thickness. */
  public static double plate(double theta) {
    return ratio(Shape.SLAB, theta);
  }

  /** Bar diameter over ball diameter. */
  public static double ball(double theta) {
    return ratio(Shape.BALL, theta);
  }

  /** What {@link #plate} or {@link #ball} tends to for small theta. */
  public static double late(Shape shape) {
    return series(Shape.CYLINDER).eigenvalue(1) / series(shape).eigenvalue(1);
  }

  private static double ratio(Shape shape, double theta) {
    return Math.sqrt(
        series(shape).fourierAtCentre(theta) / series(Shape.CYLINDER).fourierAtCentre(theta));
  }

  private static CoolingSeries series(Shape shape) {
    return new CoolingSeries(shape, Double.POSITIVE_INFINITY);
  }
}

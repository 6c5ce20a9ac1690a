// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Round values for a scale that starts at 0. */
public final class LegendTicks {
  /**
   * @param value in the scale's unit
   * @param share 0 at the scale's start, 1 at its end
   * @param label the value, with no more decimals than the step needs
   */
  public record Tick(double value, double share, String label) {}

  private LegendTicks() {}

  /**
   * @param max end of the scale, above 0; otherwise the only tick is 0
   * @param most ticks wanted above 0, at least 1
   */
  public static List<Tick> of(double max, int most) {
    List<Tick> ticks = new ArrayList<>();
    ticks.add(new Tick(0, 0, "0"));
    if (!(max > 0) || Double.isInfinite(max)) {
      return ticks;
    }
    double step = roundStep(max / most);
    int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    // A hair of room, so that rounding does not lose a tick at the very end.
    for (int i = 1; i * step <= max * (1 + 1e-9); i++) {
      double value = i * step;
      ticks.add(
          new Tick(value, value / max, String.format(Locale.ROOT, "%." + decimals + "f", value)));
    }
    return ticks;
  }

  /** The smallest of 1, 2, 5 times a power of ten that is not below {@code least}. */
  public static double roundStep(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double times : new double[] {1, 2, 5}) {
      if (times * power >= least * (1 - 1e-9)) {
        return times * power;
      }
    }
    return 10 * power;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Values from low to high with round steps between, for legends, axes and lines of equal value.
 *
 * @param low where the scale begins
 * @param high where it ends, above {@code low}
 * @param step distance of its lines: 1, 2 or 5 times a power of ten
 */
record Scale(double low, double high, double step) {
  Scale {
    if (!(high > low) || !(step > 0)) {
      throw new IllegalArgumentException("a scale must rise: " + low + " to " + high);
    }
  }

  /** Ends as they are, about {@code lines} lines. Widened a little if both ends are one. */
  static Scale exact(double low, double high, int lines) {
    double top = high > low ? high : low + Math.max(1e-9, 0.01 * Math.abs(low));
    return new Scale(low, top, roundStep((top - low) / lines));
  }

  /** Ends moved outwards to whole steps. */
  static Scale rounded(double low, double high, int lines) {
    Scale s = exact(low, high, lines);
    return new Scale(
        Math.floor(low / s.step + 1e-9) * s.step,
        Math.ceil(s.high / s.step - 1e-9) * s.step,
        s.step);
  }

  private static double roundStep(double about) {
    double power = Math.pow(10, Math.floor(Math.log10(about)));
    double m = about / power;
    return power * (m < 1.5 ? 1 : m < 3.5 ? 2 : m < 7.5 ? 5 : 10);
  }

  /** 0 at the low end, 1 at the high end. */
  double share(double v) {
    return (v - low) / (high - low);
  }

  /** Whole steps within the ends, rising. */
  List<Double> lines() {
    List<Double> out = new ArrayList<>();
    long first = (long) Math.ceil(low / step - 1e-9);
    long last = (long) Math.floor(high / step + 1e-9);
    for (long i = first; i <= last; i++) {
      out.add(i * step);
    }
    return out;
  }
}

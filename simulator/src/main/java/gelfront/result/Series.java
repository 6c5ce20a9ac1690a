// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import java.util.List;

/**
 * Curves over time.
 *
 * @param time s, rising
 * @param curves each as long as {@code time}
 */
public record Series(double[] time, List<Curve> curves) {
  /**
   * @param key short, stable, for files: {@code gate}, {@code pocket1}, {@code mould}
   * @param label for people
   * @param unit of the values: °C, Pa, ...
   * @param values one per time
   */
  public record Curve(String key, String label, String unit, double[] values) {}

  public Series {
    curves = List.copyOf(curves);
  }
}

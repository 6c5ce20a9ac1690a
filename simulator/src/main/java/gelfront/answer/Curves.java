// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import java.util.List;
import java.util.Optional;

/**
 * What became of a run over time, in people's units.
 *
 * @param time s, rising
 * @param all each as long as {@code time}
 */
public record Curves(List<Double> time, List<Curve> all) {
  public static final Curves NONE = new Curves(List.of(), List.of());

  public Curves {
    time = List.copyOf(time);
    all = List.copyOf(all);
    for (Curve c : all) {
      if (c.values().size() != time.size() || time.isEmpty()) {
        throw new IllegalArgumentException("a curve has one value for each time: " + c.key());
      }
    }
  }

  /**
   * @param key short and stable: {@code gate}, {@code pocket1}, {@code drawn}
   * @param label for people
   * @param unit of the values: °C, ml, mm, Pa; empty for a share
   * @param values one for each time
   */
  public record Curve(String key, String label, String unit, List<Double> values) {
    public Curve {
      values = List.copyOf(values);
    }
  }

  public Optional<Curve> of(String key) {
    return all.stream().filter(c -> c.key().equals(key)).findFirst();
  }

  /** s at which it ends; 0 where there are none. */
  public double end() {
    return time.isEmpty() ? 0 : time.get(time.size() - 1);
  }

  /** Value of one of them at a time, in proportion between two; the ends' beyond. */
  public double at(Curve c, double t) {
    int after = 0;
    while (after < time.size() && time.get(after) < t) {
      after++;
    }
    if (after == 0 || after == time.size()) {
      return c.values().get(Math.min(after, time.size() - 1));
    }
    double from = time.get(after - 1);
    double share = (t - from) / (time.get(after) - from);
    return (1 - share) * c.values().get(after - 1) + share * c.values().get(after);
  }
}

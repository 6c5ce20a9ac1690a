// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Runs over two inputs.
 *
 * @param name of the case
 * @param level that was calculated at, in a word
 * @param visible metres from which a dent is seen
 * @param x the first input
 * @param y the second
 * @param runs one row of all x for each y, both rising
 * @param present the case as it is
 */
public record DentMap(
    String name, String level, double visible, Axis x, Axis y, List<List<Ran>> runs, Ran present) {
  public DentMap {
    runs = runs.stream().map(List::copyOf).toList();
    int columns = x.values().size();
    if (runs.size() != y.values().size() || runs.stream().anyMatch(r -> r.size() != columns)) {
      throw new IllegalArgumentException("a map has one run for each pair of values");
    }
  }

  /**
   * @param name of the input
   * @param unit of its values
   * @param values rising, two at least
   * @param present that the case states or assumes; absent where it has none
   */
  public record Axis(String name, String unit, List<Double> values, OptionalDouble present) {
    public Axis {
      values = List.copyOf(values);
    }

    /** "gate size, mm". */
    public String title() {
      return name + ", " + unit;
    }

    public double low() {
      return values.get(0);
    }

    public double high() {
      return values.get(values.size() - 1);
    }
  }

  /** Whether a run went well and neither dent nor oval is seen. */
  public boolean safe(Ran ran) {
    return ran.outcome().filter(o -> o.clean(visible)).isPresent();
  }

  /** Runs of which nothing is seen. */
  public long safe() {
    return runs.stream().flatMap(List::stream).filter(this::safe).count();
  }

  /** Whether no pair of values gave a result. */
  public boolean none() {
    return failed() == (long) x.values().size() * y.values().size();
  }

  /** Runs that failed. */
  public long failed() {
    return runs.stream().flatMap(List::stream).filter(r -> r.outcome().isEmpty()).count();
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.base.Quantities;
import gelfront.finding.Findings;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Calculations side by side, a row for each figure that tells them apart. */
public final class Comparison {
  private Comparison() {}

  /**
   * A figure of several calculations.
   *
   * @param name what it is
   * @param values one each
   */
  public record Row(String name, List<String> values) {
    public Row {
      values = List.copyOf(values);
    }
  }

  /** One value a row for each of the findings. */
  public static List<Row> of(List<Findings> all) {
    List<Row> rows = new ArrayList<>();
    rows.add(row("no more feeding from", all, f -> seconds(f.fed().halfAt())));
    rows.add(row("gate closes", all, f -> seconds(f.gateSets())));
    rows.add(row("part has set", all, f -> seconds(f.partSets())));
    rows.add(row("unfed", all, f -> Quantities.ml(f.fed().unfed())));
    rows.add(row("deepest dent", all, Comparison::deepest));
    if (all.stream().anyMatch(f -> f.opening().byClock())) {
      rows.add(row("oval when opened", all, f -> oval(f.opening())));
    }
    rows.add(row("verdict", all, f -> Say.severity(f.severity())));
    return rows;
  }

  private static Row row(String name, List<Findings> all, Function<Findings, String> of) {
    return new Row(name, all.stream().map(of).toList());
  }

  private static String seconds(double t) {
    return Double.isFinite(t) ? Quantities.say("%.1f s", t) : "never";
  }

  private static String oval(Opening o) {
    return o.byClock() ? Quantities.say("%.2f mm", 1e3 * o.oval()) : "opened when firm";
  }

  private static String deepest(Findings f) {
    return f.pockets().stream()
        .map(Pocket::dents)
        .filter(d -> !d.isEmpty())
        .findFirst()
        .map(
            d ->
                Quantities.say(
                    "%.2f to %.2f mm", 1e3 * d.get(0).depthLow(), 1e3 * d.get(0).depthHigh()))
        .orElse("none");
  }
}

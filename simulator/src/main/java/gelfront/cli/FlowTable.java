// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.finding.Findings;
import gelfront.report.Comparison;
import java.util.List;
import java.util.Locale;

/** What conduction alone says and what the flow says, side by side. */
final class FlowTable {
  private final Console console;

  FlowTable(Console console) {
    this.console = console;
  }

  void print(Findings alone, Findings withFlow) {
    print(List.of("conduction alone", "with flow"), List.of(alone, withFlow));
  }

  /**
   * @param heads of the columns
   * @param all one each
   */
  void print(List<String> heads, List<Findings> all) {
    console.out().println();
    line("", heads);
    Comparison.of(all).forEach(r -> line(r.name(), r.values()));
  }

  private void line(String what, List<String> values) {
    StringBuilder s = new StringBuilder(String.format(Locale.ROOT, "  %-22s", what));
    values.forEach(v -> s.append(String.format(Locale.ROOT, " %-20s", v)));
    console.out().println(s.toString().stripTrailing());
  }
}

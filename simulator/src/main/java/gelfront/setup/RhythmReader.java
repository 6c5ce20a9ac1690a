// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.base.Dimension;
import gelfront.base.Quantities;
import java.util.List;
import java.util.OptionalDouble;

/** The table [series]: shots in a row. */
final class RhythmReader {
  private final CaseTable table;
  private final List<Statement> assumed;

  /**
   * @param assumed collects what is filled in
   */
  RhythmReader(CaseTable table, List<Statement> assumed) {
    this.table = table;
    this.assumed = assumed;
  }

  /** The first shot where the table is missing or wrong. */
  Rhythm read() {
    if (!table.present()) {
      return Rhythm.SINGLE;
    }
    int shots = table.count("shots", 1);
    OptionalDouble cycle = table.quantity("cycle", Dimension.TIME, 5, 7200);
    OptionalDouble idle = table.quantity("idle", Dimension.TIME, 0, 86_400);
    if (idle.isEmpty()) {
      String shown = Quantities.say("%.0f s", Rhythm.HANDLING);
      assumed.add(new Statement("series: idle", shown, "own guess, no source"));
    }
    double between = idle.orElse(Rhythm.HANDLING);
    OptionalDouble open = table.quantity("open", Dimension.TIME, 0, 86_400);
    if (open.isEmpty()) {
      String shown = Quantities.say("%.0f s", between);
      assumed.add(new Statement("series: open", shown, "all of the idle time"));
    }
    double apart = open.orElse(between);
    return sound(cycle, between, apart) ? new Rhythm(shots, between, cycle, apart) : Rhythm.SINGLE;
  }

  private boolean sound(OptionalDouble cycle, double idle, double open) {
    if (open > idle) {
      String words = "the mould lies open for %.0f s of only %.0f s between opening and next shot";
      table.mistake("open", Quantities.say(words, open, idle));
    }
    if (cycle.orElse(Double.POSITIVE_INFINITY) <= idle) {
      String words = "a cycle of %.0f s leaves no time to cool: %.0f s of it are idle";
      table.mistake("cycle", Quantities.say(words, cycle.getAsDouble(), idle));
    }
    return open <= idle && cycle.orElse(Double.POSITIVE_INFINITY) > idle;
  }
}

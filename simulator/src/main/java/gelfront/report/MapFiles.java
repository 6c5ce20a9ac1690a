// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.DentMap;
import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import java.util.List;
import java.util.Locale;

/** A map as a table for spreadsheets and as JSON. */
public final class MapFiles {
  private MapFiles() {}

  /** One line a run, x running first. */
  public static String csv(DentMap m) {
    StringBuilder s = new StringBuilder();
    s.append(PocketsCsv.cell(m.x().title())).append(',').append(PocketsCsv.cell(m.y().title()));
    s.append(
        ",severity,dent_low_mm,dent_high_mm,seen,cycle_s,gate_sets_s,unfed_percent,blamed,error\r\n");
    for (int r = 0; r < m.runs().size(); r++) {
      for (int c = 0; c < m.runs().get(r).size(); c++) {
        s.append(PocketsCsv.number(m.x().values().get(c), 4)).append(',');
        s.append(PocketsCsv.number(m.y().values().get(r), 4)).append(',');
        s.append(line(m, m.runs().get(r).get(c))).append("\r\n");
      }
    }
    return s.toString();
  }

  private static String line(DentMap m, Ran ran) {
    if (ran.outcome().isEmpty()) {
      return ",,,,,,,," + PocketsCsv.cell(ran.error());
    }
    RunOutcome o = ran.outcome().get();
    return String.join(
        ",",
        o.severity().name().toLowerCase(Locale.ROOT),
        PocketsCsv.number(o.dentLow() * 1e3, 4),
        PocketsCsv.number(o.dentHigh() * 1e3, 4),
        m.safe(ran) ? "no" : "yes",
        Answers.cells(o));
  }

  /** {@code gelfront map 1}. */
  public static String json(DentMap m) {
    ObjectNode n = Answers.open("gelfront map 1");
    n.put("name", m.name());
    n.put("level", m.level());
    Answers.number(n, "visible_dent_mm", m.visible() * 1e3);
    axis(n.putObject("x"), m.x());
    axis(n.putObject("y"), m.y());
    Answers.put(n.putObject("present"), m.present());
    ArrayNode runs = n.putArray("runs");
    for (int r = 0; r < m.runs().size(); r++) {
      row(runs, m, r);
    }
    return Answers.text(n);
  }

  private static void row(ArrayNode runs, DentMap m, int r) {
    List<Ran> row = m.runs().get(r);
    for (int c = 0; c < row.size(); c++) {
      ObjectNode one = runs.addObject();
      Answers.number(one, "x", m.x().values().get(c));
      Answers.number(one, "y", m.y().values().get(r));
      one.put("safe", m.safe(row.get(c)));
      Answers.put(one, row.get(c));
    }
  }

  private static void axis(ObjectNode n, DentMap.Axis a) {
    n.put("input", a.name());
    n.put("unit", a.unit());
    a.values().forEach(n.putArray("values")::add);
    Answers.number(n, "present", a.present().orElse(Double.NaN));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.SeriesAnswer;
import gelfront.answer.ShotRow;
import java.util.Locale;

/** A row of shots as a table for spreadsheets and as JSON. */
public final class SeriesFiles {
  private SeriesFiles() {}

  /** One line a shot. */
  public static String csv(SeriesAnswer a) {
    StringBuilder s = new StringBuilder();
    s.append("shot,mould_before_degC,block_opened_degC,severity,dent_low_mm,dent_high_mm,");
    s.append("gate_sets_s,firm_s,opened_s,cycle_s\r\n");
    a.shots().forEach(r -> s.append(line(String.valueOf(r.number()), r)));
    a.settled().ifPresent(r -> s.append(line("settled", r)));
    return s.toString();
  }

  private static String line(String which, ShotRow r) {
    return String.join(
            ",",
            which,
            PocketsCsv.number(r.mouldBefore(), 2),
            PocketsCsv.number(r.mouldOpened(), 2),
            r.severity().name().toLowerCase(Locale.ROOT),
            PocketsCsv.number(r.dentLow() * 1e3, 4),
            PocketsCsv.number(r.dentHigh() * 1e3, 4),
            PocketsCsv.number(r.gateSets(), 2),
            PocketsCsv.number(r.firmAt(), 1),
            PocketsCsv.number(r.openedAt(), 1),
            PocketsCsv.number(r.cycle(), 1))
        + "\r\n";
  }

  /** {@code gelfront series 1}. */
  public static String json(SeriesAnswer a) {
    ObjectNode n = Answers.open("gelfront series 1");
    n.put("name", a.name());
    n.put("level", a.level());
    n.put("verdict", SeriesPage.verdict(a));
    Answers.number(n, "visible_dent_mm", a.visible() * 1e3);
    Answers.number(n, "idle_s", a.idle());
    Answers.number(n, "open_s", a.open());
    Answers.number(n, "clock_s", a.clock().orElse(Double.NaN));
    n.put("throw_away", a.throwAway());
    n.put("repeats_from", a.repeatsFrom());
    Answers.number(n, "heat_imbalance", a.imbalance());
    var shots = n.putArray("shots");
    a.shots().forEach(r -> put(shots.addObject(), r));
    a.settled().ifPresent(r -> put(n.putObject("settled"), r));
    a.fastest().ifPresent(r -> put(n.putObject("fastest"), r));
    return Answers.text(n);
  }

  private static void put(ObjectNode n, ShotRow r) {
    if (r.number() > 0) {
      n.put("shot", r.number());
    }
    Answers.number(n, "mould_before_degC", r.mouldBefore());
    Answers.number(n, "block_opened_degC", r.mouldOpened());
    n.put("severity", r.severity().name().toLowerCase(Locale.ROOT));
    Answers.number(n, "dent_low_mm", r.dentLow() * 1e3);
    Answers.number(n, "dent_high_mm", r.dentHigh() * 1e3);
    Answers.number(n, "gate_sets_s", r.gateSets());
    Answers.number(n, "firm_s", r.firmAt());
    Answers.number(n, "opened_s", r.openedAt());
    Answers.number(n, "cycle_s", r.cycle());
    n.put("firm_when_opened", r.firm());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.Trials;
import gelfront.base.Entries;
import gelfront.material.Ranged;
import java.util.LinkedHashMap;
import java.util.Map;

/** What trial shots leave: a material table for later cases, JSON. */
public final class TrialsFiles {
  private TrialsFiles() {}

  /**
   * A table with one plastisol: no-flow as found with its interval, gelling moved along, all else
   * as the grade has it.
   *
   * @param name of the plastisol in later cases
   * @param grade that it was taken for
   * @param known the grade's values
   * @param date of the calibration
   */
  public static String materials(
      Trials t, String name, String grade, Map<String, Ranged> known, String date) {
    Map<String, Ranged> all = new LinkedHashMap<>(known);
    if (t.noFlow().told()) {
      String source = CalibrationFiles.source(t.log(), t.hash(), date);
      Trials.Known k = t.noFlow();
      all.put("no_flow", new Ranged(k.low(), k.value(), k.high(), source));
      double by = k.value() - Entries.of(known, "no_flow").typical();
      for (String key : new String[] {"gel_start", "gel_end"}) {
        Ranged r = Entries.of(known, key);
        String words = r.source() + ", moved with no_flow";
        all.put(key, new Ranged(r.low() + by, r.typical() + by, r.high() + by, words));
      }
    }
    return CalibrationFiles.table(all, "trial shots", name, grade);
  }

  /** {@code gelfront trials 1}. */
  public static String json(Trials t) {
    ObjectNode n = Answers.open("gelfront trials 1");
    n.put("name", t.name());
    n.put("log", t.log());
    n.put("log_sha256", t.hash());
    known(n.putObject("no_flow_degc"), t.noFlow());
    known(n.putObject("skin_reading"), t.skin());
    Answers.number(n, "correlation", t.correlation());
    n.put("inseparable", t.inseparable());
    var shots = n.putArray("shots");
    for (Trials.Shot s : t.shots()) {
      ObjectNode o = shots.addObject();
      o.put("line", s.line());
      o.put("shot", s.what());
      o.put("seen", s.seen());
      Answers.number(o, "dent_low_mm", s.low() * 1e3);
      Answers.number(o, "dent_high_mm", s.high() * 1e3);
      Answers.number(o, "gate_closes_s", s.closes());
      Answers.number(o, "chance", s.chance());
    }
    t.notes().forEach(n.putArray("notes")::add);
    return Answers.text(n);
  }

  private static void known(ObjectNode n, Trials.Known k) {
    Answers.number(n, "value", k.value());
    Answers.number(n, "low_90", k.low());
    Answers.number(n, "high_90", k.high());
    n.put("told", k.told());
  }
}

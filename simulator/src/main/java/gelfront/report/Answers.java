// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.finding.Constriction;
import gelfront.finding.Opening;
import gelfront.mesh.Vec3;
import java.util.Locale;

/** What all answers say of a run, as JSON: millimetres, millilitres, seconds, °C. */
final class Answers {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private Answers() {}

  /**
   * An answer's object, to be filled.
   *
   * @param schema its name and version
   */
  static ObjectNode open(String schema) {
    return JSON.createObjectNode().put("schema", schema);
  }

  /** As a file has it. */
  static String text(ObjectNode n) {
    try {
      return JSON.writeValueAsString(n) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Cells of a table that end a run's line: cycle, gate, unfed, blamed, and no error. */
  static String cells(RunOutcome o) {
    return String.join(
        ",",
        PocketsCsv.number(o.cycle(), 1),
        PocketsCsv.number(o.gateSets(), 2),
        PocketsCsv.number(o.unfedShare() * 100, 2),
        PocketsCsv.cell(blamed(o)),
        "");
  }

  static void put(ObjectNode n, Ran ran) {
    ran.outcome().ifPresentOrElse(o -> put(n, o), () -> n.put("error", ran.error()));
  }

  private static void put(ObjectNode n, RunOutcome o) {
    n.put("severity", o.severity().name().toLowerCase(Locale.ROOT));
    number(n, "dent_low_mm", o.dentLow() * 1e3);
    number(n, "dent_high_mm", o.dentHigh() * 1e3);
    o.dentPlace().ifPresent(p -> place(n, "dent_at_mm", p));
    o.blamed().ifPresent(c -> blamed(n.putObject("blamed"), c));
    opening(n, o.opening());
    number(n, "unfed_percent", o.unfedShare() * 100);
    number(n, "gate_sets_s", o.gateSets());
    number(n, "part_sets_s", o.partSets());
    number(n, "cycle_s", o.cycle());
    number(n, "feed_volume_ml", o.feedVolume() * 1e6);
    number(n, "hold_pressure_kpa", o.pressing().pressure() * 1e-3);
    number(n, "opening_force_n", o.pressing().force());
    n.put("opening_force_while", o.pressing().mostWhileFilling() ? "filling" : "holding");
    o.pressing().margin().ifPresent(m -> number(n, "clamping_margin_n", m));
    n.put("filling", o.filling().name().toLowerCase(Locale.ROOT));
  }

  private static void opening(ObjectNode n, Opening o) {
    if (o.byClock()) {
      number(n, "opened_s", o.at());
      number(n, "oval_least_mm", o.least() * 1e3);
      number(n, "oval_mm", o.oval() * 1e3);
      number(n, "shut_until_s", o.shutUntil());
    }
  }

  private static void blamed(ObjectNode n, Constriction c) {
    n.put("kind", c.kind().name().toLowerCase(Locale.ROOT));
    place(n, "at_mm", c.place());
    number(n, "width_mm", c.width() * 1e3);
    number(n, "closed_at_s", c.closedAt());
  }

  static void place(ObjectNode n, String key, Vec3 p) {
    var a = n.putArray(key);
    for (double v : new double[] {p.x(), p.y(), p.z()}) {
      a.add(rounded(v * 1e3));
    }
  }

  /** A number, or null where it is none. */
  static void number(ObjectNode n, String key, double v) {
    if (Double.isFinite(v)) {
      n.put(key, rounded(v));
    } else {
      n.putNull(key);
    }
  }

  static double rounded(double v) {
    return v == 0
        ? 0
        : new java.math.BigDecimal(v).round(new java.math.MathContext(6)).doubleValue();
  }

  /** "gate" or nothing. */
  static String blamed(RunOutcome o) {
    return o.blamed().map(c -> Say.culprit(c.kind())).orElse("");
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.Calibrated;
import gelfront.answer.Calibrated.Found;
import gelfront.base.Entries;
import gelfront.material.Ranged;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a calibration leaves: a material table for later cases, JSON. */
public final class CalibrationFiles {
  private static final int HASH = 12;

  private CalibrationFiles() {}

  /**
   * A table with one plastisol: what was found with its interval, all else as the grade has it.
   *
   * @param name of the plastisol in later cases
   * @param grade that it was taken for
   * @param known the grade's values
   * @param date of the calibration
   */
  public static String materials(
      Calibrated c, String name, String grade, Map<String, Ranged> known, String date) {
    String source = source(c.log(), c.hash(), date);
    Map<String, Ranged> all = new LinkedHashMap<>(known);
    found(c, "conductivity")
        .ifPresent(f -> all.put("conductivity", new Ranged(f.low(), f.value(), f.high(), source)));
    found(c, "heat of gelling")
        .ifPresent(
            f ->
                all.put(
                    "latent_heat",
                    new Ranged(1e3 * f.low(), 1e3 * f.value(), 1e3 * f.high(), source)));
    found(c, "middle of gelling").ifPresent(f -> gelling(all, f, source));
    return table(all, "a cooling curve", name, grade);
  }

  /** Where a value is from. */
  static String source(String log, String hash, String date) {
    return "fitted to " + log + " (SHA-256 " + hash.substring(0, HASH) + "...), " + date;
  }

  /**
   * A material table's text.
   *
   * @param from in words
   */
  static String table(Map<String, Ranged> all, String from, String name, String grade) {
    StringBuilder s = new StringBuilder();
    s.append("# Plastisol from " + from + ". Name it in a case: materials = \"this file\", and\n");
    s.append("# [plastisol] grade = \"").append(name).append("\".\n");
    s.append("[plastisol.").append(name).append("]\n");
    s.append("about = \"as ").append(grade).append(", but for what was measured\"\n");
    all.forEach((key, r) -> s.append(line(key, r)));
    return s.toString();
  }

  private static Optional<Found> found(Calibrated c, String name) {
    return c.found().stream().filter(f -> f.name().equals(name)).findFirst();
  }

  /** Start and end keep their distance; no-flow, which no cooling curve tells, goes with them. */
  private static void gelling(Map<String, Ranged> all, Found f, String source) {
    double half =
        0.5 * (Entries.of(all, "gel_start").typical() - Entries.of(all, "gel_end").typical());
    all.put("gel_start", moved(f, half, source));
    all.put("gel_end", moved(f, -half, source));
    Ranged known = Entries.of(all, "no_flow");
    double by = f.value() - f.before();
    String moved = known.source() + ", moved with the fitted gelling";
    all.put(
        "no_flow", new Ranged(known.low() + by, known.typical() + by, known.high() + by, moved));
  }

  private static Ranged moved(Found f, double by, String source) {
    return new Ranged(f.low() + by, f.value() + by, f.high() + by, source);
  }

  private static String line(String key, Ranged r) {
    return String.format(
        Locale.ROOT,
        "%s = [%s, %s, %s, \"%s\"]%n",
        key,
        number(r.low()),
        number(r.typical()),
        number(r.high()),
        r.source().replace("\\", "\\\\").replace("\"", "\\\""));
  }

  private static String number(double v) {
    return new java.math.BigDecimal(v).round(new java.math.MathContext(5)).toString();
  }

  /** {@code gelfront calibration 1}. */
  public static String json(Calibrated c) {
    ObjectNode n = Answers.open("gelfront calibration 1");
    n.put("name", c.name());
    n.put("log", c.log());
    n.put("log_sha256", c.hash());
    ArrayNode found = n.putArray("found");
    for (Found f : c.found()) {
      ObjectNode one = found.addObject();
      one.put("key", f.key());
      one.put("name", f.name());
      one.put("unit", f.unit());
      Answers.number(one, "value", f.value());
      Answers.number(one, "low_90", f.low());
      Answers.number(one, "high_90", f.high());
      Answers.number(one, "before", f.before());
    }
    ArrayNode untold = n.putArray("not_told");
    c.untold().forEach(u -> untold.addObject().put("name", u.name()).put("why", u.why()));
    ArrayNode correlation = n.putArray("correlation");
    for (double[] row : c.correlation()) {
      ArrayNode r = correlation.addArray();
      for (double v : row) {
        r.add(v);
      }
    }
    Answers.number(n, "rms_k", c.rms());
    Answers.number(n, "residuals_follow", c.follows());
    c.notes().forEach(n.putArray("notes")::add);
    curves(n, c);
    return Answers.text(n);
  }

  private static void curves(ObjectNode n, Calibrated c) {
    ArrayNode t = n.putArray("time_s");
    ArrayNode read = n.putArray("read_degc");
    ArrayNode fitted = n.putArray("fitted_degc");
    for (int i = 0; i < c.times().length; i++) {
      t.add(c.times()[i]);
      read.add(c.readings()[i]);
      fitted.add(c.fitted()[i]);
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.answer.Band;
import gelfront.answer.Doubt;
import gelfront.answer.RunOutcome;
import java.util.Arrays;
import java.util.List;

/** Plausible cases as a table for spreadsheets and as JSON. */
public final class DoubtFiles {
  /** Name of the table of curves. */
  public static final String CURVES = "doubt-curves.csv";

  private DoubtFiles() {}

  /** One line a plausible case; depths as calculated and as anchored. */
  public static String csv(Doubt d) {
    StringBuilder s = new StringBuilder();
    for (Doubt.Unknown u : d.unknowns()) {
      s.append(PocketsCsv.cell(u.name() + ", " + u.unit())).append(',');
    }
    s.append("dent_low_mm,dent_high_mm,anchored_low_mm,anchored_high_mm,cycle_s,gate_sets_s,");
    s.append("unfed_percent,blamed,error\r\n");
    for (Doubt.PlausibleCase c : d.cases()) {
      for (double v : c.values()) {
        s.append(v).append(',');
      }
      s.append(
          c.ran()
              .outcome()
              .map(o -> line(d, o))
              .orElseGet(() -> ",,,,,,,," + PocketsCsv.cell(c.ran().error())));
      s.append("\r\n");
    }
    return s.toString();
  }

  private static String line(Doubt d, RunOutcome o) {
    return String.join(
        ",",
        PocketsCsv.number(o.dentLow() * 1e3, 4),
        PocketsCsv.number(o.dentHigh() * 1e3, 4),
        PocketsCsv.number(d.low(o) * 1e3, 4),
        PocketsCsv.number(d.high(o) * 1e3, 4),
        Answers.cells(o));
  }

  /** {@code gelfront doubt 1}. */
  public static String json(Doubt d) {
    ObjectNode n = Answers.open("gelfront doubt 1");
    n.put("name", d.name());
    n.put("level", d.level());
    Answers.number(n, "visible_dent_mm", d.visible() * 1e3);
    n.put("cases", d.cases().size());
    n.put("failed", d.failed());
    n.put("may_dent", d.mayDent());
    n.put("dents_by_the_mildest_reading", d.dentsAnyway());
    ObjectNode depth = n.putObject("deepest_dent_mm");
    for (int percent : new int[] {5, 25, 50, 75, 95}) {
      Answers.number(depth, "p" + percent, d.depthAt(percent / 100.0) * 1e3);
    }
    Answers.number(n, "anchor_mm", d.anchor() * 1e3);
    Answers.put(n.putObject("as_it_is"), d.typical());
    Answers.put(n.putObject("as_it_is_at_normal_level"), d.finer());
    Answers.put(n.putObject("as_it_is_without_flow"), d.conduction());
    var forks = n.putArray("model_otherwise");
    d.forks().forEach(f -> Answers.put(forks.addObject().put("how", f.name()), f.ran()));
    n.put("influence_is", d.method());
    ArrayNode unknowns = n.putArray("unknowns");
    for (Doubt.Influence i : d.influences()) {
      unknown(unknowns.addObject(), d.unknowns().get(i.unknown()), i);
    }
    d.known().forEach(n.putArray("taken_as_stated")::add);
    ArrayNode cases = n.putArray("plausible_cases");
    for (Doubt.PlausibleCase c : d.cases()) {
      ObjectNode one = cases.addObject();
      ArrayNode values = one.putArray("values");
      c.values().forEach(values::add);
      Answers.put(one, c.ran());
    }
    ArrayNode bands = n.putArray("curves");
    Band.of(d).forEach(b -> band(bands.addObject(), b));
    return Answers.text(n);
  }

  private static void band(ObjectNode n, Band b) {
    n.put("key", b.key());
    n.put("label", b.label());
    n.put("unit", b.unit());
    n.put("cases", b.cases());
    numbers(n.putArray("time_s"), b.time());
    numbers(n.putArray("p5"), b.low());
    numbers(n.putArray("p50"), b.middle());
    numbers(n.putArray("p95"), b.high());
  }

  private static void numbers(ArrayNode n, double[] values) {
    for (double v : values) {
      n.add(Answers.rounded(v));
    }
  }

  /** Bands of all curves, one line a moment; empty where a curve's band has ended. */
  public static String curvesCsv(Doubt d) {
    List<Band> bands = Band.of(d);
    StringBuilder s = new StringBuilder("time_s");
    for (Band b : bands) {
      for (String p : new String[] {"5 %", "50 %", "95 %"}) {
        s.append(',').append(PocketsCsv.cell(b.key() + " [" + b.unit() + "] " + p));
      }
    }
    s.append("\r\n");
    double[] all =
        bands.stream().flatMapToDouble(b -> Arrays.stream(b.time())).sorted().distinct().toArray();
    for (double t : all) {
      s.append(PocketsCsv.number(t, 3));
      bands.forEach(b -> cells(s, b, Arrays.binarySearch(b.time(), t)));
      s.append("\r\n");
    }
    return s.toString();
  }

  private static void cells(StringBuilder s, Band b, int at) {
    for (double[] v : new double[][] {b.low(), b.middle(), b.high()}) {
      s.append(',').append(at < 0 ? "" : PocketsCsv.number(v[at], 4));
    }
  }

  private static void unknown(ObjectNode n, Doubt.Unknown u, Doubt.Influence i) {
    n.put("name", u.name());
    n.put("unit", u.unit());
    n.put("low", u.low());
    n.put("likely", u.likely());
    n.put("high", u.high());
    n.put("source", u.source());
    n.put("value_at", i.unknown());
    Answers.number(n, "influence", i.value());
    Answers.number(n, "influence_low", i.low());
    Answers.number(n, "influence_high", i.high());
    n.put("told_from_chance", i.told());
  }
}

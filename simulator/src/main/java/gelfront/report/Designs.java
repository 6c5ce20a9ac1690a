// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.result.Inputs;
import gelfront.result.StoredRun;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Calculated designs side by side.
 *
 * @param all two at least
 */
public record Designs(List<Design> all) {
  /** How the level of calculation is called among the inputs. */
  private static final String LEVEL = "numerics: level";

  public Designs {
    all = List.copyOf(all);
    if (all.size() < 2) {
      throw new IllegalArgumentException("one design has nothing to be compared with");
    }
  }

  /**
   * @param label short, for heads of tables
   * @param run what was calculated
   */
  public record Design(String label, StoredRun run) {
    Findings findings() {
      return run.findings();
    }

    /** Metres, high bound of the deepest dent. */
    double dent() {
      return findings().pockets().stream()
          .map(Pocket::dents)
          .filter(d -> !d.isEmpty())
          .findFirst()
          .map(d -> d.get(0).depthHigh())
          .orElse(0.0);
    }
  }

  /**
   * Inputs that are not the same in all, stated or assumed: one value each, "" where there is none.
   */
  public List<Comparison.Row> changed() {
    List<Map<String, String>> values = all.stream().map(d -> values(d.run().inputs())).toList();
    Set<String> names = new LinkedHashSet<>();
    values.forEach(v -> names.addAll(v.keySet()));
    List<Comparison.Row> rows = new ArrayList<>();
    for (String name : names) {
      List<String> row = values.stream().map(v -> v.getOrDefault(name, "")).toList();
      if (row.stream().distinct().count() > 1) {
        rows.add(new Comparison.Row(name, row));
      }
    }
    return rows;
  }

  private static Map<String, String> values(Inputs inputs) {
    Map<String, String> values = told(inputs.given());
    told(inputs.assumed()).forEach(values::putIfAbsent);
    values.remove("name");
    return values;
  }

  /** By name; what older results tell several times by one name stands side by side. */
  private static Map<String, String> told(List<Inputs.Line> lines) {
    Map<String, String> told = new LinkedHashMap<>();
    lines.forEach(l -> told.merge(l.name(), l.value(), (a, b) -> a + ", " + b));
    return told;
  }

  /** What came out, a row for each figure. */
  public List<Comparison.Row> outcomes() {
    List<Findings> findings = all.stream().map(Design::findings).toList();
    List<Comparison.Row> rows = new ArrayList<>(Comparison.of(findings));
    rows.add(
        new Comparison.Row(
            "to blame",
            findings.stream()
                .map(f -> f.pockets().isEmpty() ? "nothing" : culprit(f.pockets().get(0)))
                .toList()));
    rows.add(
        new Comparison.Row(
            "firm enough to open", findings.stream().map(f -> Say.time(f.firmAt())).toList()));
    rows.add(
        new Comparison.Row(
            "gate and sprue to trim",
            findings.stream().map(f -> Say.ml(f.amounts().feedVolume())).toList()));
    rows.add(
        new Comparison.Row(
            "melt a shot", findings.stream().map(f -> Say.ml(f.amounts().shotVolume())).toList()));
    return rows;
  }

  private static String culprit(Pocket p) {
    return Say.culprit(p.constriction().kind());
  }

  /** Which is best, by verdict and then by depth; and what makes the comparison lame. */
  public String verdict() {
    Design best = all.get(0);
    for (Design d : all) {
      int by = d.findings().severity().compareTo(best.findings().severity());
      best = by < 0 || (by == 0 && d.dent() < best.dent()) ? d : best;
    }
    double least = best.dent();
    long alike = all.stream().filter(d -> Math.abs(d.dent() - least) < 1e-6).count();
    String depth = Say.fixed(least * 1e3, 2) + " mm";
    String words =
        alike > 1
            ? alike + " designs come out alike, with dents of " + depth + " at most."
            : best.label()
                + " comes out best: "
                + Say.severity(best.findings().severity())
                + ", "
                + depth
                + " at most.";
    boolean levels = changed().stream().anyMatch(r -> r.name().equals(LEVEL));
    return levels
        ? words + " Mind: they were calculated at different levels, which alone moves the figures."
        : words;
  }
}

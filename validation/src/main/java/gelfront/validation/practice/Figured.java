// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** practice.json, the figures of the last run; and the table of what they say. */
final class Figured {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Book book = new Book();
  private final JsonNode root;

  Figured() {
    try (InputStream in = Book.class.getResourceAsStream("/gelfront/validation/practice.json")) {
      root = JSON.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Figures of all variants. */
  Map<String, Figures> found(Practice p, String design, String condition) {
    Map<String, Figures> found = new LinkedHashMap<>();
    root.path(p.says())
        .path(design)
        .path(condition)
        .properties()
        .forEach(e -> found.put(e.getKey(), JSON.convertValue(e.getValue(), Figures.class)));
    return found;
  }

  /** A claim's line: by design and condition what the computation says to it. */
  String line(Practice p, Claim claim, Measure by) {
    StringBuilder line =
        new StringBuilder("| " + claim.words() + " | " + by.name().toLowerCase(Locale.ROOT) + " |");
    for (String condition : book.conditions(p)) {
      List<String> signs = new ArrayList<>();
      for (String design : book.designs()) {
        signs.add(sign(claim, found(p, design, condition), by));
      }
      line.append(" " + String.join(", ", signs) + " |");
    }
    return line.toString();
  }

  /** The outcome with the measures of the claim's variants. */
  private static String sign(Claim claim, Map<String, Figures> found, Measure by) {
    String sign =
        switch (claim.outcome(found, by)) {
          case AGREES -> "+";
          case INDIFFERENT -> "0";
          case DISAGREES -> "−";
        };
    List<String> values = new ArrayList<>();
    for (String v : claim.variants()) {
      values.add(String.format(Locale.ROOT, "%.2f", by.of(found.get(v))));
    }
    return sign + " " + String.join("/", values);
  }

  /** practice.md. */
  List<String> table() {
    List<String> lines = new ArrayList<>();
    lines.add("# Common practice, computed");
    lines.add("");
    lines.add(
        "No source: what people in the trade say, held against the tool. + agrees, 0 indifferent, −"
            + " disagrees, for the designs "
            + String.join(" and ", book.designs())
            + "; behind it the measure of each variant in the claim's order. Unfed: % of the part's"
            + " volume. Dent: mm, middle of the deepest dent's bounds. Sinks: mm that the sprue"
            + " sinks after the part's cut-off. Less than 5 %, 0.02 % of volume, 0.02 mm of dent or"
            + " 0.1 mm of sinking is no difference. Gate 4 x 3 mm, sprue 10 x 30 mm, aluminium at 30"
            + " °C, on its side, shot 165.6 °C, plunger held 5 s at 20 kPa unless said; voxels of 0.5"
            + " mm. Cases: practices.json; figures, with what closed: practice.json.");
    for (Practice p : book.practices()) {
      lines.add("");
      lines.add("## " + p.says());
      lines.add("");
      if (p.cannot().isEmpty()) {
        rows(p, lines);
        lines.add("");
        lines.add(p.found());
      } else {
        lines.add("Can't be said in a case file yet. " + p.cannot());
      }
    }
    return lines;
  }

  private void rows(Practice p, List<String> lines) {
    List<String> conditions = book.conditions(p);
    lines.add("| claim | by | " + String.join(" | ", conditions) + " |");
    lines.add("|---".repeat(conditions.size() + 2) + "|");
    for (Claim claim : p.claims()) {
      for (Measure by : p.measures()) {
        lines.add(line(p, claim, by));
      }
    }
  }
}

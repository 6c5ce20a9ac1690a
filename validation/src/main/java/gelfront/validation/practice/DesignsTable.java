// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.base.Entries;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/** designs.json, the figures of {@link DesignsRun}, and what they say. */
final class DesignsTable {
  static final String AS_IT_IS = "as it is";

  private final JsonNode root;

  DesignsTable() {
    try (InputStream in = Book.class.getResourceAsStream("/gelfront/validation/designs.json")) {
      root = new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Number of each design that dents, to its variants. */
  Map<Integer, Map<String, Figures>> dented() {
    Map<Integer, Map<String, Figures>> all = new TreeMap<>();
    root.get("designs")
        .properties()
        .forEach(
            e -> {
              Map<String, Figures> of = figures(e.getValue());
              if (of.get(AS_IT_IS).dentHighMm() >= DesignsRun.SEEN) {
                all.put(Integer.valueOf(e.getKey()), of);
              }
            });
    return all;
  }

  /** Each recipe of the thin nose. */
  Map<String, Figures> recipes() {
    return figures(root.get("recipes"));
  }

  private static Map<String, Figures> figures(JsonNode of) {
    Map<String, Figures> all = new LinkedHashMap<>();
    of.properties()
        .forEach(
            e -> all.put(e.getKey(), new ObjectMapper().convertValue(e.getValue(), Figures.class)));
    return all;
  }

  /** Designs whose deepest dent a variant leaves shallower, alike and deeper. */
  int[] against(String variant) {
    return against(variant, f -> true);
  }

  /**
   * As above, of some designs.
   *
   * @param which by what came of the variant
   */
  int[] against(String variant, Predicate<Figures> which) {
    int[] n = new int[3];
    dented().values().stream()
        .filter(of -> which.test(Entries.of(of, variant)))
        .forEach(
            of -> {
              Claim less = new Claim("less", List.of(variant, AS_IT_IS));
              n[less.outcome(of, Measure.HIGH).ordinal()]++;
            });
    return n;
  }

  /** Designs that a kind of constriction is blamed for. */
  long blamed(String cause) {
    return dented().values().stream().filter(f -> f.get(AS_IT_IS).cause().equals(cause)).count();
  }

  /** As Markdown. */
  List<String> lines() {
    List<String> out = new ArrayList<>();
    int count = dented().size();
    out.add("# Generated designs that dent, and a thin nose into a fat body");
    out.add("");
    out.add(
        "No source: common practice, held against the tool. "
            + count
            + " bodies drawn by chance that dent (45 to 80 mm long, 4 to 16 mm thick, gate 2.5 to"
            + " 4.5 x 3 mm at the nose, sprue 7 to 10 x 25 mm, aluminium at 35 °C on its side, shot 165 °C,"
            + " plunger held 0, 4 or 8 s; level quick). Dent: its high bound, mm; less than 5 % or"
            + " 0.02 mm is no difference. `DesignsRun` computes it anew.");
    out.add("");
    out.add(
        String.format(
            Locale.ROOT,
            "**Which constriction is to blame?** Practice says the gate, mostly: the gate in %d of"
                + " %d, a neck in %d, the sprue in %d. Agrees.",
            blamed("gate"),
            count,
            blamed("neck"),
            blamed("sprue")));
    out.add("");
    out.add("| change | shallower | alike | deeper |");
    out.add("|---|---|---|---|");
    for (String variant :
        List.of("gate +1 mm", "gate +2 mm", "sprue as wide as the part", "fed at the other end")) {
      int[] n = against(variant);
      out.add("| " + variant + " | " + n[0] + " | " + n[1] + " | " + n[2] + " |");
    }
    out.add("");
    out.add(
        "A gate opened by 1 to 2 mm: agrees; where it makes no dent shallower, a neck is to blame by"
            + " then. A sprue about as wide as the part is thick: indifferent"
            + " in most, shallower in some, deeper in none; the gate closes first all the same, so a wide"
            + " sprue alone cures nothing here. The other end: indifferent; both ends of these"
            + " bodies are thin, so they don't try whether a thick end should be fed first:"
            + " `cone-thick-end` and `cone-thin-end` do.");
    out.add("");
    recipes(out);
    return out;
  }

  private void recipes(List<String> out) {
    double least = recipes().values().stream().mapToDouble(Figures::dentHighMm).min().orElse(0);
    long clear = recipes().values().stream().filter(f -> f.dentHighMm() < DesignsRun.SEEN).count();
    out.add(
        String.format(
            Locale.ROOT,
            "**A nose of 5 mm into a body of 16 mm, gate 4 mm at the nose.** Practice says that no"
                + " recipe clears it: of %d from 150 to 175 °C, mould 20 to 80 °C, held 0 to 30 s,"
                + " %d leave less than %.1f mm; the least is %.2f mm. Agrees.",
            recipes().size(),
            clear,
            DesignsRun.SEEN,
            least));
    out.add("");
    out.add("| recipe | dent, mm | blamed |");
    out.add("|---|---|---|");
    recipes()
        .forEach(
            (name, f) ->
                out.add(
                    String.format(
                        Locale.ROOT,
                        "| %s | %.2f to %.2f | %s |",
                        name,
                        f.dentLowMm(),
                        f.dentHighMm(),
                        f.cause())));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Common practice, no source, on generated designs: designs.json holds the figures of the last run
 * of {@link DesignsRun}, designs.md what they say. {@code -Dslow=true} computes all of it again.
 */
final class DesignsTest {
  /** Of a figure, between machines and roundings. */
  private static final double SHARE = 0.02;

  private final DesignsTable stored = new DesignsTable();

  @Test
  void theTableSaysWhatTheFiguresSay() throws IOException {
    Files.write(Path.of("target", "designs.md"), stored.lines());
    try (InputStream in = Book.class.getResourceAsStream("/gelfront/validation/designs.md")) {
      String want = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(want.lines().toList(), stored.lines());
    }
  }

  @Test
  void theGateIsToBlameMostlyAndNoRecipeClearsAThinNose() {
    assertTrue(stored.dented().size() >= 12);
    assertTrue(stored.blamed("gate") > 0.5 * stored.dented().size());
    assertEquals(stored.dented().size(), stored.against("gate +2 mm")[0], "shallower");
    assertTrue(stored.recipes().values().stream().allMatch(f -> f.dentHighMm() >= DesignsRun.SEEN));
  }

  /** One of them anew on every build. */
  @Test
  void aDesignComesOutAsRecorded() {
    int first = stored.dented().keySet().iterator().next();
    same(
        stored.dented().get(first).get(DesignsTable.AS_IT_IS),
        Figures.of(GeneratedDesign.of(first).text()),
        "design " + first);
  }

  @Test
  @EnabledIfSystemProperty(named = "slow", matches = "true")
  void everyDesignAndRecipeComesOutAsRecorded() {
    stored
        .dented()
        .forEach(
            (number, of) -> {
              GeneratedDesign d = GeneratedDesign.of(number);
              Map<String, GeneratedDesign> variants =
                  Map.of(
                      DesignsTable.AS_IT_IS,
                      d,
                      "gate +1 mm",
                      d.gate(d.gate() + 1),
                      "gate +2 mm",
                      d.gate(d.gate() + 2),
                      "sprue as wide as the part",
                      d.sprue(d.thickest()),
                      "fed at the other end",
                      d.fedAtOtherEnd());
              variants.forEach(
                  (name, v) ->
                      same(of.get(name), Figures.of(v.text()), "design " + number + ", " + name));
            });
    same(
        stored.recipes().get("shot 150 °C, mould 20 °C, hold 15 s"),
        Figures.of(DesignsRun.thinNose(150, 20, 15)),
        "thin nose");
  }

  private static void same(Figures then, Figures now, String where) {
    assertEquals(then.cause(), now.cause(), where);
    assertEquals(then.unfedPercent(), now.unfedPercent(), SHARE * then.unfedPercent(), where);
    assertEquals(then.dentHighMm(), now.dentHighMm(), 0.01 + SHARE * then.dentHighMm(), where);
  }
}

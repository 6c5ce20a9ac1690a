// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
    int all = stored.dented().size();
    assertTrue(all >= 12);
    check("dents that the gate is blamed for, mostly", all)
        .got((double) stored.blamed("gate"))
        .within(0.5);
    int[] wider = stored.against("gate +2 mm", f -> !f.cause().equals("neck"));
    check(
            "designs that a gate wider by 2 mm makes shallower, but for those that a neck is then to"
                + " blame for",
            wider[0] + wider[1] + wider[2])
        .got(wider[0])
        .within(0);
    int[] necks = stored.against("gate +2 mm", f -> f.cause().equals("neck"));
    check("of those with a neck: deeper", 0).got(necks[2]).within(0, 1);
    assertTrue(necks[0] + necks[1] <= 0.25 * all, "most are not left to a neck");
    long clear =
        stored.recipes().values().stream().filter(f -> f.dentHighMm() < DesignsRun.SEEN).count();
    check("recipes that clear a nose of 5 mm into a body of 16 mm", 0)
        .got((double) clear)
        .within(0, 1);
  }

  private static Check check(String what, int expected) {
    return Check.of(what, "common practice, no source")
        .stored("designs.json", "`DesignsRun`")
        .expected(expected);
  }

  /** Told, not asked for: that either helps. */
  @Test
  void wideSpruesAndTheOtherEndAreTold() {
    int all = stored.dented().size();
    for (String variant :
        List.of("gate +1 mm", "sprue as wide as the part", "fed at the other end")) {
      int[] n = stored.against(variant);
      String found = n[0] + " shallower, " + n[1] + " alike, " + n[2] + " deeper";
      Check.of(variant, "common practice, no source")
          .stored("designs.json", "`DesignsRun`")
          .told("all " + all + " shallower", found, n[0] == all ? "agrees" : "agrees in part");
    }
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

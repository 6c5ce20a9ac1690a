// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.base.Changed;
import gelfront.result.Inputs;
import gelfront.result.StoredRun;
import gelfront.result.SyntheticRun;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Designs side by side. */
final class ComparePageTest {
  private static final StoredRun DENTED = SyntheticRun.small();
  private static final StoredRun CURED = cured();

  private static StoredRun cured() {
    StoredRun r = SyntheticRun.withPockets(DENTED, List.of());
    return with(
        r,
        new Inputs(
            r.inputs().given().stream()
                .map(l -> l.name().equals("Gate") ? new Inputs.Line("Gate", "round, 8 mm", "") : l)
                .toList(),
            r.inputs().assumed()));
  }

  private static StoredRun with(StoredRun r, Inputs in) {
    return Changed.of(r, "inputs", in);
  }

  private static Designs designs(StoredRun... runs) {
    List<Designs.Design> all = new java.util.ArrayList<>();
    for (StoredRun r : runs) {
      all.add(new Designs.Design("design <" + (all.size() + 1) + ">", r));
    }
    return new Designs(all);
  }

  @Test
  void onlyWhatDiffersIsChanged() {
    List<Comparison.Row> changed = designs(DENTED, CURED).changed();
    assertEquals(1, changed.size());
    assertEquals("Gate", changed.get(0).name());
    assertEquals("round, 8 mm", changed.get(0).values().get(1));
    assertTrue(designs(DENTED, DENTED).changed().isEmpty());
  }

  @Test
  void whatIsAssumedInOneAndStatedInTheOtherIsHeldTogether() {
    Inputs.Line said = new Inputs.Line("numerics: level", "quick", "");
    Inputs.Line assumed = new Inputs.Line("numerics: level", "normal", "a fair balance");
    StoredRun a = with(DENTED, new Inputs(List.of(said), List.of()));
    StoredRun b = with(DENTED, new Inputs(List.of(), List.of(assumed)));
    assertEquals(List.of("quick", "normal"), designs(a, b).changed().get(0).values());
    assertTrue(designs(a, b).verdict().contains("different levels"));
    assertFalse(designs(a, a).verdict().contains("different levels"));
  }

  /** As older results tell repeated tables. */
  @Test
  void whatIsToldTwiceByOneNameHidesNoChange() {
    Inputs.Line last = new Inputs.Line("filing: depth", "0.3 mm", "");
    StoredRun a =
        with(
            DENTED,
            new Inputs(List.of(new Inputs.Line(last.name(), "0.1 mm", ""), last), List.of()));
    StoredRun b =
        with(
            DENTED,
            new Inputs(List.of(new Inputs.Line(last.name(), "0.2 mm", ""), last), List.of()));

    assertEquals(
        List.of("0.1 mm, 0.3 mm", "0.2 mm, 0.3 mm"), designs(a, b).changed().get(0).values());
  }

  @Test
  void theDesignWithoutADentIsBest() {
    assertTrue(designs(DENTED, CURED).verdict().startsWith("design <2> comes out best"));
    assertTrue(designs(DENTED, DENTED).verdict().startsWith("2 designs come out alike"));
    assertThrows(IllegalArgumentException.class, () -> designs(DENTED));
  }

  @Test
  void picturesHaveOneSizeAndOneColourScale() {
    String page = ComparePage.of(designs(DENTED, CURED));
    String[] boxes = page.split("class=\"wide\" viewBox=\"", -1);
    assertEquals(3, boxes.length);
    assertEquals(boxes[1].split("\"", -1)[0], boxes[2].split("\"", -1)[0]);
    assertEquals(2, page.split("class=\"legend\"", -1).length);
    assertTrue(page.contains("img-src data:") && !page.contains("src=\"http"));
    assertTrue(page.contains("design &lt;1&gt;") && !page.contains("design <1>"));
  }

  @Test
  void jsonHoldsADesignEach() throws Exception {
    JsonNode n = new ObjectMapper().readTree(ComparePage.json(designs(DENTED, CURED)));
    assertEquals(2, n.get("designs").size());
    assertEquals(0.6, n.get("designs").get(0).get("dent_high_mm").asDouble(), 1e-6);
    assertEquals(0, n.get("designs").get(1).get("dent_high_mm").asDouble());
    assertEquals("Gate", n.get("changed").get(0).get("input").asText());
  }
}

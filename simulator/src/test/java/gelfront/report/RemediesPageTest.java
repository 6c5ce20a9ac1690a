// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.answer.Ran;
import gelfront.answer.Remedies;
import gelfront.answer.Remedies.Effort;
import gelfront.answer.Remedies.Line;
import gelfront.answer.RunOutcome.Pressing;
import gelfront.answer.SomeRun;
import gelfront.base.Changed;
import gelfront.base.Told;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Remedies as people and scripts read them. */
final class RemediesPageTest {
  private static Ran ran(double dentMm, double cycle, double trimMl, double held) {
    return Ran.well(
        Changed.of(
            SomeRun.dent(dentMm, dentMm),
            "cycle",
            cycle,
            "feedVolume",
            trimMl * 1e-6,
            "pressing",
            new Pressing(20e3, 50, 0, OptionalDouble.of(held))));
  }

  private static Line line(Effort e, String label, Ran ran, String doubt) {
    return new Line(e, Told.of(label), "Mind <this>.", ran, Optional.empty(), doubt);
  }

  private static Remedies remedies() {
    Line hold = line(Effort.RECIPE, "hold", ran(0.55, 100, 1, 40), "the mould opens");
    Line gate = line(Effort.FILE_WORK, "gate", ran(0.15, 108, 1.4, 80), "").at(ran(0.16, 1, 1, 80));
    Line bad = line(Effort.REDESIGN, "bush", Ran.failed("no <room>"), "it gives no result");
    return new Remedies(
        "bait",
        0.2e-3,
        "quick",
        ran(0.6, 100, 1, 80),
        Optional.of(ran(0.5, 100, 1, 80)),
        List.of(hold, gate, bad),
        List.of(),
        List.of(new Remedies.Left(Told.of("a second gate"), "no")),
        Optional.of(gate),
        Told.of("Gate: it does."));
  }

  @Test
  void aLineSaysWhatItLeavesAndCosts() {
    Remedies r = remedies();
    List<String> gate = RemediesFiles.cells(r, r.lines().get(1));
    assertEquals(
        List.of("gate", "0.15 mm", "0.16 mm", "+8 s", "+0.4 ml", "50 N, 30 N to spare", "cures"),
        gate);
    Pressing fills = new Pressing(20e3, 50, 60, OptionalDouble.of(80));
    Ran filled =
        Ran.well(Changed.of(r.lines().get(1).quick().outcome().orElseThrow(), "pressing", fills));
    Line asItFills = line(Effort.FILE_WORK, "gate", filled, "");
    assertEquals("60 N as it fills, 20 N to spare", RemediesFiles.cells(r, asItFills).get(5));
    List<String> hold = RemediesFiles.cells(r, r.lines().get(0));
    assertEquals("50 N, OPENS the mould", hold.get(5));
    assertEquals("changes little, but the mould opens", hold.get(6));
    assertEquals("same", hold.get(3));
    List<String> bad = RemediesFiles.cells(r, r.lines().get(2));
    assertEquals(List.of("no result", "no <room>"), List.of(bad.get(1), bad.get(6)));
    assertEquals(RemediesFiles.HEADS.size(), RemediesFiles.before(r).size());
  }

  @Test
  void thePageTellsAllOfItAndEscapes() {
    String page = RemediesPage.of(remedies());
    assertTrue(page.contains("Gate: it does.") && page.contains("can be cured"));
    assertTrue(page.contains("Mind &lt;this&gt;.") && page.contains("no &lt;room&gt;"));
    assertFalse(page.contains("<this>") || page.contains("<room>"));
    assertTrue(page.contains("a second gate: no.") && page.contains("190 °C"));
  }

  @Test
  void jsonKeepsEffortCostAndDoubt() throws Exception {
    JsonNode n = new ObjectMapper().readTree(RemediesFiles.json(remedies()));
    assertEquals("gate", n.get("answer").get("what").asText());
    assertEquals(3, n.get("remedies").size());
    JsonNode hold = n.get("remedies").get(0);
    assertEquals("recipe", hold.get("effort").asText());
    assertEquals("the mould opens", hold.get("not_recommended_because").asText());
    assertEquals(-10, hold.get("run").get("clamping_margin_n").asDouble(), 1e-9);
    assertEquals("no <room>", n.get("remedies").get(2).get("run").get("error").asText());
    assertEquals("a second gate", n.get("not_run").get(0).get("what").asText());
  }

  /** A dent of 0.6 and an oval of 0.75 mm; what each remedy leaves of them. */
  private static String opened(double dent, double oval) {
    Ran before = Ran.well(SomeRun.opened(SomeRun.dent(0.6, 0.6), 0.75, 11));
    Ran after = Ran.well(SomeRun.opened(SomeRun.dent(dent, dent), oval, 11));
    Line l = line(Effort.RECIPE, "x", after, "");
    Remedies r =
        Changed.of(
            remedies(), "before", before, "beforeNormal", Optional.empty(), "lines", List.of(l));
    assertTrue(RemediesPage.of(r).contains("Oval: how far the part"));
    List<String> cells = RemediesFiles.cells(r, l);
    return cells.get(1) + ": " + cells.get(6);
  }

  @Test
  void whereAClockOpensTheMouldTheOvalStandsBesideTheDent() {
    assertEquals("0.10 mm: cures", opened(0.1, 0));
    assertEquals("0.10 mm, oval 0.75 mm: takes the dent away, not the oval", opened(0.1, 0.75));
    assertEquals("0.60 mm, oval 0.10 mm: takes the oval away, not the dent", opened(0.6, 0.1));
    assertEquals("0.50 mm, oval 0.75 mm: changes little", opened(0.5, 0.75));
    assertEquals("0.30 mm, oval 0.50 mm: helps", opened(0.3, 0.5));
    assertFalse(RemediesPage.of(remedies()).contains("Oval"), "no clock");
  }
}

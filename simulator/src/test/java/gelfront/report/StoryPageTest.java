// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Changed;
import gelfront.finding.Findings;
import gelfront.result.Inputs;
import gelfront.result.StoredRun;
import gelfront.result.SyntheticRun;
import java.util.List;
import org.junit.jupiter.api.Test;

final class StoryPageTest {
  private static final StoredRun DENTED = SyntheticRun.small();
  private static final StoredRun CURED = cured();

  /** Another name, another gate, no pockets. */
  private static StoredRun cured() {
    StoredRun r = SyntheticRun.withPockets(DENTED, List.of());
    Inputs in =
        new Inputs(
            r.inputs().given().stream()
                .map(l -> l.name().equals("Gate") ? new Inputs.Line("Gate", "round, 8 mm", "") : l)
                .toList(),
            r.inputs().assumed());
    return Changed.of(r, "name", "two bulbs, cured", "inputs", in);
  }

  private static String page() {
    return StoryPage.of(
        new StoryPage.Chapter(DENTED, DENTED.findings(), "a-result/report.html"),
        new StoryPage.Chapter(CURED, CURED.findings(), "b-result/report.html"));
  }

  @Test
  void itTellsBothDesignsWithLinksToTheirReports() {
    String page = page();

    assertTrue(page.contains(Html.escape(DENTED.findings().verdict())));
    assertTrue(page.contains("two bulbs, cured"));
    assertTrue(page.contains("href=\"a-result/report.html\""));
    assertTrue(page.contains("href=\"b-result/report.html\""));
    assertFalse(page.contains("src=\"http"), "loads nothing from outside");
  }

  @Test
  void onlyWhatDiffersIsListedAsChanged() {
    String changed = page().split("What was changed", -1)[1].split("</section>", -1)[0];

    assertTrue(changed.contains("round, 8 mm") && changed.contains("round, 5 mm"), changed);
    assertFalse(changed.contains("Shot temperature"), changed);
  }

  @Test
  void rowsHoldOneValueForEachCalculation() {
    Findings f = DENTED.findings();

    List<Comparison.Row> rows = Comparison.of(List.of(f, CURED.findings(), f));

    assertTrue(rows.stream().allMatch(r -> r.values().size() == 3));
    Comparison.Row dent =
        rows.stream().filter(r -> r.name().equals("deepest dent")).findFirst().orElseThrow();
    assertEquals(List.of("0.31 to 0.60 mm", "none", "0.31 to 0.60 mm"), dent.values());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.answer.SeriesAnswer;
import gelfront.answer.ShotRow;
import gelfront.base.Units;
import gelfront.finding.Severity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A row of shots in words, as a table and as JSON. */
final class SeriesPageTest {
  private static final ShotRow COLD =
      new ShotRow(1, 23, 30, Severity.WILL_DENT, 0.3e-3, 0.5e-3, 4, 100, 100, 160);
  private static final ShotRow WARM =
      new ShotRow(2, 38, 42, Severity.CLEAN, 0, 0.1e-3, 5, 120, 110, 170);

  private static SeriesAnswer of(ShotRow settled) {
    return new SeriesAnswer(
        "<bait>",
        "quick",
        0.2e-3,
        60,
        20,
        OptionalDouble.of(170),
        List.of(COLD, WARM),
        Optional.of(settled),
        Optional.of(WARM.numbered(0)),
        1e-14);
  }

  @Test
  void theVerdictSaysWhatToThrowAway() {
    assertTrue(SeriesPage.verdict(of(WARM.numbered(0))).startsWith("Throw away the first shot:"));
    assertTrue(SeriesPage.verdict(of(COLD.numbered(0))).startsWith("Shots in a row are no cure"));
  }

  @Test
  void aRowThatDoesNotSettleClaimsNoSettledShot() {
    SeriesAnswer a =
        new SeriesAnswer(
            "bait",
            "quick",
            0.2e-3,
            60,
            20,
            OptionalDouble.of(170),
            List.of(COLD, COLD.numbered(2)),
            Optional.empty(),
            Optional.of(COLD.numbered(0)),
            1e-14);
    String verdict = SeriesPage.verdict(a);
    assertTrue(verdict.contains("the last one made") && !verdict.contains("settled"), verdict);
  }

  @Test
  void aFastestCycleThatDentsIsNotTakenForGood() {
    SeriesAnswer a = of(WARM.numbered(0));
    assertTrue(!SeriesPage.pace(a).contains("But at that pace"));
    SeriesAnswer dents =
        new SeriesAnswer(
            a.name(),
            a.level(),
            a.visible(),
            a.idle(),
            a.open(),
            a.clock(),
            a.shots(),
            a.settled(),
            Optional.of(COLD.numbered(0)),
            a.imbalance());
    String pace = SeriesPage.pace(dents);
    assertTrue(pace.endsWith("But at that pace the part will dent, 0.30 to 0.50 mm deep."), pace);
  }

  @Test
  void aClockThatOpensTooSoonIsTold() {
    String pace = SeriesPage.pace(of(WARM.numbered(0)));
    assertTrue(pace.contains("too soon"), pace);
    assertTrue(pace.contains("2 min 50 s from shot to shot"), pace);
  }

  @Test
  void aRowIsToldInItsReadersUnits() {
    Units shop = new Units(true, true);
    assertTrue(
        SeriesPage.verdict(of(COLD.numbered(0)), shop).contains("a dent 0.012 to 0.020 in deep"));
    String pace = SeriesPage.pace(of(WARM.numbered(0)), shop);
    assertTrue(pace.startsWith("The mould settles at 100 °F before a shot"), pace);
  }

  @Test
  void thePageEscapesNamesAndListsEveryShot() {
    String page = SeriesPage.of(of(WARM.numbered(0)));
    assertTrue(page.contains("&lt;bait&gt;") && !page.contains("<bait>"));
    assertTrue(page.contains("0.30 to 0.50 mm") && page.contains("110 s, too soon"));
  }

  @Test
  void jsonAndTableHoldTheSameShots() throws Exception {
    SeriesAnswer a = of(WARM.numbered(0));
    JsonNode n = new ObjectMapper().readTree(SeriesFiles.json(a));
    assertEquals(2, n.get("shots").size());
    assertEquals(1, n.get("throw_away").asInt());
    assertEquals(0.5, n.get("shots").get(0).get("dent_high_mm").asDouble(), 1e-9);
    assertEquals(170, n.get("clock_s").asDouble());
    List<String> lines = SeriesFiles.csv(a).lines().toList();
    assertEquals(4, lines.size());
    assertTrue(lines.get(3).startsWith("settled,38.00,42.00,clean,"), lines.get(3));
  }
}

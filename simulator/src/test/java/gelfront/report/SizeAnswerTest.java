// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.Sizing;
import gelfront.answer.SomeRun;
import gelfront.base.Told;
import gelfront.mesh.Vec3;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A sizing as scripts and people read it, where a clock opens the mould. */
final class SizeAnswerTest {
  private static Sizing sizing(RunOutcome all) {
    Ran ran = Ran.well(all);
    Sizing.SheetLine line = new Sizing.SheetLine("gate, width", 3e-3, "");
    Sizing.Choice choice =
        new Sizing.Choice("as calculated", 3e-3, Told.of("3 mm"), 8e-3, ran, List.of(line));
    List<Sizing.Point> curve =
        List.of(
            new Sizing.Point(2e-3, 8e-3, "quick", ran), new Sizing.Point(3e-3, 8e-3, "quick", ran));
    Sizing.Place place =
        new Sizing.Place(
            "as it is",
            Vec3.ZERO,
            new Vec3(1, 0, 0),
            9e-3,
            curve,
            List.of(choice),
            Told.of("Words."),
            Optional.empty());
    return new Sizing("bean", 0.2e-3, List.of(place), 0, Told.of("Verdict."), 3);
  }

  private static JsonNode choice(RunOutcome all) throws IOException {
    JsonNode json = new ObjectMapper().readTree(SizeFiles.json(sizing(all)));
    return json.at("/places/0/choices/0");
  }

  @Test
  void anOvalCountsAsMuchAsADent() throws IOException {
    RunOutcome oval = SomeRun.opened(SomeRun.dent(0.05, 0.1), 0.75, 11.3);
    JsonNode choice = choice(oval);

    assertFalse(choice.get("does").asBoolean());
    assertEquals(-0.55, choice.get("margin_mm").asDouble(), 1e-9);
    assertEquals(0.75, choice.at("/normal/oval_mm").asDouble(), 1e-9);
    assertEquals(6, choice.at("/normal/opened_s").asDouble());
    assertEquals(11.3, choice.at("/normal/shut_until_s").asDouble());
    String page = SizePage.of(sizing(oval));
    assertTrue(page.contains("0.75 mm oval: no"));
    assertTrue(page.contains("<td>an oval of 0.75 mm</td>"));
  }

  @Test
  void openedFirmThereIsNoOvalToTell() throws IOException {
    RunOutcome firm = SomeRun.dent(0.05, 0.1);
    JsonNode choice = choice(firm);

    assertTrue(choice.get("does").asBoolean());
    assertEquals(0.1, choice.get("margin_mm").asDouble(), 1e-9);
    assertFalse(choice.get("normal").has("oval_mm"));
    assertTrue(SizePage.of(sizing(firm)).contains("0.10 mm: does"));
  }
}

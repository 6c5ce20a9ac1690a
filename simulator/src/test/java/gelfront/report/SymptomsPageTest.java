// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.answer.Bearing;
import gelfront.answer.Diagnosis;
import gelfront.answer.Symptom;
import gelfront.answer.SymptomTable;
import gelfront.base.Changed;
import gelfront.finding.Filled;
import gelfront.finding.Findings;
import gelfront.mesh.Vec3;
import gelfront.result.SyntheticRun;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Symptoms in words, and held against a result. */
final class SymptomsPageTest {
  private static final Findings DENTED = SyntheticRun.small().findings();
  private static final Findings CLEAN =
      SyntheticRun.withPockets(SyntheticRun.small(), List.of()).findings();

  private static Diagnosis of(Symptom... seen) {
    return Diagnosis.of(Set.of(seen));
  }

  @Test
  void aDentIsHeldAgainstTheDeepestPocket() {
    List<String> words = Bearing.of(of(Symptom.TEXTURED), DENTED);
    assertTrue(words.get(0).startsWith("Pocket 1 bears on it"), words.toString());
    assertTrue(words.get(0).contains(DENTED.pockets().get(0).sentence()));
  }

  @Test
  void aDentThatWasNotExpectedSendsToTheLeastKnownInput() {
    List<String> words = Bearing.of(of(Symptom.TEXTURED), CLEAN);
    assertEquals(1, words.size());
    assertTrue(words.get(0).contains("no_flow at 100 and at 150"), words.toString());
  }

  @Test
  void aSinkingSprueDoesNotFitAGateThatClosed() {
    assertTrue(
        Bearing.of(of(Symptom.TEXTURED, Symptom.SINKING), DENTED).stream()
            .anyMatch(w -> w.contains("does not fit a sprue that keeps sinking")));
    assertFalse(
        Bearing.of(of(Symptom.TEXTURED, Symptom.LEVEL), DENTED).stream()
            .anyMatch(w -> w.contains("does not fit")));
  }

  @Test
  void airIsNotInTheResultAndThatIsTold() {
    List<String> words = Bearing.of(of(Symptom.SMOOTH, Symptom.ROUND, Symptom.TOP), CLEAN);
    assertEquals(1, words.size());
    assertTrue(words.get(0).contains("tells of dents alone"));
  }

  /** A shot that fills, with air trapped in so many places. */
  private static Findings shot(boolean mayNotFill, int places) {
    Filled.TrappedAir air =
        new Filled.TrappedAir(
            1, Vec3.ZERO, 1e-8, 2e-8, 0.5, 1e4, Vec3.ZERO, 0, 2e-3, "Scratch a vent.");
    Filled filled =
        Changed.of(
            Filled.NOT_CALCULATED,
            "calculated",
            true,
            "mayNotFill",
            mayNotFill,
            "sentence",
            "The cavity is full after 1.0 s.",
            "air",
            Collections.nCopies(places, air));
    return Changed.of(CLEAN, "filled", filled);
  }

  @ParameterizedTest
  @CsvSource({
    "ROUND, false, 1, That fits: the shot was calculated, 3",
    "ROUND, true, 0, That does not fit: the shot was calculated, 2",
    "MISSING, true, 0, That fits: the shot was calculated, 2",
    "MISSING, false, 1, the part fills but for trapped air, 3",
    "MISSING, false, 0, That does not fit: the shot was calculated, 2",
  })
  void aCalculatedShotIsHeldAgainstAirAndShortShots(
      Symptom shape, boolean mayNotFill, int places, String first, int lines) {
    List<String> words = Bearing.of(of(Symptom.SMOOTH, shape), shot(mayNotFill, places));

    assertEquals(lines, words.size(), words.toString());
    assertTrue(words.get(0).contains(first), words.toString());
    assertEquals("What the shot came to: The cavity is full after 1.0 s.", words.get(1));
    assertTrue(places == 0 || words.get(2).equals("Air A: Scratch a vent."), words.toString());
  }

  @Test
  void whatIsOpenIsHeldAgainstTheShotToo() {
    assertEquals(2, Bearing.of(of(Symptom.LEVEL), shot(false, 0)).size());
    assertEquals(1, Bearing.of(of(Symptom.TEXTURED), shot(false, 0)).size());
  }

  @Test
  void pageAndJsonNameTheirSourceAndCautions() throws Exception {
    Diagnosis d = of(Symptom.TEXTURED, Symptom.LEVEL);
    String page = SymptomsPage.of(d, Bearing.of(d, DENTED));
    assertTrue(page.contains(SymptomTable.SOURCE) && page.contains("190 °C"));
    assertTrue(page.contains(Html.escape(d.steps().get(0))));
    JsonNode n = new ObjectMapper().readTree(SymptomsPage.json(d, List.of()));
    assertEquals("dent", n.get("fault").asText());
    assertEquals("clear", n.get("certainty").asText());
    assertEquals(SymptomTable.SOURCE, n.get("source").asText());
    assertTrue(n.get("result").isEmpty() && n.get("cautions").size() > 4);
  }

  @Test
  void whatIsOpenGetsNoSteps() {
    String page = SymptomsPage.of(of(Symptom.LEVEL), List.of());
    assertFalse(page.contains("What to try"));
  }
}

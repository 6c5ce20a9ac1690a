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
import gelfront.finding.Findings;
import gelfront.result.SyntheticRun;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

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

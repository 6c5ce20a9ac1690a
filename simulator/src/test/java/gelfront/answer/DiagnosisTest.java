// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Diagnosis.Certainty;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The decision table: common practice, no source, throughout. */
final class DiagnosisTest {
  private static final List<Set<Symptom>> ALL = all();

  /** Every set of symptoms, one of an aspect at most. */
  private static List<Set<Symptom>> all() {
    List<Set<Symptom>> sets = new ArrayList<>(List.of(EnumSet.noneOf(Symptom.class)));
    for (Symptom.Aspect a : Symptom.Aspect.values()) {
      for (Set<Symptom> s : List.copyOf(sets)) {
        for (Symptom one : a.symptoms()) {
          Set<Symptom> more = EnumSet.noneOf(Symptom.class);
          more.addAll(s);
          more.add(one);
          sets.add(more);
        }
      }
    }
    return sets.stream().filter(s -> !s.isEmpty()).toList();
  }

  static List<SymptomTable.Rule> rules() {
    return SymptomTable.RULES;
  }

  static List<SymptomTable.Step> steps() {
    return SymptomTable.STEPS;
  }

  static List<SymptomTable.Clash> clashes() {
    return SymptomTable.CLASHES;
  }

  @ParameterizedTest
  @MethodSource("rules")
  void everyRuleSpeaksForOrAgainstItsFault(SymptomTable.Rule rule) {
    Diagnosis alone = Diagnosis.of(Set.of(rule.seen()));
    assertEquals(rule.weight(), alone.scores().get(rule.fault()));
    assertNotEquals(0, rule.weight());
    assertFalse(rule.because().isBlank());
  }

  /** Without it something would be told otherwise. */
  @ParameterizedTest
  @MethodSource("rules")
  void everyRuleDecidesSomething(SymptomTable.Rule rule) {
    List<SymptomTable.Rule> others =
        SymptomTable.RULES.stream().filter(r -> !r.equals(rule)).toList();
    boolean decides =
        ALL.stream()
            .anyMatch(
                s -> {
                  Diagnosis with = Diagnosis.of(s);
                  Diagnosis without = Diagnosis.of(s, others);
                  return with.fault() != without.fault() || with.certainty() != without.certainty();
                });
    assertTrue(decides, rule.toString());
  }

  @ParameterizedTest
  @MethodSource("steps")
  void everyStepIsToldSomewhere(SymptomTable.Step step) {
    assertTrue(
        ALL.stream()
            .map(Diagnosis::of)
            .anyMatch(d -> d.fault() == step.fault() && d.steps().contains(step.words())),
        step.words());
  }

  @ParameterizedTest
  @MethodSource("clashes")
  void whatContradictsItselfIsToldAndStaysOpen(SymptomTable.Clash clash) {
    for (Set<Symptom> s : ALL) {
      if (s.containsAll(clash.seen())) {
        Diagnosis d = Diagnosis.of(s);
        assertTrue(d.clashes().contains(clash.words()));
        assertEquals(Certainty.OPEN, d.certainty());
      }
    }
  }

  private static void assertFault(Fault fault, Certainty certainty, Symptom... seen) {
    Diagnosis d = Diagnosis.of(Set.of(seen));
    assertEquals(fault, d.fault(), d.toString());
    assertEquals(certainty, d.certainty(), d.toString());
  }

  @Test
  void theFourFaultsAreToldApart() {
    assertFault(
        Fault.DENT, Certainty.CLEAR, Symptom.TEXTURED, Symptom.CAVED, Symptom.THICK, Symptom.EVERY);
    assertFault(Fault.TRAPPED_AIR, Certainty.CLEAR, Symptom.SMOOTH, Symptom.ROUND, Symptom.TOP);
    assertFault(Fault.SHORT_SHOT, Certainty.CLEAR, Symptom.SMOOTH, Symptom.MISSING, Symptom.END);
    assertFault(Fault.OTHER, Certainty.CLEAR, Symptom.SEAM);
  }

  @Test
  void textureAloneIsEnoughForADent() {
    assertFault(Fault.DENT, Certainty.CLEAR, Symptom.TEXTURED);
  }

  @Test
  void littleLeavesItOpen() {
    assertEquals(Certainty.OPEN, Diagnosis.of(Set.of(Symptom.LEVEL)).certainty());
    assertFault(Fault.TRAPPED_AIR, Certainty.LIKELY, Symptom.SMOOTH);
    assertTrue(Diagnosis.of(Set.of(Symptom.LEVEL)).verdict().contains("does not tell yet"));
  }

  @Test
  void aSmoothHollowOverAThickPlaceIsQuestioned() {
    Diagnosis d = Diagnosis.of(Set.of(Symptom.SMOOTH, Symptom.CAVED, Symptom.THICK));
    assertFalse(d.clashes().isEmpty());
    assertTrue(d.verdict().contains("does not tell yet"), d.verdict());
  }

  @Test
  void particularStepsComeBeforeGeneralOnes() {
    List<String> steps = Diagnosis.of(Set.of(Symptom.MISSING, Symptom.FIRST)).steps();
    assertTrue(steps.get(0).startsWith("Warm the mould"), steps.toString());
    assertTrue(steps.size() > 1);
  }

  @Test
  void whatCostsNothingComesFirstUnlessItWasTried() {
    String holding = "The first thing to try costs nothing: hold";
    List<String> steps = Diagnosis.of(Set.of(Symptom.TEXTURED, Symptom.LEVEL)).steps();
    assertTrue(steps.get(0).startsWith(holding), steps.toString());
    assertTrue(steps.get(1).contains("open the gate"), steps.toString());
    for (Symptom tried : Symptom.Aspect.HOLDING.symptoms()) {
      List<String> then = Diagnosis.of(Set.of(Symptom.TEXTURED, tried)).steps();
      assertFalse(then.isEmpty());
      assertTrue(then.stream().noneMatch(s -> s.startsWith(holding)), then.toString());
    }
  }

  @Test
  void twoOfOneAspectOrNothingIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Diagnosis.of(Set.of(Symptom.TEXTURED, Symptom.SMOOTH)));
    assertThrows(IllegalArgumentException.class, () -> Diagnosis.of(Set.of()));
  }
}

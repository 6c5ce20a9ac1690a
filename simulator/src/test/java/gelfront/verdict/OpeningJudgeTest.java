// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Units;
import gelfront.dent.Oval;
import gelfront.finding.Opening;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

final class OpeningJudgeTest {
  private static final OpeningJudge JUDGE = new OpeningJudge(0.2e-3);
  private static final double FIRM_AT = 90;
  private static final OpeningWords WORDS = new OpeningWords(Units.METRIC);

  private static Opening opened(double at, double liquidMl, double ovalMm, double leastMm) {
    Opening bare =
        JUDGE.of(at, new Oval(liquidMl * 1e-6, ovalMm * 1e-3, leastMm * 1e-3, Vec3.ZERO, 12));
    return bare.told(WORDS.sentence(bare, FIRM_AT), OpeningWords.sign(bare));
  }

  @Test
  void itIsBadWhereItIsSeenEvenIfNoLiquidGoesAlongThePart() {
    assertEquals(Severity.WILL_DENT, opened(6, 2, 0.5, 0.3).severity());
    assertEquals(Severity.MAY_DENT, opened(6, 2, 0.5, 0.1).severity());
    assertEquals(Severity.CLEAN, opened(6, 2, 0.1, 0.1).severity());
  }

  @Test
  void wordsTellOvalLiquidSoftAndFirmApart() {
    String oval = opened(6, 2, 0.5, 0.3).sentence();
    String liquid = opened(6, 2, 0.1, 0.1).sentence();
    String soft = opened(60, 0, 0, 0).sentence();

    assertTrue(oval.contains("goes oval, its flat sides 0.50 mm in"), oval);
    assertTrue(oval.contains("Shut until 12 s"), oval);
    assertTrue(opened(6, 2, 0.5, 0.1).sentence().contains("may go oval"));
    assertTrue(liquid.contains("still liquid") && liquid.contains("after 90 s"), liquid);
    assertTrue(soft.contains("set through but is soft until 90 s"), soft);
    assertEquals("", opened(91, 0, 0, 0).sentence());
    assertFalse(opened(6, 2, 0.5, 0.3).sign().isEmpty());
    assertEquals("", opened(6, 2, 0.1, 0.1).sign());
  }

  @Test
  void theVerdictSaysTheWorseFirstAndTheCureComesFirst() {
    Opening oval = opened(6, 2, 0.5, 0.3);

    String verdict = new Words(Units.METRIC).verdict(Severity.CLEAN, List.of(), oval);
    List<String> advice = new Words(Units.METRIC).advice(List.of(), oval);

    assertTrue(verdict.startsWith("Opened after 6 s this part goes oval: 0.50 mm"), verdict);
    assertTrue(verdict.endsWith("Left shut: no dent: every place stays fed until it has set."));
    assertTrue(advice.get(0).contains("shut until 12 s (now opened after 6 s)"), "" + advice);
    assertEquals(List.of(), new Words(Units.METRIC).advice(List.of(), opened(60, 0, 0, 0)));
  }
}

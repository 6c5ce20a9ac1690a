// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Units;
import gelfront.finding.Constriction;
import gelfront.finding.Dent;
import gelfront.finding.Filled;
import gelfront.finding.HotSpot;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.finding.Sunk;
import gelfront.mesh.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sentences that a fault asks for. */
final class WordsTest {
  private static final Words WORDS = new Words(Units.METRIC);

  private static List<Pocket> pocket(Constriction.Kind kind) {
    Constriction c = new Constriction(kind, Vec3.ZERO, 4e-3, 8);
    return List.of(
        new Pocket(
            1,
            List.of(),
            Severity.WILL_DENT,
            Vec3.ZERO,
            1e-6,
            8,
            60,
            150,
            c,
            1e-8,
            2e-8,
            List.of(new Dent(Vec3.ZERO, 3e-4, 5e-4, 4e-3, 4e-3)),
            List.of(new HotSpot(Vec3.ZERO, 60, 8, c)),
            20,
            0,
            Sunk.UNKNOWN,
            "",
            ""));
  }

  @Test
  void aSprueThatHasRunDryNeitherClosesNorSets() {
    List<Pocket> dry = pocket(Constriction.Kind.DRY_SPRUE);

    String verdict = WORDS.verdict(Severity.WILL_DENT, dry, Opening.WHEN_FIRM);

    assertTrue(verdict.endsWith("because the sprue has run dry by 8.0 s."), verdict);
    String why = WORDS.explanation(Severity.WILL_DENT, dry);
    assertTrue(why.startsWith("The sprue has run dry by 8.0 s, but"), why);
    String one = WORDS.sentence(dry.get(0));
    assertTrue(one.startsWith("The sprue has run dry by 8.0 s; behind it"), one);
  }

  @Test
  void noTopUpIsAdvisedWhereItWouldLieOnASprueThatHasSet() {
    assertEquals(0, topUps(Constriction.Kind.SPRUE));
    assertEquals(1, topUps(Constriction.Kind.GATE));
  }

  private static long topUps(Constriction.Kind kind) {
    return WORDS.advice(pocket(kind), Opening.WHEN_FIRM).stream()
        .filter(a -> a.contains("top up the sprue"))
        .count();
  }

  @Test
  void aVentWiderThanAnyScratchIsNotCalledOne() {
    FillWords words = new FillWords(Units.METRIC);

    String many = words.proposal(air(0.991));

    assertTrue(many.startsWith("No scratch lets so much air out: vents 0.03 mm deep"), many);
    assertTrue(words.proposal(air(4e-3)).contains("4 mm wide into the parting face"));
  }

  private static Filled.TrappedAir air(double width) {
    return new Filled.TrappedAir(1, Vec3.ZERO, 1e-6, 1e-6, 1, 1e4, Vec3.ZERO, 0, width, "");
  }
}

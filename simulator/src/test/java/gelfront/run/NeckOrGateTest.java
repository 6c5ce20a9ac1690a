// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Constriction;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.mesh.Vec3;
import gelfront.mesh.example.Examples;
import gelfront.setup.Case;
import gelfront.setup.FeedSystem;
import gelfront.setup.PlainCase;
import gelfront.setup.Section;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which closes the way to the last liquid: the gate, or a narrower place behind it. */
final class NeckOrGateTest {

  /** A sprue of 8 to 10 mm; metres. */
  private static Findings findings(String part, double gate, double land, double voxel) {
    FeedSystem.Sprue sprue = new FeedSystem.Sprue(8e-3, 10e-3, 28e-3, PlainCase.BACK);
    FeedSystem.Gate at = new FeedSystem.Gate(Vec3.ZERO, PlainCase.BACK, Section.round(gate), land);
    Case c =
        PlainCase.fedBy(PlainCase.feed(at, sprue))
            .withShot(PlainCase.shot(165, 2, 8))
            .withUp(PlainCase.BACK)
            .withVoxel(voxel)
            .make();
    return CaseRunner.run(c, Examples.all().get(part), Workers.SERIAL, Progress.NONE)
        .judgement()
        .findings();
  }

  private static void assertGateClosesWithTheFlow(Findings f) {
    assertEquals(1, f.pockets().size(), f.pockets().toString());
    assertEquals(Constriction.Kind.GATE, f.pockets().get(0).constriction().kind());
    assertEquals(f.fed().halfAt(), f.pockets().get(0).cutOff(), 1e-3 * f.fed().halfAt());
  }

  /** The bulb before the neck starves first, so the neck still feeds the one behind. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5e-3, 0.6e-3, 0.7e-3})
  void aNeckThatIsFedLastIsNotToBlame(double voxel) {
    assertGateClosesWithTheFlow(findings("two-bulbs-neck", 2.5e-3, 3e-3, voxel));
  }

  /** A gate of 3 mm is narrower than all that lies behind it. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5e-3, 0.6e-3, 0.7e-3})
  void whatOnlyWidensFromTheGateOnHasNoNeck(double voxel) {
    assertGateClosesWithTheFlow(findings("cone-body", 3e-3, 2e-3, voxel));
  }

  /**
   * One of 7 mm is wider than the cone's thin end, into which it reaches; right behind it the cone
   * is 4.5 mm thick, and starves the rest.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.5e-3, 0.6e-3, 0.7e-3})
  void aThinEndBesideAWiderGateIsANeck(double voxel) {
    Findings f = findings("cone-body", 7e-3, 2e-3, voxel);

    assertEquals(1, f.pockets().size(), f.pockets().toString());
    Pocket p = f.pockets().get(0);
    assertEquals(Constriction.Kind.NECK, p.constriction().kind());
    assertEquals(7.5e-3, p.constriction().place().x(), 1.5e-3);
    assertEquals(4.5e-3, p.constriction().width(), 0.5e-3);
    assertEquals(f.fed().halfAt(), p.cutOff(), 1e-3 * f.fed().halfAt());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Constriction;
import gelfront.finding.Pocket;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Case;
import gelfront.setup.PlainCase;
import gelfront.setup.Shot;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A body with a wide gate, a long neck, and a ball behind it. */
final class StarvedBehindNeckTest {
  private static final double NECK_FROM = 30e-3;

  private static TriangleMesh dumbbell(double neck, double length) {
    double to = NECK_FROM + length;
    return Solids.revolution(
        new double[] {0, 3e-3, 25e-3, NECK_FROM, to, to + 5e-3, to + 9e-3, to + 14e-3},
        new double[] {4.5e-3, 7e-3, 7e-3, neck, neck, 6e-3, 6e-3, 1e-3},
        48);
  }

  /** Poured, not pressed. */
  private static Case setup(boolean flow) {
    OptionalDouble none = OptionalDouble.empty();
    Case c =
        PlainCase.fedAtTheNose(6e-3, 12e-3, 25e-3)
            .withWall(12e-3)
            .withShot(new Shot(165, 2, 5, 0, List.of(), none, none))
            .withVoxel(0.6e-3)
            .make();
    return flow ? c : c.with(c.numerics().withoutFlow());
  }

  private static List<Pocket> pockets(double neck, double length, boolean flow) {
    return CaseRunner.run(setup(flow), dumbbell(neck, length), Workers.SERIAL, Progress.NONE)
        .judgement()
        .findings()
        .pockets();
  }

  private static Pocket ball(List<Pocket> pockets) {
    return pockets.stream().filter(p -> p.centre().x() > NECK_FROM).findFirst().orElseThrow();
  }

  private static Pocket body(List<Pocket> pockets) {
    return pockets.stream().filter(p -> p.centre().x() < NECK_FROM).findFirst().orElseThrow();
  }

  @Test
  void aLongNeckCutsTheBallOffBeforeItSets() {
    Pocket bySetting = ball(pockets(1.8e-3, 22e-3, false));
    List<Pocket> found = pockets(1.8e-3, 22e-3, true);
    Pocket ball = ball(found);

    assertEquals(Constriction.Kind.NECK, ball.constriction().kind(), ball.toString());
    assertTrue(ball.constriction().place().x() > NECK_FROM - 2e-3);
    assertEquals(3.6e-3, ball.constriction().width(), 0.6e-3);
    assertTrue(ball.cutOff() < 0.8 * bySetting.cutOff(), ball.cutOff() + " " + bySetting.cutOff());
    assertEquals(Constriction.Kind.GATE, body(found).constriction().kind());
    assertTrue(body(found).cutOff() > 1.2 * ball.cutOff(), "" + body(found).cutOff());
  }
}

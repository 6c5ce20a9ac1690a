// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Pocket;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.example.Examples;
import gelfront.result.DentSurface;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** From a run to the depth on the part's surface. */
final class DentPaintingTest {
  private static final String CASE =
      """
      up = [0, 0, 1]
      [[part.caliper]]
      distance = "0 mm"
      width = "3 mm"
      height = "3 mm"
      [[part.caliper]]
      distance = "90 mm"
      width = "3 mm"
      height = "3 mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "3 mm"
      land = "3 mm"
      [sprue]
      diameter = "8 mm"
      length = "20 mm"
      [block]
      wall = "10 mm"
      [shot]
      temperature = "165 degC"
      [numerics]
      level = "quick"
      """;

  /** Up is +z. */
  private static final CaseRunner.Outcome BULBS = run(CASE, Examples.all().get("two-bulbs-neck"));

  private static CaseRunner.Outcome run(String text, TriangleMesh part) {
    Case c = CaseFile.parse("bait.toml", text, Path.of("")).setup();
    return CaseRunner.run(c, part, Workers.SERIAL, Progress.NONE);
  }

  private static double dentVolume(CaseRunner.Outcome o) {
    return o.judgement().findings().pockets().stream().mapToDouble(Pocket::dentVolume).sum();
  }

  /** Volumes of two meshes by the divergence theorem: nothing that the depths were made with. */
  @Test
  void whatIsPulledInIsTheUnfedVolumeOfTheDents() {
    CaseRunner.Outcome o = BULBS;

    DentSurface s = DentPainting.of(o);

    double unfed = dentVolume(o);
    Pocket p = o.judgement().findings().pockets().get(0);
    assertTrue(unfed > 0 && unfed < p.unfedLow(), unfed + " of " + p.unfedLow());
    assertEquals(unfed, s.mesh().volume() - s.pulledIn(1).volume(), 0.03 * unfed);
  }

  @Test
  void theDentLiesWhereTheVerdictSaysAndIsWithinItsBounds() {
    CaseRunner.Outcome o = BULBS;
    DentSurface s = DentPainting.of(o);
    var dent = o.judgement().findings().pockets().get(0).dents().get(0);

    int deepest = 0;
    double low = 0;
    for (int v = 0; v < s.high().length; v++) {
      deepest = s.high()[v] > s.high()[deepest] ? v : deepest;
      low = Math.max(low, s.low()[v]);
    }

    assertEquals(dent.depthHigh(), s.high()[deepest], 0.05 * dent.depthHigh());
    assertEquals(dent.depthLow(), low, 0.1 * dent.depthLow());
    assertTrue(s.mesh().vertex(deepest).distance(dent.place()) < 3e-3);
    assertTrue(s.deepest() < dent.depthHigh(), s.deepest() + " of " + dent.depthHigh());
  }

  /** Up is where liquid sinks away from the skin, if no side is clearly thinner. */
  @Test
  void aLyingPartDentsOnItsUpperSide() {
    DentSurface s = DentPainting.of(BULBS);

    double above = 0;
    double below = 0;
    for (int v = 0; v < s.depth().length; v++) {
      double z = s.mesh().coordinate(v, 2);
      above = Math.max(above, z > 1e-3 ? s.depth()[v] : 0);
      below = Math.max(below, z < -2e-3 ? s.depth()[v] : 0);
    }
    assertTrue(above > 2 * below, above + " " + below);
  }

  /**
   * The part's own vertices come first, in their order, and those far from any pocket stay flat.
   */
  @Test
  void theUsersVerticesKeepTheirNumbersAndTheFeedIsNotPainted() {
    TriangleMesh part = Examples.all().get("two-bulbs-with-feed");
    String text =
        CASE.replaceAll("(?s)\\[gate\\].*?\\[block\\]", "[feed]\nin_mesh = true\n[block]");

    DentSurface s = DentPainting.of(run(text, part));

    for (int v = 0; v < part.vertexCount(); v++) {
      assertEquals(part.vertex(v), s.mesh().vertex(v));
    }
    for (int v = 0; v < s.depth().length; v++) {
      if (s.mesh().coordinate(v, 0) < -4e-3) {
        assertEquals(0, s.high()[v], "vertex " + s.mesh().vertex(v));
      }
    }
    assertTrue(s.deepest() > 0);
  }
}

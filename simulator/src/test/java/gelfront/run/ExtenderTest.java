// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import gelfront.setup.PartLoader;
import gelfront.verdict.FlowRecord;
import gelfront.voxelize.CaseVoxels;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A tube set on the block over the sprue. */
final class ExtenderTest {
  private static final double BLOCK_FACE = -12e-3;

  private static final String CASE =
      """
      [[part.caliper]]
      distance = "0 mm"
      width = "6 mm"
      height = "6 mm"
      [[part.caliper]]
      distance = "12 mm"
      width = "14 mm"
      height = "14 mm"
      [[part.caliper]]
      distance = "30 mm"
      width = "8 mm"
      height = "8 mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "5 mm"
      land = "2 mm"
      [sprue]
      diameter = "6 mm"
      length = "10 mm"
      [block]
      wall = "8 mm"
      start = "40 degC"
      [shot]
      temperature = "165 degC"
      hold_time = "1 s"
      [numerics]
      level = "quick"
      """;

  private static String tube(String material, double start, double heightMm) {
    return CASE
        + """
        [extender]
        bore = "7 mm"
        wall = "3 mm"
        """
        + String.format(Locale.ROOT, "height = \"%.1f mm\"\n", heightMm)
        + String.format(Locale.ROOT, "start = \"%.0f degC\"\nmaterial = \"%s\"\n", start, material);
  }

  private static Case setup(String text) {
    return CaseFile.parse("bait.toml", text, Path.of("")).setup();
  }

  private static CaseVoxels voxels(String text) {
    Case c = setup(text);
    return CaseVoxels.of(c, PartLoader.load(c.part()).mesh(), Progress.NONE);
  }

  private static CaseRunner.Outcome run(String text) {
    Case c = setup(text);
    return CaseRunner.run(c, PartLoader.load(c.part()).mesh(), Workers.SERIAL, Progress.NONE);
  }

  @Test
  void itsLiquidBelongsToTheSprueAndTheBlockKeepsItsMetal() {
    CaseVoxels bare = voxels(CASE);
    CaseVoxels with = voxels(tube("silicone", 23, 20));
    double more = sprue(with.model().cavity()) - sprue(bare.model().cavity());

    double liquid = Math.PI * 3.5e-3 * 3.5e-3 * 20e-3;
    assertEquals(liquid, more, 0.02 * liquid);
    double ring = 1180 * 1350 * Math.PI * (6.5e-3 * 6.5e-3 - 3.5e-3 * 3.5e-3) * 20e-3;
    double metal = heat(with.model().mould()) - heat(bare.model().mould());
    // Voxels of both differ a little, and with them what is left of 300 J/K of metal.
    assertEquals(ring, metal, 0.01 * heat(bare.model().mould()));
    assertEquals(BLOCK_FACE - 20e-3, with.mouth().centre().x(), 1e-9);
  }

  private static double sprue(Cavity c) {
    double[] v = c.volumes();
    double sum = 0;
    for (int i = 0; i < v.length; i++) {
      sum += c.region()[i] == Cavity.Region.SPRUE.ordinal() ? v[i] : 0;
    }
    return sum;
  }

  private static double heat(MouldCells m) {
    return Arrays.stream(m.capacity()).sum();
  }

  /** Whichever way the block's face looks: neighbours upwards have higher numbers. */
  @Test
  void ringsHangTogetherAndOnTheBlockOnEitherSide() {
    String right =
        tube("brass", 23, 20)
            .replace("at = [\"0 mm\"", "at = [\"30 mm\"")
            .replace("direction = [-1", "direction = [1");
    for (String text : new String[] {tube("brass", 23, 20), right}) {
      MouldCells m = voxels(text).model().mould();
      int joints = 0;
      for (int i = 0; i < m.count(); i++) {
        for (int a = 0; a < 3; a++) {
          int j = m.neighbour()[3 * i + a];
          assertTrue(j == -1 || j > i);
          joints += j >= 0 && m.cells()[i] == m.cells()[j] ? 1 : 0;
        }
      }
      assertEquals(10, joints, "ten rings, nine joints between them and one to the block");
    }
  }

  /** Heat that leaves the liquid is found again in block, rings and air. */
  @Test
  void theBooksOfHeatClose() {
    assertTrue(run(tube("brass", 23, 20)).end().ledger.imbalance() < 1e-9);
  }

  /** Five cavities that are left out draw on it, too, so that a short tube is not enough. */
  @Test
  void theLevelFallsThroughItBeforeTheSprue() {
    CaseRunner.Outcome o = run("cavities = 6\n" + tube("silicone", 140, 4));
    FlowRecord.Trace t = o.shot().flow().orElseThrow().trace();
    int held = 0;
    while (t.time()[held] < 1 + 1e-9) {
      held++;
    }

    boolean passes = false;
    for (int i = held; i < t.level().length; i++) {
      assertTrue(t.level()[i] >= t.level()[i - 1]);
      double out = 6 * (t.drawn()[i] - t.drawn()[held - 1]);
      double ruler = out / (Math.PI * 3.5e-3 * 3.5e-3);
      passes |= t.level()[i] > 1e-3 && t.level()[i] < 3.2e-3;
      if (t.level()[i] < 3.2e-3) {
        // What has set on the bore stays: the surface sinks by more than volume over area.
        assertTrue(t.level()[i] > ruler - 1e-3, t.level()[i] + " " + ruler);
        assertTrue(t.level()[i] < 1.3 * ruler + 1e-3, t.level()[i] + " " + ruler);
      }
    }
    assertTrue(passes);
    assertTrue(t.level()[t.level().length - 1] > 4e-3, "then on into the sprue");
  }

  /** s at which the sprue sets in its middle where it leaves the block. */
  private static double setsAtTheBlock(CaseRunner.Outcome o) {
    Cavity c = o.voxels().model().cavity();
    return o.shot().set()[c.nearest(new Vec3(BLOCK_FACE + 0.5e-3, 0, 0))];
  }

  @Test
  void aHotInsulatingOneKeepsTheSprueOpenLongerThanAColdMetalOneAndThanNone() {
    CaseRunner.Outcome cold = run(tube("brass", 23, 20));
    CaseRunner.Outcome hot = run(tube("silicone", 140, 20));

    double mouthCold = cold.judgement().findings().sprueSets();
    double mouthHot = hot.judgement().findings().sprueSets();
    assertTrue(mouthHot > 2 * mouthCold, mouthHot + " " + mouthCold);
    assertTrue(setsAtTheBlock(hot) > 1.05 * setsAtTheBlock(cold));
    assertTrue(setsAtTheBlock(hot) > 1.05 * setsAtTheBlock(run(CASE)));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.mesh.Vec3;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import gelfront.setup.Numerics;
import gelfront.setup.PartLoader;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Gates that are part of the mesh, as wide as they are drawn. */
final class GatesInMeshTest {
  private static final Path EXAMPLES = Path.of("../meshes/src/main/resources/gelfront/examples");

  private static CaseVoxels quick(String example) throws Exception {
    Case c = CaseFile.read(EXAMPLES.resolve(example)).setup();
    Case quick = c.with(new Numerics(Numerics.Level.QUICK, OptionalDouble.empty()));
    return CaseVoxels.of(quick, PartLoader.load(c.part()).mesh(), Progress.NONE);
  }

  /** Five of 2 to 5 mm, of which voxels of 0.7 mm show a middle that is off the axis. */
  @Test
  void theLadderHasItsRungs() throws Exception {
    CaseVoxels v = quick("gate-ladder.toml");
    double[] drawn = {2e-3, 2.5e-3, 3e-3, 4e-3, 5e-3};

    assertEquals(drawn.length, v.gates().size());
    for (int i = 0; i < drawn.length; i++) {
      GatePlace g = v.gates().get(i);
      assertEquals(drawn[i], g.width(), 0.01 * drawn[i]);
      assertTrue(offAxis(g.middle(), 20e-3 * (i - 2)) < 0.05e-3, () -> "at " + g.middle());
    }
    assertEquals(2, v.model().cavity().refinement().factor(), "2 mm are 5 cells of 0.35 mm across");
  }

  @Test
  void theOnlyOneIsFoundByItsWidth() throws Exception {
    GatePlace g = quick("two-bulbs-with-feed.toml").gates().get(0);

    assertEquals(3e-3, g.width(), 0.01 * 3e-3);
    assertTrue(offAxis(g.middle(), 0) < 0.05e-3, () -> "at " + g.middle());
  }

  private static double offAxis(Vec3 p, double y) {
    return Math.hypot(p.y() - y, p.z());
  }
}

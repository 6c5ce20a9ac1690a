// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Workers;
import gelfront.setup.CaseFile;
import gelfront.setup.FeedSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is timed is what it is said to be. */
class CasesTest {
  @Test
  void theCaseHasTheStandardCasesFeedAndBlock(@TempDir Path folder) throws IOException {
    Files.createFile(folder.resolve("standard.stl"));

    var c = CaseFile.parse("standard", StandardCase.CASE, folder).setup();

    var feed = (FeedSystem.Declared) c.feed();
    assertEquals(3e-3, feed.gate().section().width(), 1e-12);
    assertEquals(3e-3, feed.gate().land(), 1e-12);
    assertEquals(10e-3, feed.sprue().innerDiameter(), 1e-12);
    assertEquals(15e-3, c.block().wall(), 1e-12);
  }

  @Test
  void theBigBodyHasAsManyCellsAsWanted() {
    assertEquals(4e4, new BigBody(4e4).cells(), 0.02 * 4e4);
  }

  @Test
  void errorsAreSmallAndOfTheRightSizeOnCoarseVoxels() {
    var model = StandardCase.model(0.7e-3);

    StandardErrors e =
        StandardErrors.of(model.cavity(), StandardCase.run(model, Workers.SERIAL, 0.8));

    assertEquals(StandardErrors.probes().size(), e.axis().length);
    assertTrue(e.worstAxis() < 0.03, "on the axis: " + Arrays.toString(e.axis()));
    assertTrue(e.worstAxis() > 0.001, "no voxel is that good: " + Arrays.toString(e.axis()));
    assertEquals(e.gate(), e.axis()[StandardErrors.GATE]);
  }
}

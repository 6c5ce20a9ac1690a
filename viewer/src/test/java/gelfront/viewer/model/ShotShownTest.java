// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Units;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.result.Fields;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A cube of 10 mm that fills from below, 1 s later with every mm; its topmost layer never. */
class ShotShownTest {
  private static final int N = 12;

  private static Fields cube(boolean calculated) {
    int[] cells = new int[1000];
    float[] reached = new float[1000];
    int n = 0;
    for (int c = 0; c < N * N * N; c++) {
      int i = c % N;
      int j = c / N % N;
      int k = c / N / N;
      if (Math.min(i, Math.min(j, k)) > 0 && Math.max(i, Math.max(j, k)) < N - 1) {
        cells[n] = c;
        reached[n++] = k == N - 2 ? Float.POSITIVE_INFINITY : k - 0.5f;
      }
    }
    float[] set = new float[n];
    Arrays.fill(set, 50);
    float[] hot = new float[n];
    Arrays.fill(hot, 160);
    float[] none = new float[0];
    return new Fields(
        new Vec3(-1e-3, -1e-3, -1e-3),
        1e-3,
        N,
        N,
        N,
        cells,
        new byte[n],
        set,
        set.clone(),
        new short[n],
        List.of(),
        calculated ? reached : none,
        calculated ? hot : none);
  }

  @Test
  void theScaleEndsBehindTheLastPlaceAndWhatNeverFillsIsAtItsEnd() {
    ShotShown shot = ShotShown.of(cube(true), 0);

    assertEquals(1.03 * 8.5, shot.scale(), 1e-6);
    CellGrid g = shot.grid();
    assertEquals(4.5, g.setAt(5, 5, 3 + 4), 1e-6);
    assertEquals(shot.scale(), g.setAt(5, 5, 3 + 9), 1e-6);
    assertEquals(0, g.cut()[g.index(5, 5, 3 + 9)], 1e-6, "drawn as air that stays");
    assertTrue(8.5 / shot.scale() < ShotShown.never() && ShotShown.never() < 1);
    assertEquals(20, ShotShown.of(cube(true), 20).scale(), 1e-9, "of the longer of two");
    assertEquals(0, ShotShown.end(cube(false)), 0);
  }

  @Test
  void theSkinHasTheTimeOfWhatLiesBelowIt() {
    TriangleMesh ball = Solids.sphere(new Vec3(5, 5, 5).times(1e-3), 4.9e-3, 24);
    ShotShown shot = ShotShown.of(cube(true), 0);
    float[] share = shot.onSkin(ball);

    for (int v = 0; v < share.length; v++) {
      double z = 1e3 * ball.vertex(v).z();
      if (z < 8) {
        assertEquals(z, share[v] * shot.scale(), 1.1, "at " + z);
      }
    }
  }

  @Test
  void aPlaceSaysWhenTheShotCame() {
    assertEquals(
        "the shot comes after 3.50 s, 160 °C hot",
        Reading.came(cube(true), new Vec3(5, 5, 3.5), Units.METRIC));
    assertEquals(
        "the shot never comes here", Reading.came(cube(true), new Vec3(5, 5, 9.5), Units.METRIC));
    assertEquals("", Reading.came(cube(true), new Vec3(5, 5, -3), Units.METRIC));
    assertEquals("", Reading.came(cube(false), new Vec3(5, 5, 3.5), Units.METRIC));
  }
}

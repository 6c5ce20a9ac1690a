// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

final class ReservoirTest {
  private static final int LENGTH = 20;
  private static final int SPRUE = 12;

  private final Cavity cavity = withSprue();
  private final boolean[] flowing = new boolean[cavity.count()];
  private final double area = 36 * Tube.DX * Tube.DX;

  /** The twelve layers at the mouth, x = 0, are sprue. */
  private static Cavity withSprue() {
    Cavity c = Tube.of(LENGTH, 6);
    byte[] region = new byte[c.count()];
    for (int i = 0; i < region.length; i++) {
      region[i] =
          (byte)
              (c.grid().position(i, 0) < SPRUE ? Cavity.Region.SPRUE : Cavity.Region.PART)
                  .ordinal();
    }
    return new Cavity(c.grid(), c.cells(), c.neighbours(), region, c.walls());
  }

  private Reservoir reservoir(double times) {
    Arrays.fill(flowing, true);
    return new Reservoir(cavity, new Vec3(-1, 0, 0), times);
  }

  /** A ruler would read volume over area, to a layer of voxels. */
  @Test
  void theSurfaceSinksByVolumeOverArea() {
    Reservoir r = reservoir(1);
    for (int i = 0; i < 30; i++) {
      r.take(flowing, 0.25 * Tube.DX * area);
      double sunk = 0.25 * (i + 1) * Tube.DX;
      assertEquals(sunk, r.level(), 1.01 * Tube.DX);
    }
    assertFalse(r.dry());
  }

  @Test
  void cavitiesThatAreLeftOutDrawAsWell() {
    Reservoir r = reservoir(4);
    r.take(flowing, 2 * Tube.DX * area);
    assertEquals(8 * Tube.DX, r.level(), 1.01 * Tube.DX);
  }

  @Test
  void itRunsDryAndIsFilledAgain() {
    Reservoir r = reservoir(1);
    r.take(flowing, 11.9 * Tube.DX * area);
    assertFalse(r.dry());
    r.take(flowing, 0.2 * Tube.DX * area);
    assertTrue(r.dry());
    r.fill();
    assertFalse(r.dry());
    assertEquals(0, r.level());
  }

  /** What has set on the wall feeds nothing: the core sinks faster. */
  @Test
  void whatHasSetStays() {
    Reservoir r = reservoir(1);
    for (int c = 0; c < flowing.length; c++) {
      flowing[c] = cavity.grid().position(c, 1) >= 3;
    }
    r.take(flowing, 3 * Tube.DX * area);
    assertEquals(6 * Tube.DX, r.level(), 1.01 * Tube.DX);
    for (int c = 0; c < flowing.length; c++) {
      assertFalse(r.empty()[c] && !flowing[c]);
    }
  }
}

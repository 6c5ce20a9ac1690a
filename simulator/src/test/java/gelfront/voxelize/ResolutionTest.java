// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.setup.Numerics;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ResolutionTest {
  private static final long GIB = 1L << 30;

  private static Resolution level(Numerics.Level level, double narrowest, double volume) {
    return of(new Numerics(level, OptionalDouble.empty()), narrowest, volume);
  }

  private static Resolution of(Numerics numerics, double narrowest, double volume) {
    return Resolution.of(numerics, narrowest, volume, 2 * volume, 21e-3);
  }

  @Test
  void fiveMillionCellsFitIntoFourGibibytes() {
    assertTrue(Resolution.mostCells(4 * GIB) > 5e6);
    assertTrue(Resolution.mostCells(2 * GIB) < 5e6);
    assertTrue(Resolution.mostGrid(1L << 60) < Integer.MAX_VALUE);
  }

  @Test
  void levelsHaveSmallerAndSmallerVoxelsAndMoreCellsAcrossTheGate() {
    double small = 1e-6;

    Resolution quick = level(Numerics.Level.QUICK, 3e-3, small);
    Resolution normal = level(Numerics.Level.NORMAL, 3e-3, small);
    Resolution fine = level(Numerics.Level.FINE, 3e-3, small);

    assertEquals(0.7e-3, quick.voxel(), 1e-12);
    assertEquals(0.35e-3, quick.smallest(), 1e-12);
    assertEquals(0.5e-3, normal.voxel(), 1e-12);
    assertEquals(0.25e-3, normal.smallest(), 1e-12);
    assertEquals(0.3e-3, fine.voxel(), 1e-12);
    assertEquals(0.15e-3, fine.smallest(), 1e-12);
  }

  @Test
  void narrowChannelsAloneGetSmallerCells() {
    Box gate = new Box(new Vec3(0, 0, 0), new Vec3(3e-3, 3e-3, 3e-3));
    Box sprue = new Box(new Vec3(3e-3, 0, 0), new Vec3(30e-3, 8e-3, 8e-3));
    List<Resolution.Channel> channels =
        List.of(new Resolution.Channel(gate, 3e-3), new Resolution.Channel(sprue, 8e-3));

    Closer closer = level(Numerics.Level.NORMAL, 3e-3, 1e-6).closer(channels);

    assertEquals(2, closer.factor());
    assertEquals(List.of(gate.grown(1.5e-3)), closer.boxes());
    assertEquals(
        Closer.NONE, level(Numerics.Level.NORMAL, 4e-3, 1e-6).closer(channels.subList(1, 2)));
  }

  /** The gate of a part that the heap allows coarse voxels only has cells of its own. */
  @Test
  void bigPartsGetVoxelsThatFitTheHeap() {
    double most = Resolution.mostCells(Runtime.getRuntime().maxMemory());
    double volume = 2 * most * Math.pow(0.5e-3, 3);

    Resolution big = level(Numerics.Level.NORMAL, 2e-3, volume);

    assertEquals(most, volume / Math.pow(big.voxel(), 3), 1e-6 * most);
    assertTrue(2e-3 / big.smallest() >= 8);
    assertThrows(VoxelException.class, () -> level(Numerics.Level.NORMAL, 0.1e-3, volume));
  }

  @Test
  void statedVoxelsThatDoNotFitTheHeapAreRefused() {
    double most = Resolution.mostCells(Runtime.getRuntime().maxMemory());
    Numerics stated = new Numerics(Numerics.Level.FINE, OptionalDouble.of(0.1e-3));
    double fits = 0.9 * most * 1e-12;

    assertEquals(0.1e-3, of(stated, 3e-3, fits).voxel());
    VoxelException e = assertThrows(VoxelException.class, () -> of(stated, 3e-3, 2 * fits));
    assertTrue(e.getMessage().contains("heap"), e.getMessage());
  }
}

package gelfront.voxelize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.setup.Numerics;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ResolutionTest {
  private static final long GIB = 1L << 30;

  private static double level(Numerics.Level level, double narrowest, double volume) {
    Numerics numerics = new Numerics(level, OptionalDouble.empty());
    return Resolution.voxel(numerics, narrowest, volume, 2 * volume);
  }

  @Test
  void fiveMillionCellsFitIntoFourGibibytes() {
    assertTrue(Resolution.mostCells(4 * GIB) > 5e6);
    assertTrue(Resolution.mostCells(2 * GIB) < 5e6);
    assertTrue(Resolution.mostGrid(1L << 60) < Integer.MAX_VALUE);
  }

  @Test
  void levelsPutMoreAndMoreVoxelsAcrossTheGate() {
    double small = 1e-6;

    assertEquals(0.6e-3, level(Numerics.Level.QUICK, 3e-3, small), 1e-12);
    assertEquals(0.375e-3, level(Numerics.Level.NORMAL, 3e-3, small), 1e-12);
    assertEquals(0.25e-3, level(Numerics.Level.FINE, 3e-3, small), 1e-12);
  }

  /** As large as the heap allows, if the gate stays four voxels wide. */
  @Test
  void bigPartsGetVoxelsThatFitTheHeap() {
    double most = Resolution.mostCells(Runtime.getRuntime().maxMemory());
    double volume = 2 * most * Math.pow(0.5e-3, 3);

    double dx = level(Numerics.Level.NORMAL, 10e-3, volume);

    assertEquals(most, volume / Math.pow(dx, 3), 1e-6 * most);
    assertThrows(VoxelException.class, () -> level(Numerics.Level.NORMAL, 2e-3, volume));
  }

  @Test
  void statedVoxelsThatDoNotFitTheHeapAreRefused() {
    double most = Resolution.mostCells(Runtime.getRuntime().maxMemory());
    Numerics stated = new Numerics(Numerics.Level.FINE, OptionalDouble.of(0.1e-3));
    double fits = 0.9 * most * 1e-12;

    assertEquals(0.1e-3, Resolution.voxel(stated, 3e-3, fits, 2 * fits));
    VoxelException e =
        assertThrows(
            VoxelException.class, () -> Resolution.voxel(stated, 3e-3, 2 * fits, 4 * fits));
    assertTrue(e.getMessage().contains("heap"), e.getMessage());
  }
}

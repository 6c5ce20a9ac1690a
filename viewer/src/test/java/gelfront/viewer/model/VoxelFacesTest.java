package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import java.util.List;
import org.junit.jupiter.api.Test;

class VoxelFacesTest {
  /** A block of 4 x 3 x 2 cells that fills its grid; cell i sets after i + 1 seconds. */
  static Fields block() {
    int n = 24;
    int[] cells = new int[n];
    float[] set = new float[n];
    for (int i = 0; i < n; i++) {
      cells[i] = i;
      set[i] = i + 1;
    }
    return new Fields(
        Vec3.ZERO, 1e-3, 4, 3, 2, cells, new byte[n], set, set.clone(), new short[n], List.of());
  }

  @Test
  void aWholeBlockShowsItsOutsideOnly() {
    VoxelFaces f = VoxelFaces.of(block(), 0);

    assertEquals(2 * (4 * 3 + 3 * 2 + 4 * 2), f.count());
    assertEquals(12 * f.count(), f.positions().length);
  }

  @Test
  void oneLateCellStandsAlone() {
    VoxelFaces f = VoxelFaces.of(block(), 23.5);

    assertEquals(6, f.count());
    assertEquals(24, f.setTime()[0]);
  }

  @Test
  void cornersTurnCounterClockwiseSeenFromOutside() {
    VoxelFaces f = VoxelFaces.of(block(), 23.5);
    float[] p = f.positions();
    for (int face = 0; face < f.count(); face++) {
      int o = 12 * face;
      Vec3 a = new Vec3(p[o + 3] - p[o], p[o + 4] - p[o + 1], p[o + 5] - p[o + 2]);
      Vec3 b = new Vec3(p[o + 6] - p[o], p[o + 7] - p[o + 1], p[o + 8] - p[o + 2]);
      Vec3 n = new Vec3(f.normals()[o], f.normals()[o + 1], f.normals()[o + 2]);

      assertTrue(a.cross(b).dot(n) > 0, "face " + face);
    }
  }

  @Test
  void theSliderStaysWithinTheRun() {
    LateSlider s = new LateSlider(block(), 0);

    assertFalse(s.move(-1));
    assertTrue(s.move(1000));
    assertTrue(s.from() < s.latest());
    assertFalse(s.move(1));
  }

  @Test
  void theSliderStartsWhereItIsTold() {
    assertEquals(12, new LateSlider(block(), 12).from(), 0.6);
  }
}

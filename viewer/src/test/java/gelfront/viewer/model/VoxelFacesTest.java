package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.Vec3;
import org.junit.jupiter.api.Test;

class VoxelFacesTest {
  private static Vec3 corner(VoxelFaces f, int face, int c) {
    int o = 12 * face + 3 * c;
    return new Vec3(f.positions()[o], f.positions()[o + 1], f.positions()[o + 2]);
  }

  @Test
  void aWholeBlockShowsItsOutsideOnly() {
    VoxelFaces f = VoxelFaces.of(Blocks.block(), 0, Cut.NONE);

    assertEquals(2 * (4 * 3 + 3 * 2 + 4 * 2), f.count());
    assertEquals(12 * f.count(), f.positions().length);
    assertEquals(f.count(), f.side().length);
  }

  @Test
  void oneLateCellStandsAloneInItsPlace() {
    VoxelFaces f = VoxelFaces.of(Blocks.block(), 23.5, Cut.NONE);

    assertEquals(6, f.count());
    assertEquals(24, f.setTime()[0]);
    for (int face = 0; face < 6; face++) {
      for (int c = 0; c < 4; c++) {
        Vec3 middle = corner(f, face, c).minus(new Vec3(3.5, 2.5, 1.5));
        assertEquals(Math.sqrt(0.75), middle.length(), 1e-5);
      }
    }
  }

  @Test
  void cellsThatNeverSetAreLate() {
    float[] set = Blocks.block().setTime();
    set[0] = Float.POSITIVE_INFINITY;

    assertEquals(12, VoxelFaces.of(Blocks.with(set), 24, Cut.NONE).count());
  }

  @Test
  void nothingIsLeftAfterTheLast() {
    assertEquals(0, VoxelFaces.of(Blocks.block(), 25, Cut.NONE).count());
  }

  @Test
  void aCutOpensTheInsideToTheEye() {
    VoxelFaces f = VoxelFaces.of(Blocks.block(), 0, new Cut(0, 2, true));

    assertEquals(2 * (2 * 3 + 3 * 2 + 2 * 2), f.count());
    for (int i = 0; i < f.positions().length; i += 3) {
      assertTrue(f.positions()[i] >= 2 - 1e-6, "x " + f.positions()[i]);
    }
  }

  @Test
  void cornersTurnCounterClockwiseSeenFromOutside() {
    VoxelFaces f = VoxelFaces.of(Blocks.block(), 12, Cut.NONE);
    for (int face = 0; face < f.count(); face++) {
      Vec3 a = corner(f, face, 1).minus(corner(f, face, 0));
      Vec3 b = corner(f, face, 2).minus(corner(f, face, 0));
      Vec3 n = a.cross(b);
      double along =
          switch (f.side()[face] / 2) {
            case 0 -> n.x();
            case 1 -> n.y();
            default -> n.z();
          };

      assertEquals(f.side()[face] % 2 == 0 ? -1 : 1, along, 1e-5, "face " + face);
      assertEquals(1, n.length(), 1e-5);
    }
    assertTrue(f.count() > 6);
  }
}

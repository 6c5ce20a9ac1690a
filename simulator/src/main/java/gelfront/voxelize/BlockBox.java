package gelfront.voxelize;

import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.setup.Block;
import gelfront.setup.Side;
import java.util.Locale;

/** The block's outer faces: as stated, or walls all round; on the mouth's side flush with it. */
final class BlockBox {
  /** Metres by which the rim of a slanting sprue may stand out. */
  private static final double SLANT = 0.5e-3;

  private BlockBox() {}

  /**
   * @param cavity round part and feed system
   * @param voxel its edge, metres
   * @throws VoxelException if the cavity sticks out, or a wall is thinner than a voxel
   */
  static Box of(Block block, Box cavity, Mouth mouth, double voxel) {
    Box b = block.outer().orElse(cavity.grown(block.wall()));
    double[] lo = array(b.min());
    double[] hi = array(b.max());
    Side open = side(mouth.direction());
    (open.upper() ? hi : lo)[open.axis()] = array(mouth.centre())[open.axis()];
    double[] least = array(cavity.min());
    double[] most = array(cavity.max());
    for (int face = 0; face < 6; face++) {
      Side side = new Side(face / 2, face % 2 == 1);
      int a = side.axis();
      double wall = side.upper() ? hi[a] - most[a] : least[a] - lo[a];
      if (wall < (side.equals(open) ? -SLANT : voxel)) {
        throw thin(side, wall, voxel);
      }
    }
    return new Box(new Vec3(lo[0], lo[1], lo[2]), new Vec3(hi[0], hi[1], hi[2]));
  }

  private static VoxelException thin(Side side, double wall, double voxel) {
    return new VoxelException(
        wall < 0
            ? String.format(
                Locale.ROOT,
                "the cavity sticks out of the block by %.2f mm on its face %s",
                -wall * 1e3,
                side)
            : String.format(
                Locale.ROOT,
                "only %.2f mm of mould lie between the cavity and the block's face %s; a voxel, here"
                    + " %.2f mm, is the least that can be calculated",
                wall * 1e3,
                side,
                voxel * 1e3));
  }

  /** The face that a direction looks through most. */
  private static Side side(Vec3 d) {
    double x = Math.abs(d.x());
    double y = Math.abs(d.y());
    double z = Math.abs(d.z());
    int a = x >= Math.max(y, z) ? 0 : y >= z ? 1 : 2;
    return new Side(a, array(d)[a] > 0);
  }

  private static double[] array(Vec3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }
}

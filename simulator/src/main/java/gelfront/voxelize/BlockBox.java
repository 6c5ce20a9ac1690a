// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.setup.Block;
import gelfront.setup.Side;
import java.util.Locale;

/** The block's outer faces: as stated, or walls all round with the sprue's open end on one. */
final class BlockBox {
  /** Metres by which the rim of a slanting sprue may stand out, or its middle lie off the face. */
  private static final double SLANT = 0.5e-3;

  private BlockBox() {}

  /**
   * @param cavity round part and feed system
   * @param voxel its edge, metres
   * @param mouthKey of the case file that says where the open end lies
   * @throws VoxelException if the open end is not at an outer face, the cavity sticks out, or a
   *     wall is thinner than a voxel
   */
  static Box of(Block block, Box cavity, Mouth mouth, double voxel, String mouthKey) {
    Box b = block.outer().orElse(cavity.grown(block.wall()));
    double[] lo = array(b.min());
    double[] hi = array(b.max());
    Side open = side(mouth.direction());
    double end = array(mouth.centre())[open.axis()];
    double face = (open.upper() ? hi : lo)[open.axis()];
    double deep = open.upper() ? face - end : end - face;
    if (block.outer().isPresent() && Math.abs(deep) > SLANT) {
      throw inside(mouthKey, mouth, open, deep);
    }
    (open.upper() ? hi : lo)[open.axis()] = end;
    double[] least = array(cavity.min());
    double[] most = array(cavity.max());
    for (int f = 0; f < 6; f++) {
      Side side = new Side(f / 2, f % 2 == 1);
      int a = side.axis();
      double wall = side.upper() ? hi[a] - most[a] : least[a] - lo[a];
      if (side.equals(open) && wall < -SLANT) {
        throw behind(mouthKey, mouth, open, -wall);
      }
      if (!side.equals(open) && wall < voxel) {
        throw thin(block, side, wall, voxel);
      }
    }
    return new Box(new Vec3(lo[0], lo[1], lo[2]), new Vec3(hi[0], hi[1], hi[2]));
  }

  /** A box without what stands on the block: cut off where the sprue leaves it. */
  static Box below(Box all, Mouth atBlock) {
    Side open = side(atBlock.direction());
    double[] lo = array(all.min());
    double[] hi = array(all.max());
    (open.upper() ? hi : lo)[open.axis()] = array(atBlock.centre())[open.axis()];
    return new Box(new Vec3(lo[0], lo[1], lo[2]), new Vec3(hi[0], hi[1], hi[2]));
  }

  private static VoxelException inside(String key, Mouth mouth, Side open, double deep) {
    return new VoxelException(
        key,
        String.format(
            Locale.ROOT,
            "the sprue's open end at %s must lie on the block's face %s, but it %s by %.2f mm: make the"
                + " sprue that much %s, or move the face",
            FeedShapes.mm(mouth.centre()),
            open,
            deep > 0 ? "ends inside the metal" : "stands out of it",
            Math.abs(deep) * 1e3,
            deep > 0 ? "longer" : "shorter"));
  }

  private static VoxelException behind(String key, Mouth mouth, Side open, double beyond) {
    return new VoxelException(
        key,
        String.format(
            Locale.ROOT,
            "the sprue's open end at %s is not at an outer face of the block: part or feed reach"
                + " %.2f mm farther on the side %s; make the sprue longer, or let it come out"
                + " elsewhere",
            FeedShapes.mm(mouth.centre()),
            beyond * 1e3,
            open));
  }

  private static VoxelException thin(Block block, Side side, double wall, double voxel) {
    String corner = side.upper() ? "block.box_max" : "block.box_min";
    return new VoxelException(
        block.outer().isPresent() ? corner : "block.wall",
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

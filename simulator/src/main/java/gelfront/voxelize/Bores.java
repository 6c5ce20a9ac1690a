// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Block;
import java.util.List;

/** The block's coolant channels as holes in its metal. */
final class Bores {
  /** Corners round a hole; its section is 0.3 % too small, its wall 0.07 %. */
  private static final int SEGMENTS = 48;

  private Bores() {}

  /** Metal without the channels: each is a cylinder turned inside out. */
  static TriangleMesh drilled(TriangleMesh metal, List<Block.Channel> channels) {
    TriangleMesh all = metal;
    for (Block.Channel c : channels) {
      double r = 0.5 * c.diameter();
      all = all.plus(turned(Solids.cylinder(c.from(), c.to(), r, r, SEGMENTS)));
    }
    return all;
  }

  private static TriangleMesh turned(TriangleMesh mesh) {
    int[] t = mesh.copyTriangles();
    for (int i = 0; i < t.length; i += 3) {
      int first = t[i];
      t[i] = t[i + 1];
      t[i + 1] = first;
    }
    return new TriangleMesh(mesh.copyVertices(), t);
  }

  /**
   * @throws VoxelException in words, if a channel misses the block or meets the cavity
   */
  static void check(List<Block.Channel> channels, Cavity cavity, Box box) {
    for (Block.Channel c : channels) {
      if (!touches(c, box)) {
        throw new VoxelException(
            "block.channel", "the channel " + ends(c) + " lies outside the block");
      }
      for (int cell = 0; cell < cavity.count(); cell++) {
        Vec3 p = new Vec3(cavity.centre(cell, 0), cavity.centre(cell, 1), cavity.centre(cell, 2));
        if (c.distance(p) < 0.5 * c.diameter() + cavity.edge(cell)) {
          throw new VoxelException(
              "block.channel",
              "the channel " + ends(c) + " runs into part or feed system at " + FeedShapes.mm(p));
        }
      }
    }
  }

  private static boolean touches(Block.Channel c, Box box) {
    Vec3 way = c.to().minus(c.from());
    int pieces = (int) Math.ceil(way.length() / (0.5 * c.diameter())) + 1;
    for (int i = 0; i <= pieces; i++) {
      if (box.contains(c.from().plus(way.times(i / (double) pieces)))) {
        return true;
      }
    }
    return false;
  }

  private static String ends(Block.Channel c) {
    return "from " + FeedShapes.mm(c.from()) + " to " + FeedShapes.mm(c.to());
  }
}

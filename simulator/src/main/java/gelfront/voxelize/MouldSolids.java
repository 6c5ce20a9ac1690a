// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.RectilinearGrid;
import gelfront.mesh.Box;
import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Block;
import gelfront.setup.MouldMesh;
import java.util.Locale;
import java.util.Optional;

/**
 * The mould's own shape.
 *
 * @param mesh of its solids without channels, closed and wound outwards, metres
 * @param drilled the same with them
 * @param cavity part and feed system, likewise
 * @param progress asked while it is cut
 */
record MouldSolids(
    TriangleMesh mesh, TriangleMesh drilled, TriangleMesh cavity, Progress progress) {
  /** Metres that solids may stand out of the stated box, or the cavity out of the solids. */
  private static final double SLACK = 0.5e-3;

  /**
   * @param inside round what of the cavity lies in the block
   * @param box of the block
   * @throws VoxelException in words, if the mesh can't be had or is in another place than the block
   *     and the cavity
   */
  static Optional<MouldSolids> of(
      Block block, TriangleMesh cavity, Box inside, Box box, Progress progress) {
    if (block.mesh().isEmpty() && block.channels().isEmpty()) {
      return Optional.empty();
    }
    TriangleMesh mesh =
        block.mesh().map(m -> loaded(m, inside, box)).orElse(Solids.box(box.min(), box.max()));
    return Optional.of(
        new MouldSolids(mesh, Bores.drilled(mesh, block.channels()), cavity, progress));
  }

  private static TriangleMesh loaded(MouldMesh file, Box inside, Box box) {
    TriangleMesh mesh;
    try {
      mesh = file.load();
    } catch (MeshException e) {
      throw new VoxelException("block.mesh", String.valueOf(e.getMessage()));
    }
    within(inside, mesh.box(), "part and feed system reach out of the mould's solids");
    within(mesh.box(), box, "the mould's solids reach out of box_min, box_max");
    return mesh;
  }

  private static void within(Box inner, Box outer, String what) {
    double[] out = {
      outer.min().x() - inner.min().x(),
      inner.max().x() - outer.max().x(),
      outer.min().y() - inner.min().y(),
      inner.max().y() - outer.max().y(),
      outer.min().z() - inner.min().z(),
      inner.max().z() - outer.max().z()
    };
    for (int side = 0; side < 6; side++) {
      if (out[side] > SLACK) {
        throw new VoxelException(
            "block.mesh",
            String.format(
                Locale.ROOT,
                "%s by %.2f mm on the side %s: the solids span %s to %s; are unit and place right?",
                what,
                out[side] * 1e3,
                (side % 2 == 0 ? "-" : "+") + "xyz".charAt(side / 2),
                FeedShapes.mm(what.startsWith("part") ? outer.min() : inner.min()),
                FeedShapes.mm(what.startsWith("part") ? outer.max() : inner.max())));
      }
    }
  }

  Outside outside(RectilinearGrid grid) {
    return Outside.of(drilled, cavity, grid, progress);
  }
}

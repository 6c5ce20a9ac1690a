// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.UniformGrid;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.setup.Block;
import java.util.Arrays;

/**
 * How coarse the mould's cells may be at the cavity: 0.2 sqrt(alpha t) with t the time of the first
 * setting events, 4 mm at most, one voxel at least. An insert of a poorer conductor that the
 * cavity's walls see within such a cell makes all cells finer that lie abreast of it, on any axis.
 */
final class MouldResolution {
  /** s. */
  private static final double EARLY = 5;

  private static final double SHARE = 0.2;
  private static final double MOST = 4e-3;

  private MouldResolution() {}

  /** Per axis and voxel position, voxels along the edge of a mould cell there. */
  static int[][] of(Cavity cavity, Block block) {
    UniformGrid grid = cavity.grid();
    int per = voxels(block.material(), grid.spacing());
    int[][] all = even(grid, per);
    for (Block.Insert i : block.inserts()) {
      int wanted = voxels(i.material(), grid.spacing());
      if (wanted < per && isNear(cavity, i.region(), per)) {
        refine(grid, i.region().box(), wanted, all);
      }
    }
    return all;
  }

  /** The same everywhere. */
  static int[][] even(UniformGrid grid, int voxels) {
    int[][] all = new int[3][];
    for (int a = 0; a < 3; a++) {
      all[a] = new int[grid.count(a)];
      Arrays.fill(all[a], voxels);
    }
    return all;
  }

  private static int voxels(MouldMaterial m, double voxel) {
    double alpha = m.conductivity() / m.volumetricHeat();
    double edge = Math.min(MOST, SHARE * Math.sqrt(alpha * EARLY));
    return (int) Math.max(1, Math.floor(edge / voxel));
  }

  private static void refine(UniformGrid grid, Box box, int wanted, int[][] all) {
    double[] lo = {box.min().x(), box.min().y(), box.min().z()};
    double[] hi = {box.max().x(), box.max().y(), box.max().z()};
    for (int a = 0; a < 3; a++) {
      for (int i = 0; i < all[a].length; i++) {
        if (grid.edge(a, i) < hi[a] && grid.edge(a, i + 1) > lo[a]) {
          all[a][i] = Math.min(all[a][i], wanted);
        }
      }
    }
  }

  /** Whether a region begins within so many voxels behind a wall. */
  private static boolean isNear(Cavity cavity, Block.Region region, int voxels) {
    Cavity.Walls walls = cavity.walls();
    UniformGrid grid = cavity.grid();
    for (int w = 0; w < walls.count(); w++) {
      Vec3 p = cavity.centre(walls.cell()[w]);
      int a = walls.face()[w] / 2;
      double step = (walls.face()[w] % 2 == 0 ? -1 : 1) * grid.spacing();
      Vec3 out = new Vec3(a == 0 ? step : 0, a == 1 ? step : 0, a == 2 ? step : 0);
      for (int i = 1; i <= voxels; i++) {
        if (region.contains(p.plus(out.times(i)))) {
          return true;
        }
      }
    }
    return false;
  }
}

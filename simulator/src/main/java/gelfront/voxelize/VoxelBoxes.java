// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.UniformGrid;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * Boxes of whole voxels, a voxel or more apart, with a voxel to spare to the grid's sides. What
 * comes closer to each other becomes one box.
 */
final class VoxelBoxes {
  private VoxelBoxes() {}

  /**
   * Positions from {@code lo} to before {@code hi} on each axis.
   *
   * @param lo length 3
   * @param hi length 3
   */
  record VoxelBox(int[] lo, int[] hi) {
    private boolean isEmpty() {
      return lo[0] >= hi[0] || lo[1] >= hi[1] || lo[2] >= hi[2];
    }

    private boolean isNear(VoxelBox b) {
      for (int a = 0; a < 3; a++) {
        if (lo[a] > b.hi[a] || b.lo[a] > hi[a]) {
          return false;
        }
      }
      return true;
    }

    private VoxelBox with(VoxelBox b) {
      int[] l = new int[3];
      int[] h = new int[3];
      for (int a = 0; a < 3; a++) {
        l[a] = Math.min(lo[a], b.lo[a]);
        h[a] = Math.max(hi[a], b.hi[a]);
      }
      return new VoxelBox(l, h);
    }

    /** Grid of cells {@code factor} times smaller, with those of a voxel to spare all round. */
    UniformGrid small(UniformGrid grid, int factor) {
      Vec3 origin =
          new Vec3(grid.edge(0, lo[0] - 1), grid.edge(1, lo[1] - 1), grid.edge(2, lo[2] - 1));
      return new UniformGrid(
          origin, grid.spacing() / factor, cells(0, factor), cells(1, factor), cells(2, factor));
    }

    private int cells(int axis, int factor) {
      return (hi[axis] - lo[axis] + 2) * factor;
    }

    /** Position of the voxel that holds the first cell of {@link #small}. */
    int[] corner() {
      return new int[] {lo[0] - 1, lo[1] - 1, lo[2] - 1};
    }
  }

  static List<VoxelBox> of(UniformGrid grid, List<Box> boxes) {
    List<VoxelBox> apart = new ArrayList<>();
    for (Box b : boxes) {
      VoxelBox box = around(grid, b);
      while (!box.isEmpty()) {
        VoxelBox now = box;
        List<VoxelBox> near = apart.stream().filter(now::isNear).toList();
        apart.removeAll(near);
        box = near.stream().reduce(now, VoxelBox::with);
        if (near.isEmpty()) {
          apart.add(box);
          break;
        }
      }
    }
    return apart;
  }

  private static VoxelBox around(UniformGrid grid, Box b) {
    double[] min = {b.min().x(), b.min().y(), b.min().z()};
    double[] max = {b.max().x(), b.max().y(), b.max().z()};
    int[] lo = new int[3];
    int[] hi = new int[3];
    for (int a = 0; a < 3; a++) {
      double from = (min[a] - grid.edge(a, 0)) / grid.spacing();
      double to = (max[a] - grid.edge(a, 0)) / grid.spacing();
      lo[a] = (int) Math.max(1, Math.floor(from + 1e-6));
      hi[a] = (int) Math.min(grid.count(a) - 1.0, Math.ceil(to - 1e-6));
    }
    return new VoxelBox(lo, hi);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import java.util.Optional;

/**
 * How much metal each mould grid cell holds, and where its middle lies. Whole voxels first; then
 * what the plastisol's cells take or leave at their walls ({@link Cavity#volumes}) is given to the
 * cell behind, or taken from it:
 *
 * <pre>
 *   V      = whole voxels + sum over walls of dx^2 (dx/2 - s) n_d^2
 *   middle   half of each such slice towards the wall, where a cell is one voxel thick</pre>
 *
 * @param volume m3 per mould grid cell
 * @param shift metres along x, y, z from the box's middle to the metal's; length 3 cells
 */
record MetalVolumes(double[] volume, double[] shift) {
  /** Share of its whole voxels that a cell keeps at least. */
  private static final double LEAST = 0.3;

  /** Share of its box below which a cell holds no metal. */
  private static final double NOTHING = 1e-6;

  /**
   * @param tube on the block, whose liquid takes nothing from it
   * @param outside what of the block's box is air; absent: nothing
   */
  static MetalVolumes of(
      Cavity cavity, MouldGrid grid, Optional<TubeWall> tube, Optional<Outside> outside) {
    double[] v = whole(cavity, grid, tube, outside);
    double[] slices = new double[v.length];
    double[] shift = new double[3 * v.length];
    Cavity.Walls walls = cavity.walls();
    for (int w = 0; w < walls.count(); w++) {
      int behind = grid.behind(cavity, w);
      boolean ring = tube.isPresent() && tube.get().behind(w);
      if (!ring && !walls.mouth()[w] && v[behind] > 0) {
        double n = walls.cosine()[w];
        double e = walls.edge()[w];
        double dx = cavity.edge(walls.cell()[w]);
        double slice = (0.5 * dx - walls.distance()[w]) * n * n;
        slices[behind] += e * e * slice;
        int a = walls.face()[w] / 2;
        double part = e * e / grid.area(behind, a);
        double towards = walls.face()[w] % 2 == 1 ? -0.5 : 0.5;
        shift[3 * behind + a] += grid.thickness(cavity, w) == 1 ? towards * part * slice : 0;
      }
    }
    for (int c = 0; c < v.length; c++) {
      v[c] = Math.max(LEAST * v[c], v[c] + slices[c]);
    }
    return new MetalVolumes(v, shift);
  }

  private static double[] whole(
      Cavity cavity, MouldGrid grid, Optional<TubeWall> tube, Optional<Outside> outside) {
    double[] v = new double[grid.coarse().cellCount()];
    double[] least = new double[v.length];
    for (int c = 0; c < v.length; c++) {
      double share = outside.isPresent() ? outside.get().share(c) : 1;
      v[c] = share * grid.coarse().volume(c);
      least[c] = (share < 1 ? Outside.LEAST : NOTHING) * grid.coarse().volume(c);
    }
    for (int c = 0; c < cavity.count(); c++) {
      boolean above = tube.isPresent() && tube.get().holds(c);
      v[grid.holding(cavity, c)] -= above ? 0 : cavity.cubeVolume(c);
    }
    for (int c = 0; c < v.length; c++) {
      v[c] = v[c] < least[c] ? 0 : v[c];
    }
    return v;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.UniformGrid;
import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * Where a cavity's cells lie. Both grids are of one lattice, which hangs on the first solid, the
 * part, and along the axis of the mouth on the mouth, so that a grid plane lies there. So the
 * part's cells stay where they are whatever is joined to it, as long as the mouth keeps its height.
 * Cells are even in number, so that a grid plane lies in a plane of symmetry.
 *
 * @param all round all solids, with two spare cells on every side, one and a half at least
 * @param first round the first solid alone, likewise
 */
record CavityGrid(UniformGrid all, UniformGrid first) {
  /**
   * @param solids at least one
   * @param dx edge of a voxel, metres
   * @param margin metres by which the cavity may outgrow the solids
   */
  static CavityGrid of(List<Labelled> solids, double dx, Optional<Mouth> mouth, double margin) {
    Box whole =
        solids.stream()
            .map(s -> s.mesh().box())
            .reduce(Box::union)
            .orElseThrow(() -> new IllegalArgumentException("nothing to voxelize"));
    UniformGrid all = around(whole.grown(margin), dx);
    UniformGrid first = around(solids.get(0).mesh().box().grown(margin), dx);
    double[] tie = array(first.origin());
    mouth.ifPresent(m -> tieTo(m, tie));
    return new CavityGrid(moved(all, tie), moved(first, tie));
  }

  private static UniformGrid around(Box box, double dx) {
    double[] size = array(box.size());
    double[] lo = array(box.centre());
    int[] n = new int[3];
    for (int a = 0; a < 3; a++) {
      n[a] = even((int) Math.min(1e6, Math.ceil(size[a] / dx - 1e-9) + 4));
      lo[a] -= 0.5 * n[a] * dx;
    }
    return new UniformGrid(new Vec3(lo[0], lo[1], lo[2]), dx, n[0], n[1], n[2]);
  }

  private static int even(int n) {
    return n + n % 2;
  }

  private static void tieTo(Mouth m, double[] tie) {
    double[] d = array(m.direction());
    double[] c = array(m.centre());
    for (int a = 0; a < 3; a++) {
      if (Math.abs(d[a]) > 1 - 1e-9) {
        tie[a] = c[a];
      }
    }
  }

  /** By half a cell at most, so that a grid point lies on {@code tie}. */
  private static UniformGrid moved(UniformGrid grid, double[] tie) {
    double dx = grid.spacing();
    double[] lo = array(grid.origin());
    for (int a = 0; a < 3; a++) {
      lo[a] = tie[a] - Math.rint((tie[a] - lo[a]) / dx) * dx;
    }
    return new UniformGrid(
        new Vec3(lo[0], lo[1], lo[2]), dx, grid.count(0), grid.count(1), grid.count(2));
  }

  private static double[] array(Vec3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.UniformGrid;
import gelfront.mesh.Vec3;
import java.util.BitSet;

/**
 * Where the halves part. The case doesn't say: of the two planes along the sprue and the grid, the
 * one that the cavity throws the larger shadow on is taken.
 *
 * @param axis across the plane
 * @param coordinate of the plane along it, metres
 * @param shadow m2 of the cavity's shadow on it
 */
public record PartingPlane(int axis, double coordinate, double shadow) {

  /** Of a case in voxels. */
  public static PartingPlane of(CaseVoxels voxels) {
    Cavity cavity = voxels.model().cavity();
    Vec3 out = voxels.mouth().direction();
    double[] along = {Math.abs(out.x()), Math.abs(out.y()), Math.abs(out.z())};
    int sprue = along[0] >= along[1] && along[0] >= along[2] ? 0 : along[1] >= along[2] ? 1 : 2;
    int best = -1;
    int most = 0;
    for (int a = 0; a < 3; a++) {
      int columns = a == sprue ? 0 : columns(cavity, a);
      best = columns > most ? a : best;
      most = Math.max(most, columns);
    }
    double dx = cavity.grid().spacing();
    return new PartingPlane(best, along(voxels.mouth().centre(), best), most * dx * dx);
  }

  private static double along(Vec3 p, int axis) {
    return axis == 0 ? p.x() : axis == 1 ? p.y() : p.z();
  }

  private static int columns(Cavity cavity, int axis) {
    UniformGrid grid = cavity.grid();
    int b = (axis + 1) % 3;
    int c = (axis + 2) % 3;
    BitSet seen = new BitSet();
    for (int cell = 0; cell < cavity.count(); cell++) {
      seen.set(cavity.position(cell, b) + grid.count(b) * cavity.position(cell, c));
    }
    return seen.cardinality();
  }
}

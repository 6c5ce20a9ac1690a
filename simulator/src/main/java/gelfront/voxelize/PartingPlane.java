// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.grid.UniformGrid;
import gelfront.mesh.Vec3;
import java.util.Arrays;
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
  /** Shares by which shadows along two axes may differ by how meshes and voxels are cut. */
  private static final double ALIKE = 0.01;

  /** Of a case in voxels. */
  public static PartingPlane of(CaseVoxels voxels) {
    Cavity cavity = voxels.model().cavity();
    Vec3 out = voxels.mouth().direction();
    double[] along = {Math.abs(out.x()), Math.abs(out.y()), Math.abs(out.z())};
    int sprue = along[0] >= along[1] && along[0] >= along[2] ? 0 : along[1] >= along[2] ? 1 : 2;
    int best = -1;
    double most = 0;
    for (int a = 0; a < 3; a++) {
      double shadow = a == sprue ? 0 : shadow(cavity, sprue, 3 - a - sprue);
      if (shadow > most * (1 + ALIKE)) {
        best = a;
        most = shadow;
      }
    }
    return new PartingPlane(best, along(voxels.mouth().centre(), best), most);
  }

  /** m2 of the shadow that each cell throws; those above each other share it by volume. */
  public double[] thrown(Cavity cavity) {
    int b = axis == 0 ? 1 : 0;
    int c = 3 - axis - b;
    int row = cavity.grid().count(b);
    double[] volume = cavity.volumes();
    double[] column = new double[row * cavity.grid().count(c)];
    for (int cell = 0; cell < volume.length; cell++) {
      column[cavity.position(cell, b) + row * cavity.position(cell, c)] += volume[cell];
    }
    double each = shadow / Arrays.stream(column).filter(v -> v > 0).count();
    double[] thrown = new double[volume.length];
    for (int cell = 0; cell < thrown.length; cell++) {
      int at = cavity.position(cell, b) + row * cavity.position(cell, c);
      thrown[cell] = each * volume[cell] / column[at];
    }
    return thrown;
  }

  private static double along(Vec3 p, int axis) {
    return axis == 0 ? p.x() : axis == 1 ? p.y() : p.z();
  }

  /** On the plane of two axes: voxels, and along the second what true walls add or take. */
  private static double shadow(Cavity cavity, int b, int c) {
    UniformGrid grid = cavity.grid();
    int row = grid.count(b);
    BitSet seen = new BitSet();
    for (int cell = 0; cell < cavity.count(); cell++) {
      seen.set(cavity.position(cell, b) + row * cavity.position(cell, c));
    }
    double[][] beyond = beyond(cavity, b, c);
    double beside = 0;
    for (int at = seen.nextSetBit(0); at >= 0; at = seen.nextSetBit(at + 1)) {
      beside += at >= row && seen.get(at - row) ? 0 : beyond[0][at];
      beside += seen.get(at + row) ? 0 : beyond[1][at];
    }
    return (seen.cardinality() * grid.spacing() + beside) * grid.spacing();
  }

  /** Metres that walls lie outside a column at most, down and up axis {@code c}; by column. */
  private static double[][] beyond(Cavity cavity, int b, int c) {
    UniformGrid grid = cavity.grid();
    double[][] most = new double[2][grid.count(b) * grid.count(c)];
    for (double[] side : most) {
      Arrays.fill(side, -grid.spacing());
    }
    Cavity.Walls walls = cavity.walls();
    for (int w = 0; w < walls.count(); w++) {
      if (walls.face()[w] / 2 == c) {
        int up = walls.face()[w] % 2;
        int cell = walls.cell()[w];
        int at = cavity.position(cell, c);
        double off = walls.distance()[w] + (up == 1 ? 1 : -1) * cavity.centre(cell, c);
        double outside = off - (up == 1 ? grid.edge(c, at + 1) : -grid.edge(c, at));
        int column = cavity.position(cell, b) + grid.count(b) * at;
        most[up][column] = Math.max(most[up][column], outside);
      }
    }
    return most;
  }
}

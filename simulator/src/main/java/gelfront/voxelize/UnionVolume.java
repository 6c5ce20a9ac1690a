// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.base.Progress;
import gelfront.grid.UniformGrid;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;

/**
 * Volume of what lies inside a mesh, places that several shells cover counted once.
 *
 * <p>Along each axis in turn: lines through a grid of squares, each line's lengths where the
 * winding number is positive, times the square. The three sums are three estimates of one volume.
 *
 * @param m3 their mean
 * @param error m3, the largest difference of one from it
 */
public record UnionVolume(double m3, double error) {
  /** Squares along the longest side. */
  private static final int ACROSS = 300;

  /**
   * @param mesh closed; solids wound outwards, voids inwards; metres
   */
  public static UnionVolume of(TriangleMesh mesh) {
    UniformGrid grid = grid(mesh.box());
    double[] v = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      v[axis] = along(Crossings.of(mesh, grid, axis, Progress.NONE), grid, axis);
    }
    double mean = (v[0] + v[1] + v[2]) / 3;
    double error = 0;
    for (double one : v) {
      error = Math.max(error, Math.abs(one - mean));
    }
    return new UnionVolume(mean, error);
  }

  private static UniformGrid grid(Box box) {
    Vec3 s = box.size();
    double dx = Math.max(s.x(), Math.max(s.y(), s.z())) / ACROSS;
    int nx = squares(s.x(), dx);
    int ny = squares(s.y(), dx);
    int nz = squares(s.z(), dx);
    Vec3 origin = box.centre().minus(new Vec3(nx, ny, nz).times(dx / 2));
    return new UniformGrid(origin, dx, nx, ny, nz);
  }

  private static int squares(double size, double dx) {
    return Math.max(1, (int) Math.ceil(size / dx - 1e-9));
  }

  private static double along(Crossings c, UniformGrid grid, int axis) {
    int columns = grid.count((axis + 1) % 3) * grid.count((axis + 2) % 3);
    double length = 0;
    for (int column = 0; column < columns; column++) {
      int winding = 0;
      for (int i = c.first(column); i < c.end(column); i++) {
        if (winding > 0) {
          length += c.at(i) - c.at(i - 1);
        }
        winding += c.normal(i) < 0 ? 1 : -1;
      }
    }
    return length * grid.spacing() * grid.spacing();
  }
}

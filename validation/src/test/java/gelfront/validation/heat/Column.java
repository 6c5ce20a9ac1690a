// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.grid.RectilinearGrid;
import gelfront.grid.UniformGrid;
import gelfront.grid.VoxelModel;
import gelfront.mesh.Vec3;

/**
 * Models in one dimension, made by hand: plastisol cells in a row from x = 0, and mould on one side
 * or both.
 *
 * <pre>  mould cells m-1 ... 1 0 | plastisol cells 0 1 2 ... n-1 | (as on the left, or insulated)
 * </pre>
 */
final class Column {
  private Column() {}

  /**
   * Mould of one sort behind the end at x = 0.
   *
   * @param n plastisol cells
   * @param dx their edge, metres
   * @param widths of the mould cells, the one at the wall first, metres
   * @param k W/m K of the mould
   * @param c J/m3 K of the mould
   * @param start °C of the mould
   * @param film contact conductance, W/m2 K
   */
  static VoxelModel onMould(
      int n, double dx, double[] widths, double k, double c, double start, double film) {
    MouldCells mould = chain(widths, dx * dx, k, c, start);
    double resistance = (1 / film + 0.5 * widths[0] / k) / (dx * dx);
    Cavity cavity = row(n, dx, 1);
    return new VoxelModel(cavity, mould, new int[] {0}, new double[] {resistance});
  }

  /** Both ends held at a temperature through a film. */
  static VoxelModel slab(int n, double dx, double temperature, double film) {
    MouldCells mould = chain(new double[] {1}, 1, 1e6, 1e12, temperature);
    double r = 1 / (film * dx * dx);
    return new VoxelModel(row(n, dx, 2), mould, new int[] {0, 0}, new double[] {r, r});
  }

  /** The end at x = 0 held at a temperature, the other insulated. */
  static VoxelModel held(int n, double dx, double temperature) {
    MouldCells mould = chain(new double[] {1}, 1, 1e6, 1e12, temperature);
    return new VoxelModel(row(n, dx, 1), mould, new int[] {0}, new double[] {0});
  }

  private static Cavity row(int n, double dx, int ends) {
    int[] cells = new int[n];
    int[] neighbours = new int[6 * n];
    for (int i = 0; i < n; i++) {
      cells[i] = i;
      java.util.Arrays.fill(neighbours, 6 * i, 6 * i + 6, i);
      neighbours[6 * i] = Math.max(0, i - 1);
      neighbours[6 * i + 1] = Math.min(n - 1, i + 1);
    }
    int[] cell = ends == 1 ? new int[] {0} : new int[] {0, n - 1};
    byte[] face = ends == 1 ? new byte[] {0} : new byte[] {0, 1};
    float[] half = new float[ends];
    float[] straight = new float[ends];
    java.util.Arrays.fill(half, (float) (0.5 * dx));
    double[] edge = new double[ends];
    java.util.Arrays.fill(straight, 1);
    java.util.Arrays.fill(edge, dx);
    return new Cavity(
        new UniformGrid(Vec3.ZERO, dx, n, 1, 1),
        cells,
        neighbours,
        new byte[n],
        new Cavity.Walls(cell, face, half, straight, edge, new boolean[ends]));
  }

  private static MouldCells chain(double[] widths, double area, double k, double c, double start) {
    int m = widths.length;
    double side = Math.sqrt(area);
    double[] edges = new double[m + 1];
    int[] cells = new int[m];
    double[] capacity = new double[m];
    double[] at = new double[m];
    int[] neighbour = new int[3 * m];
    double[] conductance = new double[3 * m];
    java.util.Arrays.fill(neighbour, -1);
    for (int i = 0; i < m; i++) {
      edges[i + 1] = edges[i] + widths[i];
      cells[i] = i;
      capacity[i] = c * widths[i] * area;
      at[i] = start;
      if (i + 1 < m) {
        neighbour[3 * i] = i + 1;
        conductance[3 * i] = k * area / (0.5 * (widths[i] + widths[i + 1]));
      }
    }
    RectilinearGrid grid =
        new RectilinearGrid(edges, new double[] {0, side}, new double[] {0, side});
    return new MouldCells(
        grid,
        cells,
        cells.clone(),
        capacity,
        at,
        neighbour,
        conductance,
        new double[3 * m],
        new double[m],
        at);
  }
}

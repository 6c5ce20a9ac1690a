// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import gelfront.mesh.Vec3;

/**
 * A box of equal cubes. Cell (i, j, k) has number i + nx (j + ny k) and its centre at origin + (i +
 * 1/2, j + 1/2, k + 1/2) spacing.
 *
 * @param origin lower corner of cell (0, 0, 0), metres
 * @param spacing edge of a cube, metres
 * @param nx cells along x
 * @param ny cells along y
 * @param nz cells along z
 */
public record UniformGrid(Vec3 origin, double spacing, int nx, int ny, int nz) {
  /** Of a voxel; more than a mesh's coordinates are rounded by. */
  private static final double HAIR = 1e-4;

  public UniformGrid {
    if (!(spacing > 0) || nx < 1 || ny < 1 || nz < 1) {
      throw new IllegalArgumentException("a grid needs cells of a size");
    }
    if ((long) nx * ny * nz > Integer.MAX_VALUE - 8) {
      throw new IllegalArgumentException(
          "too many cells: " + nx + " x " + ny + " x " + nz + "; choose a larger voxel");
    }
  }

  public int cellCount() {
    return nx * ny * nz;
  }

  /** Number of cells along axis 0 x, 1 y, 2 z. */
  public int count(int axis) {
    return axis == 0 ? nx : axis == 1 ? ny : nz;
  }

  /** Step in cell number for one cell along an axis. */
  public int stride(int axis) {
    return axis == 0 ? 1 : axis == 1 ? nx : nx * ny;
  }

  public int index(int i, int j, int k) {
    return i + nx * (j + ny * k);
  }

  /** Position along an axis of cell number {@code cell}. */
  public int position(int cell, int axis) {
    return axis == 0 ? cell % nx : axis == 1 ? cell / nx % ny : cell / nx / ny;
  }

  /** Coordinate of the centres at position {@code i} along an axis, metres. */
  public double centre(int axis, int i) {
    return edge(axis, i) + 0.5 * spacing;
  }

  /**
   * Coordinate at which the centres at position {@code i} are looked for, metres: a hair farther
   * from the grid's middle, so that a wall right through centres looks alike on both sides.
   */
  public double probe(int axis, int i) {
    return centre(axis, i) + HAIR * spacing * Integer.signum(2 * i + 1 - count(axis));
  }

  /** Coordinate of the lower edge of position {@code i} along an axis, metres. */
  public double edge(int axis, int i) {
    double o = axis == 0 ? origin.x() : axis == 1 ? origin.y() : origin.z();
    return o + i * spacing;
  }

  public Vec3 centre(int cell) {
    return new Vec3(
        centre(0, position(cell, 0)), centre(1, position(cell, 1)), centre(2, position(cell, 2)));
  }
}

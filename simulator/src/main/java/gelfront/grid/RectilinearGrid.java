// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import gelfront.mesh.Vec3;
import java.util.Arrays;

/**
 * Cells between rising edges on each axis; cell (i, j, k) has number i + nx (j + ny k). Edges in
 * metres.
 */
public final class RectilinearGrid {
  private final double[][] edges;

  /**
   * @throws IllegalArgumentException unless every axis has at least two strictly rising edges
   */
  public RectilinearGrid(double[] x, double[] y, double[] z) {
    edges = new double[][] {x.clone(), y.clone(), z.clone()};
    for (double[] e : edges) {
      if (e.length < 2) {
        throw new IllegalArgumentException("an axis needs two edges at least");
      }
      for (int i = 1; i < e.length; i++) {
        if (!(e[i] > e[i - 1])) {
          throw new IllegalArgumentException("edges must rise: " + e[i - 1] + ", " + e[i]);
        }
      }
    }
  }

  /** Cells along an axis. */
  public int count(int axis) {
    return edges[axis].length - 1;
  }

  public int cellCount() {
    return count(0) * count(1) * count(2);
  }

  public int index(int i, int j, int k) {
    return i + count(0) * (j + count(1) * k);
  }

  public int position(int cell, int axis) {
    return switch (axis) {
      case 0 -> cell % count(0);
      case 1 -> cell / count(0) % count(1);
      default -> cell / count(0) / count(1);
    };
  }

  public double edge(int axis, int i) {
    return edges[axis][i];
  }

  /** Width of position {@code i} along an axis, metres. */
  public double width(int axis, int i) {
    return edges[axis][i + 1] - edges[axis][i];
  }

  public double centre(int axis, int i) {
    return 0.5 * (edges[axis][i] + edges[axis][i + 1]);
  }

  public Vec3 centre(int cell) {
    return new Vec3(
        centre(0, position(cell, 0)), centre(1, position(cell, 1)), centre(2, position(cell, 2)));
  }

  /** m3. */
  public double volume(int cell) {
    return width(0, position(cell, 0)) * width(1, position(cell, 1)) * width(2, position(cell, 2));
  }

  /** Position along an axis that holds {@code coordinate}, the nearest one if it lies outside. */
  public int find(int axis, double coordinate) {
    int at = Arrays.binarySearch(edges[axis], coordinate);
    int i = at >= 0 ? at : -at - 2;
    return Math.max(0, Math.min(count(axis) - 1, i));
  }
}

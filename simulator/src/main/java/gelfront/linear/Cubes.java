// SPDX-License-Identifier: Apache-2.0
package gelfront.linear;

import java.util.Arrays;

/**
 * Where nodes lie: each is a cube on a common lattice. Coarser grids come of it.
 *
 * @param x lower corner, lattice steps; y and z likewise
 * @param y lower corner
 * @param z lower corner
 * @param size edge, lattice steps
 */
public record Cubes(int[] x, int[] y, int[] z, int[] size) {
  private static final int BITS = 21;

  /** Lower corners along an axis. */
  public int[] corner(int axis) {
    return axis == 0 ? x : axis == 1 ? y : z;
  }

  public int count() {
    return size.length;
  }

  /**
   * The next coarser cubes: those smaller than {@code edge} are gathered in cubes of that edge.
   *
   * @param up gets the coarse cube of each; length count
   */
  Cubes gathered(int edge, int[] up) {
    long[] key = new long[count()];
    for (int c = 0; c < key.length; c++) {
      int unit = size[c] < edge ? edge : 1;
      long at = Math.floorDiv(x[c], unit);
      at = at << BITS | Math.floorDiv(y[c], unit);
      key[c] = (at << BITS | Math.floorDiv(z[c], unit)) << 1 | (unit == 1 ? 1 : 0);
    }
    long[] sorted = key.clone();
    Arrays.sort(sorted);
    int n = 0;
    for (int i = 0; i < sorted.length; i++) {
      if (i == 0 || sorted[i] != sorted[i - 1]) {
        sorted[n++] = sorted[i];
      }
    }
    Cubes coarse = new Cubes(new int[n], new int[n], new int[n], new int[n]);
    for (int c = 0; c < key.length; c++) {
      int to = Arrays.binarySearch(sorted, 0, n, key[c]);
      up[c] = to;
      boolean alone = size[c] >= edge;
      coarse.x[to] = alone ? x[c] : Math.floorDiv(x[c], edge) * edge;
      coarse.y[to] = alone ? y[c] : Math.floorDiv(y[c], edge) * edge;
      coarse.z[to] = alone ? z[c] : Math.floorDiv(z[c], edge) * edge;
      coarse.size[to] = alone ? size[c] : edge;
    }
    return coarse;
  }

  int smallest() {
    return Arrays.stream(size).min().orElse(1);
  }
}

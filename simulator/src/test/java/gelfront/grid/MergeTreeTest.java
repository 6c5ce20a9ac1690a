// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.mesh.Vec3;
import org.junit.jupiter.api.Test;

class MergeTreeTest {
  /** A row of cells along x; the mouth at its low end. */
  static Cavity row(int n) {
    UniformGrid grid = new UniformGrid(Vec3.ZERO, 1e-3, n + 2, 3, 3);
    int[] cells = new int[n];
    int[] neighbours = new int[6 * n];
    for (int i = 0; i < n; i++) {
      cells[i] = grid.index(i + 1, 1, 1);
      java.util.Arrays.fill(neighbours, 6 * i, 6 * i + 6, i);
      neighbours[6 * i] = Math.max(0, i - 1);
      neighbours[6 * i + 1] = Math.min(n - 1, i + 1);
    }
    Cavity.Walls walls =
        new Cavity.Walls(
            new int[] {0},
            new byte[] {0},
            new float[] {0.5e-3f},
            new float[] {1},
            new double[] {1e-3},
            new boolean[] {true});
    return new Cavity(grid, cells, neighbours, new byte[n], walls);
  }

  @Test
  void levelIsTheBestLowestValueOnTheWayToTheMouth() {
    float[] field = {9, 3, 8, 2, 7, 6};

    Basins b = MergeTree.of(row(6), field, 0, 0, 1);

    assertArrayEquals(new float[] {9, 3, 3, 2, 2, 2}, b.level());
  }

  @Test
  void aBasinHasItsSaddleAndItsPeaks() {
    float[] field = {9, 2, 7, 4, 8, 1};

    Basins b = MergeTree.of(row(6), field, 0.5, 0, 1);

    assertEquals(1, b.basins().size());
    Basins.Basin basin = b.basins().get(0);
    assertEquals(1, basin.saddle());
    assertEquals(3, basin.cells().length);
    assertEquals(2, basin.peaks().size());
    assertEquals(4, basin.peaks().get(0).cell());
    assertEquals(2, basin.peaks().get(1).cell());
    assertEquals(3, basin.peaks().get(1).saddle());
  }

  @Test
  void bumpsBelowThePersistenceAreNoBasins() {
    float[] field = {9, 5, 5.3f, 4, 3};

    Basins b = MergeTree.of(row(5), field, 0.5, 0, 1);

    assertEquals(0, b.basins().size());
  }

  @Test
  void whatNoPathLeadsToKeepsMinusOne() {
    Cavity open = row(4);
    Cavity.Walls none =
        new Cavity.Walls(
            new int[0], new byte[0], new float[0], new float[0], new double[0], new boolean[0]);
    Cavity shut = new Cavity(open.grid(), open.cells(), open.neighbours(), open.region(), none);

    Basins b = MergeTree.of(shut, new float[] {1, 2, 3, 4}, 0, 0, 1);

    assertArrayEquals(new float[] {-1, -1, -1, -1}, b.level());
  }
}

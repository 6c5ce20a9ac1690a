// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

/**
 * How wide the cavity is at a cell: the least of the three lines from wall to wall through its
 * middle along the axes. Exact where a duct's section is cut square; a round one that lies askew to
 * all three axes has none shorter than 1.22 times its width.
 */
public final class Chords {
  private Chords() {}

  /** Metres; +infinity where every line leaves cells of the cell's size. */
  public static double least(Cavity cavity, int cell) {
    double least = Double.POSITIVE_INFINITY;
    for (int axis = 0; axis < 3; axis++) {
      double both = toWall(cavity, cell, 2 * axis) + toWall(cavity, cell, 2 * axis + 1);
      least = Math.min(least, both);
    }
    return least;
  }

  private static double toWall(Cavity cavity, int cell, int face) {
    int c = cell;
    double way = 0;
    for (int next = cavity.neighbours()[6 * c + face]; next != c; ) {
      way += cavity.edge(c);
      c = next;
      next = cavity.neighbours()[6 * c + face];
    }
    return way + atWall(cavity.walls(), c, face);
  }

  /** Sorted by cell: the few links of one lie together. */
  private static double atWall(Cavity.Walls walls, int cell, int face) {
    int w = java.util.Arrays.binarySearch(walls.cell(), cell);
    if (w < 0) {
      return Double.POSITIVE_INFINITY;
    }
    while (w > 0 && walls.cell()[w - 1] == cell) {
      w--;
    }
    for (; w < walls.count() && walls.cell()[w] == cell; w++) {
      if (walls.face()[w] == face) {
        return walls.distance()[w];
      }
    }
    return Double.POSITIVE_INFINITY;
  }
}

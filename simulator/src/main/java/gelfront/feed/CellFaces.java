package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.grid.UniformGrid;
import java.util.Arrays;

/** The plastisol's cells as the flow sees them: each face once, and where cells lie. */
final class CellFaces {
  /** Cells on either side of each face; {@code b} lies further along {@code axis}. */
  final int[] a;

  final int[] b;
  final byte[] axis;

  /** Lattice places per cell, x, y and z. */
  final int[][] place = new int[3][];

  /** Cells along each axis of the lattice. */
  final int[] counts;

  /** Edge of a cell, metres. */
  final double dx;

  CellFaces(Cavity cavity) {
    UniformGrid grid = cavity.grid();
    dx = grid.spacing();
    counts = new int[] {grid.nx(), grid.ny(), grid.nz()};
    int n = cavity.count();
    for (int d = 0; d < 3; d++) {
      place[d] = new int[n];
      for (int c = 0; c < n; c++) {
        place[d][c] = grid.position(cavity.cells()[c], d);
      }
    }
    int[] low = new int[3 * n];
    int[] high = new int[3 * n];
    byte[] along = new byte[3 * n];
    int m = 0;
    for (int e = 1; e < 6 * n; e += 2) {
      int to = cavity.neighbours()[e];
      if (to != e / 6) {
        low[m] = e / 6;
        high[m] = to;
        along[m++] = (byte) (e % 6 / 2);
      }
    }
    a = Arrays.copyOf(low, m);
    b = Arrays.copyOf(high, m);
    axis = Arrays.copyOf(along, m);
  }

  int cells() {
    return place[0].length;
  }

  int count() {
    return a.length;
  }
}

package gelfront.heat;

import gelfront.grid.Cavity;
import java.util.Arrays;

/**
 * Faces between cells whose middles are not one voxel apart because a wall adds to a cell or takes
 * from it: what such a face conducts, less what an even one does. Each face twice, once from either
 * side, sorted by cell, so that any range of cells can be worked on alone.
 */
final class MovedMiddles {
  private final int[] cell;
  private final int[] other;
  private final double[] excess;

  private MovedMiddles(int[] cell, int[] other, double[] excess) {
    this.cell = cell;
    this.other = other;
    this.excess = excess;
  }

  static MovedMiddles of(Cavity cavity) {
    float[] shift = cavity.shifts();
    int[] neighbours = cavity.neighbours();
    int[] cell = new int[64];
    int[] other = new int[64];
    double[] excess = new double[64];
    int m = 0;
    for (int i = 0; i < neighbours.length; i++) {
      int c = i / 6;
      int axis = i % 6 / 2;
      int j = neighbours[i];
      double further = (shift[3 * j + axis] - shift[3 * c + axis]) * (i % 2 == 0 ? -1 : 1);
      if (j != c && further != 0) {
        if (m == cell.length) {
          cell = Arrays.copyOf(cell, 2 * m);
          other = Arrays.copyOf(other, 2 * m);
          excess = Arrays.copyOf(excess, 2 * m);
        }
        cell[m] = c;
        other[m] = j;
        excess[m++] = 1 / (1 + further) - 1;
      }
    }
    return new MovedMiddles(
        Arrays.copyOf(cell, m), Arrays.copyOf(other, m), Arrays.copyOf(excess, m));
  }

  int count() {
    return cell.length;
  }

  /** Of all entries, rising; not to be modified. */
  int[] cells() {
    return cell;
  }

  int cell(int entry) {
    return cell[entry];
  }

  int other(int entry) {
    return other[entry];
  }

  /** Conductance over that of a face between even cubes, less 1. */
  double excess(int entry) {
    return excess[entry];
  }
}

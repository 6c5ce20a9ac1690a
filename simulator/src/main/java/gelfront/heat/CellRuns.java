package gelfront.heat;

import java.util.Arrays;

/**
 * Runs of consecutive plastisol cells whose six neighbours lie at the same six offsets in cell
 * number, so that a loop over a run needs no look-ups. Along a row of voxels runs are long.
 */
final class CellRuns {
  private final int[] start;
  private final int[] offset;
  private final int count;

  private CellRuns(int[] start, int[] offset, int count) {
    this.start = start;
    this.offset = offset;
    this.count = count;
  }

  /**
   * @param neighbours six cell numbers a cell, the cell itself where there is none
   */
  static CellRuns of(int[] neighbours) {
    int n = neighbours.length / 6;
    int[] start = new int[16];
    int count = 0;
    for (int i = 0; i < n; i++) {
      if (i == 0 || !sameOffsets(neighbours, i)) {
        if (count + 2 > start.length) {
          start = Arrays.copyOf(start, 2 * start.length);
        }
        start[count++] = i;
      }
    }
    start[count] = n;
    int[] offset = new int[6 * count];
    for (int run = 0; run < count; run++) {
      for (int f = 0; f < 6; f++) {
        offset[6 * run + f] = neighbours[6 * start[run] + f] - start[run];
      }
    }
    return new CellRuns(start, offset, count);
  }

  private static boolean sameOffsets(int[] neighbours, int i) {
    for (int f = 0; f < 6; f++) {
      if (neighbours[6 * i + f] != neighbours[6 * (i - 1) + f] + 1) {
        return false;
      }
    }
    return true;
  }

  int count() {
    return count;
  }

  /** First cell of a run; of run {@code count()}: the number of cells. */
  int start(int run) {
    return start[run];
  }

  int offset(int run, int face) {
    return offset[6 * run + face];
  }

  /** The run that holds a cell. */
  int holding(int cell) {
    int at = Arrays.binarySearch(start, 0, count, cell);
    return at >= 0 ? at : -at - 2;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import java.util.Arrays;

/**
 * The values across one face of consecutive cells, copied into a short buffer. Along a row of
 * voxels the neighbours' numbers rise with the cells' own, so that few long copies do. Across the
 * faces to x the neighbour is the next cell but at the ends of rows: one copy for all, and these
 * ends by themselves.
 */
final class Neighbours {
  /** Below this a plain loop beats the call. */
  private static final int SHORT = 12;

  /** Faces 0 and 1 look along rows. */
  private static final int[] ALONG = {-1, 1};

  private static final int NONE = 0;

  private final int cells;

  /** Offset that holds unless a piece says otherwise. */
  private final int usual;

  private final int[] start;
  private final int[] end;
  private final int[] offset;

  /** First piece of each block, and their number at the end. */
  private final int[] first;

  private final int block;

  /**
   * @param neighbours six cell numbers a cell, the cell itself where there is none
   * @param face 0 to 5
   * @param block cells; every copy begins at a multiple of it and is no longer
   */
  Neighbours(int[] neighbours, int face, int block) {
    cells = neighbours.length / 6;
    usual = face < ALONG.length ? ALONG[face] : NONE;
    int[] starts = new int[16];
    int[] ends = new int[16];
    int[] offsets = new int[16];
    int count = 0;
    first = new int[(cells + block - 1) / block + 1];
    for (int i = 0; i < cells; i++) {
      if (i % block == 0) {
        first[i / block] = count;
      }
      int off = neighbours[6 * i + face] - i;
      if (usual != NONE && off == usual) {
        continue;
      }
      boolean goesOn = count > 0 && ends[count - 1] == i && offsets[count - 1] == off;
      if (goesOn && i % block != 0) {
        ends[count - 1] = i + 1;
        continue;
      }
      if (count == starts.length) {
        starts = Arrays.copyOf(starts, 2 * count);
        ends = Arrays.copyOf(ends, 2 * count);
        offsets = Arrays.copyOf(offsets, 2 * count);
      }
      starts[count] = i;
      ends[count] = i + 1;
      offsets[count++] = off;
    }
    first[first.length - 1] = count;
    start = Arrays.copyOf(starts, count);
    end = Arrays.copyOf(ends, count);
    offset = Arrays.copyOf(offsets, count);
    this.block = block;
  }

  /**
   * @param y per cell
   * @param from a multiple of the block
   * @param to beyond the last cell, which is the block's last or the last of all
   * @param out from entry 0 on; modified
   */
  void copy(double[] y, int from, int to, double[] out) {
    if (usual != NONE) {
      int a = Math.max(0, from + usual);
      int b = Math.min(cells, to + usual);
      System.arraycopy(y, a, out, a - usual - from, b - a);
    }
    int last = first[from / block + 1];
    for (int piece = first[from / block]; piece < last; piece++) {
      int a = start[piece];
      int count = end[piece] - a;
      int at = a + offset[piece];
      if (count < SHORT) {
        for (int k = a - from; k < a - from + count; k++) {
          out[k] = y[at++];
        }
      } else {
        System.arraycopy(y, at, out, a - from, count);
      }
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import java.util.Arrays;

/**
 * The values across one face of consecutive cells, copied into a short buffer. Along a row of
 * voxels the neighbours' numbers rise with the cells' own, so that few long copies do.
 */
final class Neighbours {
  /** Below this a plain loop beats the call. */
  private static final int SHORT = 12;

  private final int[] start;
  private final int[] offset;
  private final int[] holding;
  private final int block;

  /**
   * @param neighbours six cell numbers a cell, the cell itself where there is none
   * @param face 0 to 5
   * @param block cells; every copy begins at a multiple of it
   */
  Neighbours(int[] neighbours, int face, int block) {
    int n = neighbours.length / 6;
    int[] starts = new int[16];
    int[] offsets = new int[16];
    int count = 0;
    holding = new int[n / block + 1];
    for (int i = 0; i < n; i++) {
      int off = neighbours[6 * i + face] - i;
      if (count == 0 || off != offsets[count - 1]) {
        if (count + 1 == starts.length) {
          starts = Arrays.copyOf(starts, 2 * count + 2);
          offsets = Arrays.copyOf(offsets, 2 * count + 2);
        }
        starts[count] = i;
        offsets[count++] = off;
      }
      if (i % block == 0) {
        holding[i / block] = count - 1;
      }
    }
    starts[count] = n;
    start = Arrays.copyOf(starts, count + 1);
    offset = Arrays.copyOf(offsets, count);
    this.block = block;
  }

  /**
   * @param y per cell
   * @param from a multiple of the block
   * @param to beyond the last cell
   * @param out from entry 0 on; modified
   */
  void copy(double[] y, int from, int to, double[] out) {
    int piece = holding[from / block];
    for (int a = from; a < to; piece++) {
      int b = Math.min(to, start[piece + 1]);
      int at = a + offset[piece];
      if (b - a < SHORT) {
        for (int k = a - from; k < b - from; k++) {
          out[k] = y[at++];
        }
      } else {
        System.arraycopy(y, at, out, a - from, b - a);
      }
      a = b;
    }
  }
}

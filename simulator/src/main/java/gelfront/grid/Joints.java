// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import java.util.Arrays;

/**
 * Faces between a voxel and a smaller cube. Each stands here twice, once from either side, sorted
 * by cell, so that any range of cells can be worked on alone.
 *
 * <pre>
 *   +-------+---+
 *   |       | o |   the face is the smaller cube's;
 *   |   o   +---+   its cells' middles are (dx + dx / r) / 2 apart along its axis
 *   |       | o |
 *   +-------+---+</pre>
 *
 * @param start first entry of each cell, and the number of entries at the end; length n + 1, or 1
 *     where there are no such faces
 * @param other cell across the face, per entry
 * @param face 0 to 5 as in {@link Cavity.Walls}, seen from the cell, per entry
 */
public record Joints(int[] start, int[] other, byte[] face) {
  /** All cubes are of one size. */
  public static final Joints NONE = new Joints(new int[1], new int[0], new byte[0]);

  /**
   * @param cells plastisol cells in all
   * @param large the larger cube of each face
   * @param small the smaller one
   * @param face seen from the larger
   */
  public static Joints of(int cells, int[] large, int[] small, byte[] face) {
    int[] start = new int[cells + 1];
    for (int i = 0; i < large.length; i++) {
      start[large[i] + 1]++;
      start[small[i] + 1]++;
    }
    for (int c = 0; c < cells; c++) {
      start[c + 1] += start[c];
    }
    int[] next = Arrays.copyOf(start, cells);
    int[] other = new int[2 * large.length];
    byte[] from = new byte[2 * large.length];
    for (int i = 0; i < large.length; i++) {
      int l = next[large[i]]++;
      int s = next[small[i]]++;
      other[l] = small[i];
      from[l] = face[i];
      other[s] = large[i];
      from[s] = (byte) (face[i] ^ 1);
    }
    return new Joints(start, other, from);
  }

  /** Entries, twice the number of faces. */
  public int count() {
    return other.length;
  }

  /** First entry of a cell. */
  public int first(int cell) {
    return other.length == 0 ? 0 : start[cell];
  }

  /** Beyond the last entry of a cell. */
  public int end(int cell) {
    return other.length == 0 ? 0 : start[cell + 1];
  }
}

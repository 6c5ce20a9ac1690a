// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The plastisol on cells coarse enough to travel in a page: cubes of n x n x n cells of the run,
 * each with the mean of those of them that hold plastisol.
 */
final class CoarseFields {
  /** Empty cells on every side, for values to be spread into. */
  private static final int PAD = 2;

  private final Vec3 origin;
  private final double spacing;
  private final int[] size;

  /** Numbers of the coarse cells that hold plastisol, rising. */
  private final int[] cells;

  /** Place in {@link #cells} of each cell of the run. */
  private final int[] slot;

  private final int[] members;

  private CoarseFields(Fields f, int[] lo, int[] size, int factor) {
    this.size = size;
    this.spacing = f.spacing() * factor;
    this.origin =
        f.origin()
            .plus(new Vec3(lo[0], lo[1], lo[2]).times(f.spacing()))
            .minus(new Vec3(PAD, PAD, PAD).times(spacing));
    int[] number = new int[f.cells().length];
    for (int c = 0; c < number.length; c++) {
      int[] at = place(f, c);
      number[c] = 0;
      for (int a = 2; a >= 0; a--) {
        number[c] = number[c] * size[a] + (at[a] - lo[a]) / factor + PAD;
      }
    }
    this.cells = Arrays.stream(number).sorted().distinct().toArray();
    this.slot = Arrays.stream(number).map(n -> Arrays.binarySearch(cells, n)).toArray();
    this.members = new int[cells.length];
    Arrays.stream(slot).forEach(s -> members[s]++);
  }

  /**
   * @param f with at least one cell
   * @param mostCells of the box round the plastisol, with two empty cells on every side
   */
  static CoarseFields of(Fields f, int mostCells) {
    int[] lo = {f.nx(), f.ny(), f.nz()};
    int[] hi = {-1, -1, -1};
    for (int c = 0; c < f.cells().length; c++) {
      int[] at = place(f, c);
      for (int a = 0; a < 3; a++) {
        lo[a] = Math.min(lo[a], at[a]);
        hi[a] = Math.max(hi[a], at[a]);
      }
    }
    int factor = 1;
    while ((long) side(lo, hi, 0, factor) * side(lo, hi, 1, factor) * side(lo, hi, 2, factor)
        > mostCells) {
      factor++;
    }
    int[] size = {
      side(lo, hi, 0, factor), side(lo, hi, 1, factor), side(lo, hi, 2, factor),
    };
    return new CoarseFields(f, lo, size, factor);
  }

  private static int side(int[] lo, int[] hi, int axis, int factor) {
    return (hi[axis] - lo[axis]) / factor + 1 + 2 * PAD;
  }

  private static int[] place(Fields f, int c) {
    int cell = f.cells()[c];
    return new int[] {cell % f.nx(), cell / f.nx() % f.ny(), cell / f.nx() / f.ny()};
  }

  /** Lower corner of the box, metres. */
  Vec3 origin() {
    return origin;
  }

  /** Edge of a coarse cell, metres. */
  double spacing() {
    return spacing;
  }

  /** Coarse cells of the box along x, y, z. */
  int[] size() {
    return size.clone();
  }

  /** Number of coarse cells that hold plastisol. */
  int count() {
    return cells.length;
  }

  /** First cell and length of each run of cells that hold plastisol, by turns. */
  List<Integer> runs() {
    List<Integer> out = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= cells.length; i++) {
      if (i == cells.length || cells[i] != cells[i - 1] + 1) {
        out.add(cells[from]);
        out.add(i - from);
        from = i;
      }
    }
    return out;
  }

  /** Means of a field of the run, one per coarse cell that holds plastisol. */
  float[] means(float[] field) {
    double[] sum = new double[cells.length];
    for (int c = 0; c < field.length; c++) {
      sum[slot[c]] += field[c];
    }
    float[] out = new float[cells.length];
    for (int s = 0; s < out.length; s++) {
      out[s] = (float) (sum[s] / members[s]);
    }
    return out;
  }
}

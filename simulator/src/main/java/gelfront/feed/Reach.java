// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import gelfront.grid.Joints;
import java.util.stream.IntStream;

/**
 * Which cells flow and are joined to the sprue's mouth by cells that flow. Cells that follow each
 * other in a row make a run; runs that touch are united. That reads cells in the order they lie in,
 * where a search from the mouth would jump about.
 */
final class Reach {
  private static final int FACES = 6;

  /** The run that stands for the open end, and for air in the sprue. */
  private static final int OPEN = 0;

  private final Cavity cavity;
  private final int[] mouthCells;

  /** Run per cell, -1 where nothing flows. */
  private final int[] run;

  /** A run united with each, lower or itself. */
  private final int[] root;

  private final boolean[] joined;
  private boolean part;

  Reach(Cavity cavity) {
    this.cavity = cavity;
    Cavity.Walls walls = cavity.walls();
    mouthCells =
        IntStream.range(0, walls.count())
            .filter(w -> walls.mouth()[w])
            .map(w -> walls.cell()[w])
            .distinct()
            .toArray();
    run = new int[cavity.count()];
    root = new int[cavity.count() + 1];
    joined = new boolean[cavity.count()];
  }

  /**
   * @param temperature °C per cell
   * @param empty cells that air is in; what flows beside them is joined, too
   * @return per cell; overwritten by the next call
   */
  boolean[] find(double[] temperature, double noFlow, boolean[] empty) {
    number(temperature, noFlow, empty);
    uniteRows();
    uniteSizes();
    uniteOpen(empty);
    collect();
    return joined;
  }

  private void number(double[] temperature, double noFlow, boolean[] empty) {
    int[] neighbours = cavity.neighbours();
    int last = OPEN;
    root[OPEN] = OPEN;
    for (int c = 0; c < run.length; c++) {
      if (empty[c] || !(temperature[c] > noFlow)) {
        run[c] = -1;
        continue;
      }
      boolean goesOn = c > 0 && run[c - 1] >= 0 && neighbours[FACES * c] == c - 1;
      if (!goesOn) {
        last++;
        root[last] = last;
      }
      run[c] = last;
    }
  }

  /** Across the faces to y and z; each pair of runs that lie side by side is met once. */
  private void uniteRows() {
    int[] neighbours = cavity.neighbours();
    for (int face = 3; face < FACES; face += 2) {
      int from = -1;
      int to = -1;
      for (int c = 0; c < run.length; c++) {
        int b = run[neighbours[FACES * c + face]];
        if (run[c] >= 0 && b >= 0 && (run[c] != from || b != to)) {
          from = run[c];
          to = b;
          unite(from, to);
        }
      }
    }
  }

  /** Across faces between cells of two sizes. */
  private void uniteSizes() {
    Joints joints = cavity.refinement().joints();
    for (int c = 0; joints.count() > 0 && c < run.length; c++) {
      for (int i = joints.first(c); i < joints.end(c); i++) {
        int other = joints.other()[i];
        if (other > c && run[c] >= 0 && run[other] >= 0) {
          unite(run[c], run[other]);
        }
      }
    }
  }

  private void uniteOpen(boolean[] empty) {
    for (int c : mouthCells) {
      if (run[c] >= 0) {
        unite(run[c], OPEN);
      }
    }
    for (int c = 0; c < empty.length; c++) {
      for (int f = empty[c] ? cavity.faces(c) - 1 : -1; f >= 0; f--) {
        int to = cavity.across(c, f);
        if (run[to] >= 0) {
          unite(run[to], OPEN);
        }
      }
    }
  }

  private void unite(int a, int b) {
    int low = find(a);
    int high = find(b);
    root[Math.max(low, high)] = Math.min(low, high);
  }

  private int find(int of) {
    int r = of;
    while (root[r] != r) {
      root[r] = root[root[r]];
      r = root[r];
    }
    return r;
  }

  private void collect() {
    byte[] region = cavity.region();
    part = false;
    int last = -1;
    boolean open = false;
    for (int c = 0; c < run.length; c++) {
      if (run[c] != last) {
        last = run[c];
        open = last >= 0 && find(last) == OPEN;
      }
      joined[c] = open;
      part |= open && region[c] == Cavity.Region.PART.ordinal();
    }
  }

  /** What the last search found; not to be modified. */
  boolean[] joined() {
    return joined;
  }

  /** Cells beside one that the last search found joined. */
  int joinedBeside(int c) {
    int n = 0;
    for (int f = cavity.faces(c) - 1; f >= 0; f--) {
      n += joined[cavity.across(c, f)] ? 1 : 0;
    }
    return n;
  }

  /** Whether the last search reached the part. */
  boolean part() {
    return part;
  }
}

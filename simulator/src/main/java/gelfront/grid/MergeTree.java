// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * For every cell the best way to the sprue's mouth through a field:
 *
 * <pre>  level(x) = max over paths from x to the mouth of min along the path of field</pre>
 *
 * <p>Computed for all cells at once by filling the landscape from its highest cell down. Two
 * regions meet at a saddle; where only one of them holds the mouth, the other is a basin behind
 * that saddle. This is the merge tree of the field; branches of less persistence than asked are
 * grid noise and not reported. Fed with set times it tells when each place was cut off and by what;
 * fed with widths it tells the narrowest place on the way.
 */
public final class MergeTree {
  private final Cavity cavity;
  private final float[] field;
  private final boolean[] mouth;
  private final double persistence;
  private final double share;
  private final int leastCells;

  private final int[] parent;
  private final int[] next;
  private final int[] tail;
  private final int[] size;
  private final boolean[] rooted;
  private final float[] level;
  private final int[] peakOf;
  private final List<List<Basins.Peak>> branches;
  private final int[] branchesAt;
  private final List<Basins.Basin> basins = new ArrayList<>();

  private MergeTree(
      Cavity cavity, float[] field, double persistence, double share, int leastCells) {
    this.cavity = cavity;
    this.field = field;
    this.persistence = persistence;
    this.share = share;
    this.leastCells = leastCells;
    int n = cavity.count();
    mouth = mouthCells(cavity);
    parent = new int[n];
    Arrays.fill(parent, -1);
    next = new int[n];
    Arrays.fill(next, -1);
    tail = new int[n];
    size = new int[n];
    rooted = new boolean[n];
    level = new float[n];
    Arrays.fill(level, -1);
    peakOf = new int[n];
    Arrays.fill(peakOf, -1);
    branches = new ArrayList<>();
    branchesAt = new int[n];
    Arrays.fill(branchesAt, -1);
  }

  /**
   * @param field per plastisol cell, not negative, may be +infinity
   * @param persistence that a peak must rise above its saddle
   * @param share of its own height that it must rise by, too
   * @param leastCells cells that a basin must have
   */
  public static Basins of(
      Cavity cavity, float[] field, double persistence, double share, int leastCells) {
    return new MergeTree(cavity, field, persistence, share, leastCells).fill();
  }

  /** Cells at the sprue's open end. */
  public static boolean[] mouthCells(Cavity cavity) {
    boolean[] at = new boolean[cavity.count()];
    Cavity.Walls walls = cavity.walls();
    for (int w = 0; w < walls.count(); w++) {
      at[walls.cell()[w]] |= walls.mouth()[w];
    }
    return at;
  }

  private Basins fill() {
    for (int c : highestFirst()) {
      open(c);
    }
    basins.sort(Comparator.comparingInt((Basins.Basin r) -> -r.cells().length));
    return new Basins(level, basins);
  }

  private int[] highestFirst() {
    long[] keys = new long[field.length];
    for (int c = 0; c < keys.length; c++) {
      keys[c] = ((long) Float.floatToIntBits(field[c]) << 32) | (0x7fffffff - c);
    }
    Arrays.sort(keys);
    int[] order = new int[keys.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = 0x7fffffff - (int) keys[keys.length - 1 - i];
    }
    return order;
  }

  private void open(int c) {
    parent[c] = c;
    tail[c] = c;
    size[c] = 1;
    rooted[c] = mouth[c];
    if (mouth[c]) {
      level[c] = field[c];
    }
    int faces = cavity.faces(c);
    for (int f = 0; f < faces; f++) {
      int j = cavity.across(c, f);
      if (j != c && parent[j] >= 0) {
        meet(find(c), find(j), c);
      }
    }
  }

  private int find(int c) {
    int root = c;
    while (parent[root] != root) {
      root = parent[root];
    }
    while (parent[c] != root) {
      int up = parent[c];
      parent[c] = root;
      c = up;
    }
    return root;
  }

  /** A component's representative is its highest cell: its peak. */
  private void meet(int a, int b, int saddle) {
    if (a == b) {
      return;
    }
    int high = higher(a, b) ? a : b;
    int low = high == a ? b : a;
    if (rooted[a] != rooted[b]) {
      close(rooted[a] ? b : a, saddle);
    } else if (!rooted[a] && risesAbove(low, saddle)) {
      branch(high, low, saddle);
    }
    join(high, low);
  }

  private boolean higher(int a, int b) {
    return field[a] > field[b] || (field[a] == field[b] && a < b);
  }

  private boolean risesAbove(int component, int saddle) {
    double by = (double) field[component] - field[saddle];
    return size[component] >= leastCells
        && by > persistence
        && (by > share * field[component] || Float.isInfinite(field[component]));
  }

  private void branch(int high, int low, int saddle) {
    List<Basins.Peak> list = peaks(high);
    list.add(new Basins.Peak(low, field[low], field[saddle], saddle));
    for (int c = low; c >= 0; c = next[c]) {
      if (peakOf[c] < 0) {
        peakOf[c] = low;
      }
    }
    if (branchesAt[low] >= 0) {
      list.addAll(branches.get(branchesAt[low]));
    }
  }

  private List<Basins.Peak> peaks(int component) {
    if (branchesAt[component] < 0) {
      branchesAt[component] = branches.size();
      branches.add(new ArrayList<>());
    }
    return branches.get(branchesAt[component]);
  }

  private void close(int component, int saddle) {
    float at = field[saddle];
    int[] cells = new int[size[component]];
    int n = 0;
    for (int c = component; c >= 0; c = next[c]) {
      cells[n++] = c;
      level[c] = Math.min(at, field[c]);
    }
    // A cell that opens and joins the fed region in the same breath was never cut off.
    if (n > 1 && risesAbove(component, saddle)) {
      basins.add(basin(component, cells, at, saddle));
    }
  }

  private Basins.Basin basin(int component, int[] cells, float at, int saddle) {
    List<Basins.Peak> peaks = new ArrayList<>();
    peaks.add(new Basins.Peak(component, field[component], at, saddle));
    if (branchesAt[component] >= 0) {
      branches.get(branchesAt[component]).stream()
          .sorted(Comparator.comparingDouble((Basins.Peak s) -> -s.height()))
          .forEach(peaks::add);
    }
    int[] peak = new int[cells.length];
    for (int i = 0; i < cells.length; i++) {
      for (int s = 1; s < peaks.size(); s++) {
        if (peakOf[cells[i]] == peaks.get(s).cell()) {
          peak[i] = s;
        }
      }
    }
    return new Basins.Basin(cells, peak, at, saddle, peaks);
  }

  private void join(int high, int low) {
    parent[low] = high;
    next[tail[high]] = low;
    tail[high] = tail[low];
    size[high] += size[low];
    rooted[high] |= rooted[low];
  }
}

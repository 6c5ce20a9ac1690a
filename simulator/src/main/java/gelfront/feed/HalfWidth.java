// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import java.util.Arrays;

/**
 * Half the width of the liquid about each cell, in lattice steps: the radius of the largest ball of
 * liquid that holds the cell, but nowhere more than a cell wider than next door, so that what is
 * near a narrow place counts as narrow.
 */
final class HalfWidth {
  /** What gates count as at most. */
  private static final int GATE = 4;

  private static final int WIDEST = Short.MAX_VALUE;

  private final Cavity cavity;
  private final int[][] place;
  private final int[] size;
  private final int[] queue;

  /** Middle of the ball that a cell lies in; then the queue of long steps. */
  private final int[] source;

  private final short[] depth;
  private final short[] width;

  /** Ends of the queues for short and long steps. */
  private int shortTail;

  private int longTail;

  HalfWidth(Cavity cavity, CellFaces faces) {
    this.cavity = cavity;
    place = faces.place;
    size = faces.size;
    int n = faces.cells();
    queue = new int[n];
    source = new int[n];
    depth = new short[n];
    width = new short[n];
  }

  /**
   * @return per cell, 0 where nothing flows; overwritten by the next call
   */
  short[] of(boolean[] flowing) {
    depths(flowing);
    int[] order = byValue(depth);
    Arrays.fill(width, (short) 0);
    balls(order);
    narrowGates();
    grade();
    return width;
  }

  /** Lattice steps from each cell's middle to the nearest that doesn't flow. */
  private void depths(boolean[] flowing) {
    Arrays.fill(depth, (short) 0);
    int tail = 0;
    for (int c = 0; c < depth.length; c++) {
      if (flowing[c] && atEdge(flowing, c)) {
        depth[c] = (short) size[c];
        source[c] = c;
        queue[tail++] = c;
      }
    }
    for (int head = 0; head < tail; head++) {
      int c = queue[head];
      for (int f = cavity.faces(c) - 1; f >= 0; f--) {
        int to = cavity.across(c, f);
        if (flowing[to] && depth[to] == 0) {
          source[to] = source[c];
          depth[to] = (short) (size[to] + Math.sqrt(squared(to, source[c])));
          queue[tail++] = to;
        }
      }
    }
  }

  private boolean atEdge(boolean[] flowing, int c) {
    int other = 0;
    for (int f = cavity.faces(c) - 1; f >= 0; f--) {
      int to = cavity.across(c, f);
      if (!flowing[to]) {
        return true;
      }
      other += to == c && !cavity.mirrored(c, f) ? 0 : 1;
    }
    return other < 6;
  }

  private double squared(int c, int d) {
    double off = 0.5 * (size[c] - size[d]);
    double x = place[0][c] - place[0][d] + off;
    double y = place[1][c] - place[1][d] + off;
    double z = place[2][c] - place[2][d] + off;
    return x * x + y * y + z * z;
  }

  /** Cells with a value, smallest first. */
  private static int[] byValue(short[] value) {
    int most = 0;
    for (short v : value) {
      most = Math.max(most, v);
    }
    int[] start = new int[most + 2];
    for (short v : value) {
      start[v + 1]++;
    }
    int none = start[1];
    for (int v = 1; v < start.length; v++) {
      start[v] += start[v - 1];
    }
    int[] order = new int[value.length - none];
    for (int c = 0; c < value.length; c++) {
      if (value[c] > 0) {
        order[start[value[c]]++ - none] = c;
      }
    }
    return order;
  }

  /** From the widest on, each ball gives its width to the cells that have none yet. */
  private void balls(int[] order) {
    int at = order.length - 1;
    while (at >= 0) {
      int v = depth[order[at]];
      int tail = 0;
      for (; at >= 0 && depth[order[at]] == v; at--) {
        int c = order[at];
        if (width[c] == 0) {
          width[c] = (short) v;
          source[c] = c;
          queue[tail++] = c;
        }
      }
      spread(v, tail);
    }
  }

  private void spread(int v, int seeds) {
    int tail = seeds;
    double reach = (v + 1.0) * (v + 1.0);
    for (int head = 0; head < tail; head++) {
      int c = queue[head];
      for (int f = cavity.faces(c) - 1; f >= 0; f--) {
        int to = cavity.across(c, f);
        boolean free = depth[to] > 0 && width[to] == 0 && enters(source[c], to);
        if (free && squared(to, source[c]) <= reach) {
          width[to] = (short) v;
          source[to] = source[c];
          queue[tail++] = to;
        }
      }
    }
  }

  /** A gate's width is its own, however far the balls beside it reach into a short one. */
  private boolean enters(int from, int to) {
    byte gate = (byte) Cavity.Region.GATE.ordinal();
    return cavity.region()[to] != gate || cavity.region()[from] == gate;
  }

  /** So that cells in gates stay alone, and the liquid's way into them is resolved by its own. */
  private void narrowGates() {
    byte gate = (byte) Cavity.Region.GATE.ordinal();
    for (int c = 0; c < width.length; c++) {
      if (cavity.region()[c] == gate) {
        width[c] = (short) Math.min(width[c], GATE);
      }
    }
  }

  /**
   * Walks from narrow to wide; a cell may be one wider than the cell that it is reached from. Steps
   * among small cells are shorter than others: each kind has a queue of its own, in which widths
   * rise, so that no cell comes into one twice.
   */
  private void grade() {
    int[] order = byValue(width);
    shortTail = 0;
    longTail = 0;
    int at = 0;
    int shortHead = 0;
    int longHead = 0;
    while (at < order.length || shortHead < shortTail || longHead < longTail) {
      int own = at < order.length ? width[order[at]] : WIDEST;
      int near = shortHead < shortTail ? width[queue[shortHead]] : WIDEST;
      int far = longHead < longTail ? width[source[longHead]] : WIDEST;
      if (near <= own && near <= far) {
        lower(queue[shortHead++]);
      } else if (far <= own) {
        lower(source[longHead++]);
      } else {
        lower(order[at++]);
      }
    }
  }

  private void lower(int c) {
    for (int f = cavity.faces(c) - 1; f >= 0; f--) {
      int to = cavity.across(c, f);
      int step = Math.max(size[c], size[to]);
      if (width[to] > width[c] + step) {
        width[to] = (short) (width[c] + step);
        if (step == 1) {
          queue[shortTail++] = to;
        } else {
          source[longTail++] = to;
        }
      }
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import java.util.Arrays;

/**
 * What comes to the front is turned over there: the fast liquid from the middle is laid on the
 * walls, so that the front goes on evenly and as warm in all of it. Rates of neighbouring blocks,
 * those that share a neighbour, are levelled by area, over about half the channel's width and no
 * further: in a flat cavity a thick place still runs ahead.
 */
final class Fountain {
  private final FillNet net;
  private final int[] turns;
  private final int[] hubs;
  private final int[] entry;
  private int[] next;
  private int[] member;
  private int entries;

  Fountain(FillNet net) {
    this.net = net;
    int n = net.count();
    turns = new int[n];
    for (int b = 0; b < n; b++) {
      double wide = net.blocks.wide()[b];
      // Levelling spreads by a block or two a turn, and as the root of their number.
      turns[b] = (int) Math.max(2, Math.ceil(0.5 * wide * wide));
    }
    hubs = new int[n];
    entry = new int[n];
    Arrays.fill(entry, -1);
    next = new int[8 * 64];
    member = new int[next.length];
  }

  /**
   * @param front blocks that liquid comes to
   * @param count of these
   * @param rate m3/s per block; modified
   * @param warm W per block; modified
   */
  void level(int[] front, int count, double[] rate, double[] warm) {
    int found = hubs(front, count);
    int most = 0;
    for (int i = 0; i < count; i++) {
      most = Math.max(most, turns[front[i]]);
    }
    for (int turn = 0; turn < most; turn++) {
      for (int i = 0; i < found; i++) {
        level(entry[hubs[i]], turn, rate, warm);
      }
    }
    for (int i = 0; i < found; i++) {
      entry[hubs[i]] = -1;
    }
  }

  private int hubs(int[] front, int count) {
    int found = 0;
    entries = 0;
    int[] start = net.graph.start();
    for (int i = 0; i < count; i++) {
      int b = front[i];
      for (int k = start[b] - 1; k < start[b + 1]; k++) {
        int hub = k < start[b] ? b : net.graph.other()[k];
        if (entry[hub] < 0) {
          hubs[found++] = hub;
        }
        add(hub, b);
      }
    }
    return found;
  }

  private void add(int hub, int b) {
    if (entries == next.length) {
      next = Arrays.copyOf(next, 2 * entries);
      member = Arrays.copyOf(member, 2 * entries);
    }
    member[entries] = b;
    next[entries] = entry[hub];
    entry[hub] = entries++;
  }

  private void level(int list, int turn, double[] rate, double[] warm) {
    double area = 0;
    double sum = 0;
    double heat = 0;
    for (int i = list; i >= 0; i = next[i]) {
      int b = member[i];
      if (turns[b] > turn) {
        area += net.area(b);
        sum += rate[b];
        heat += warm[b];
      }
    }
    for (int i = list; i >= 0; i = next[i]) {
      int b = member[i];
      if (turns[b] > turn) {
        rate[b] = sum * net.area(b) / area;
        warm[b] = heat * net.area(b) / area;
      }
    }
  }
}

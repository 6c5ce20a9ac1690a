// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import java.util.Arrays;

/**
 * What comes to the front is turned over there: the fast liquid from the middle is laid on the
 * walls, and most of it where the front lags, so that it goes on evenly and as warm in all of it.
 * Rates of neighbouring blocks, those that share a neighbour, are levelled by
 *
 * <pre>  A exp(-2 (x - x_mean) / W)</pre>
 *
 * <p>over about half the channel's width W and no further: in a flat cavity a thick place still
 * runs ahead. x is how far the front has come in a block along its way, and A the front that the
 * block has across: of a front aslant to the grid there is one block for each column along the axis
 * that it faces most, so A = V / (dx max |n|). n is the way from full neighbours to the block,
 * summed with those of the blocks beside it.
 */
final class Fountain {
  /** Of a way summed up from unit steps, what is no way at all. */
  private static final double NOWHERE = 1e-9;

  private final FillNet net;
  private final Front front;
  private final int[] turns;
  private final int[] hubs;
  private final int[] entry;
  private int[] next;
  private int[] member;
  private double[] weight;
  private int entries;

  /**
   * Way of the front through a block, of no length in particular; and summed with its neighbours'.
   */
  private final double[][] own;

  private final double[][] way;

  Fountain(FillNet net, Front front) {
    this.net = net;
    this.front = front;
    own = new double[3][net.count()];
    way = new double[3][net.count()];
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
    weight = new double[next.length];
  }

  /**
   * @param to blocks that liquid comes to
   * @param count of these
   * @param rate m3/s per block; modified
   * @param warm W per block; modified
   */
  void level(int[] to, int count, double[] rate, double[] warm) {
    int found = hubs(to, count);
    ways(to, count, found);
    for (int i = 0; i < found; i++) {
      weigh(entry[hubs[i]]);
    }
    int most = 0;
    for (int i = 0; i < count; i++) {
      most = Math.max(most, turns[to[i]]);
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

  private void ways(int[] to, int count, int found) {
    for (int i = 0; i < count; i++) {
      int b = to[i];
      for (int d = 0; d < 3; d++) {
        own[d][b] = fromFull(b, d);
        way[d][b] = 0;
      }
    }
    for (int h = 0; h < found; h++) {
      for (int d = 0; d < 3; d++) {
        double sum = sum(entry[hubs[h]], own[d]);
        for (int i = entry[hubs[h]]; i >= 0; i = next[i]) {
          way[d][member[i]] += sum;
        }
      }
    }
  }

  /** Along an axis: from full neighbours to a block, each by one. */
  private double fromFull(int b, int axis) {
    double sum = 0;
    for (int k = net.graph.start()[b]; k < net.graph.start()[b + 1]; k++) {
      int other = net.graph.other()[k];
      if (front.full[other]) {
        double d = net.middle[axis][b] - net.middle[axis][other];
        sum += 2 * d / (net.size[b] + net.size[other]);
      }
    }
    return sum;
  }

  private double sum(int list, double[] of) {
    double sum = 0;
    for (int i = list; i >= 0; i = next[i]) {
      sum += of[member[i]];
    }
    return sum;
  }

  /** Weights of a hub's members. */
  private void weigh(int list) {
    double[] n = {sum(list, own[0]), sum(list, own[1]), sum(list, own[2])};
    double length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    double per = length > NOWHERE ? 1 / length : 0;
    double mean = 0;
    int count = 0;
    for (int i = list; i >= 0; i = next[i]) {
      mean += per * come(member[i], n);
      count++;
    }
    for (int i = list; i >= 0; i = next[i]) {
      int b = member[i];
      double wide = 2 * net.blocks.wide()[b] * net.size[b];
      weight[i] = area(b) * Math.exp(-2 * (per * come(b, n) - mean / count) / wide);
    }
  }

  /** How far the front has come in a block, metres, times the length of the way n. */
  private double come(int b, double[] n) {
    double most = Math.max(Math.abs(n[0]), Math.max(Math.abs(n[1]), Math.abs(n[2])));
    double in = (front.share(b) - 0.5) * net.size[b] * most;
    return in + n[0] * net.middle[0][b] + n[1] * net.middle[1][b] + n[2] * net.middle[2][b];
  }

  /** m2 of front that a block has across its way. */
  private double area(int b) {
    double x = Math.abs(way[0][b]);
    double y = Math.abs(way[1][b]);
    double z = Math.abs(way[2][b]);
    double most = Math.max(x, Math.max(y, z));
    double slant = most > NOWHERE ? Math.sqrt(x * x + y * y + z * z) / most : 1;
    return net.area(b) * slant;
  }

  private int hubs(int[] to, int count) {
    int found = 0;
    entries = 0;
    int[] start = net.graph.start();
    for (int i = 0; i < count; i++) {
      int b = to[i];
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
      weight = Arrays.copyOf(weight, 2 * entries);
    }
    member[entries] = b;
    next[entries] = entry[hub];
    entry[hub] = entries++;
  }

  private void level(int list, int turn, double[] rate, double[] warm) {
    double all = 0;
    double sum = 0;
    double heat = 0;
    for (int i = list; i >= 0; i = next[i]) {
      int b = member[i];
      if (turns[b] > turn) {
        all += weight[i];
        sum += rate[b];
        heat += warm[b];
      }
    }
    for (int i = list; i >= 0; i = next[i]) {
      int b = member[i];
      if (turns[b] > turn) {
        rate[b] = sum * weight[i] / all;
        warm[b] = heat * weight[i] / all;
      }
    }
  }
}

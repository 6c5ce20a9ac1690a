// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import java.util.Arrays;
import java.util.function.IntConsumer;

/**
 * How the front goes on at one pressure, row of blocks by row: what came to a block that is full by
 * now comes to those behind it, and is turned over there ({@link Fountain}).
 */
final class Wave {
  /** Of a block, how far beyond its end the fastest front may come before rates are handed on. */
  private static final double BEYOND = 0.5;

  /** Least weight of a neighbour that lies aside from the way, over one straight on. */
  private static final double ASIDE = 0.1;

  private final FillNet net;
  private final Front front;
  private final Fountain fountain;

  /** m3/s and W per block that isn't full. */
  final double[] rate;

  final double[] warm;
  private final int[] coming;
  private final boolean[] listed;
  private int count;

  Wave(FillNet net, Front front) {
    this.net = net;
    this.front = front;
    fountain = new Fountain(net, front);
    int n = net.count();
    rate = new double[n];
    warm = new double[n];
    coming = new int[n];
    listed = new boolean[n];
  }

  /** Blocks beside full ones, and those that outside liquid comes to; their rates are levelled. */
  void gather() {
    Arrays.fill(listed, false);
    Arrays.fill(warm, 0);
    count = 0;
    for (int b = 0; b < rate.length; b++) {
      if (!front.full[b] && (rate[b] > 0 || front.beside(b))) {
        list(b);
      }
    }
    fountain.level(coming, count, rate, warm);
  }

  private void list(int b) {
    if (!listed[b]) {
      listed[b] = true;
      coming[count++] = b;
    }
  }

  /** s until the fastest front has gone on by so many blocks beyond the one it stands in. */
  double row(double ahead) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      int b = coming[i];
      if (rate[b] > 0) {
        least = Math.min(least, (front.air(b) + ahead * net.volume[b]) / rate[b]);
      }
    }
    return least;
  }

  void slow(double by) {
    for (int i = 0; by != 1 && i < count; i++) {
      rate[coming[i]] *= by;
      warm[coming[i]] *= by;
    }
  }

  /**
   * One step.
   *
   * @param from s at which it begins
   * @param filled told of each block that is full now
   */
  void go(double from, double dt, IntConsumer filled) {
    double left = dt;
    while (left > 0) {
      fountain.level(coming, count, rate, warm);
      double now = row(BEYOND);
      now = now < 0.9 * left ? now : left;
      front.take(coming, count, rate, warm, from + dt - left, now);
      left -= now;
      for (int i = 0; i < front.touched(); i++) {
        int b = front.touched(i);
        list(b);
        if (front.full[b]) {
          filled.accept(b);
        }
      }
      handOn(left);
    }
  }

  /** Rates of full blocks go on to those behind; the rest of these to all the front. */
  private void handOn(double left) {
    double rest = 0;
    double restWarm = 0;
    double sum = 0;
    int all = count;
    for (int i = 0; i < all && left > 0; i++) {
      int b = coming[i];
      if (front.full[b] && !handOn(b, left)) {
        rest += rate[b];
        restWarm += warm[b];
      }
    }
    int kept = 0;
    for (int i = 0; i < count; i++) {
      int b = coming[i];
      if (front.full[b]) {
        listed[b] = false;
        rate[b] = 0;
        warm[b] = 0;
      } else {
        coming[kept++] = b;
        sum += rate[b];
      }
    }
    count = kept;
    for (int i = 0; rest > 0 && sum > 0 && i < count; i++) {
      int b = coming[i];
      warm[b] += restWarm * rate[b] / sum;
      rate[b] += rest * rate[b] / sum;
    }
  }

  private boolean handOn(int b, double left) {
    int[] start = net.graph.start();
    double all = 0;
    for (int k = start[b]; k < start[b + 1]; k++) {
      all += weight(b, k);
    }
    for (int k = start[b]; all > 0 && k < start[b + 1]; k++) {
      double share = weight(b, k) / all;
      if (share > 0) {
        int to = net.graph.other()[k];
        list(to);
        rate[to] += share * rate[b];
        warm[to] += share * warm[b];
        front.cameFrom(b, to, share * rate[b] * left);
      }
    }
    return all > 0;
  }

  private double weight(int b, int k) {
    int to = net.graph.other()[k];
    return front.full[to]
        ? 0
        : net.blocks.shape()[net.graph.edge()[k]] * Math.max(ASIDE, front.onward(b, to));
  }
}

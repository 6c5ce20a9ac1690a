// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import java.util.Arrays;

/**
 * How full each block is, with how much heat, and when and from where the front came. A block that
 * gets more than it holds hands the rest on to its neighbours that aren't full, so that nothing is
 * lost whatever the step.
 */
final class Front {
  private final FillNet net;

  /** m3 of liquid per block. */
  final double[] content;

  /** J in a block while it isn't full. */
  final double[] heat;

  final boolean[] full;

  /** s at which the first liquid came, and at which a block was full; +infinity: never. */
  final float[] began;

  final float[] filled;

  /** J/m3 of what filled a block; NaN while it isn't full. */
  final double[] arrived;

  /** Way of what came in, weighted by volume; x, y and z. */
  final double[][] way;

  private final int[] queue;
  private final double[] bring;
  private final double[] bringHeat;
  private final double[] since;
  private int tail;
  private int fullCount;
  private double held;

  Front(FillNet net) {
    this.net = net;
    int n = net.count();
    content = new double[n];
    heat = new double[n];
    full = new boolean[n];
    began = new float[n];
    filled = new float[n];
    arrived = new double[n];
    way = new double[3][n];
    Arrays.fill(began, Float.POSITIVE_INFINITY);
    Arrays.fill(filled, Float.POSITIVE_INFINITY);
    Arrays.fill(arrived, Double.NaN);
    queue = new int[n];
    bring = new double[n];
    bringHeat = new double[n];
    since = new double[n];
  }

  double share(int b) {
    return full[b] ? 1 : content[b] / net.volume[b];
  }

  /** m3 of air in a block. */
  double air(int b) {
    return full[b] ? 0 : net.volume[b] - content[b];
  }

  /** Whether a block has a full one beside it. */
  boolean beside(int b) {
    for (int k = net.graph.start()[b]; k < net.graph.start()[b + 1]; k++) {
      if (full[net.graph.other()[k]]) {
        return true;
      }
    }
    return false;
  }

  boolean complete() {
    return fullCount == full.length;
  }

  int fullBlocks() {
    return fullCount;
  }

  /** Blocks that the last step brought something to. */
  int touched() {
    return tail;
  }

  /** The i-th of these. */
  int touched(int i) {
    return queue[i];
  }

  /** m3 in all. */
  double held() {
    return held;
  }

  /** Liquid that came from one block to another, to know later from where it came. */
  void cameFrom(int from, int to, double volume) {
    double[] d = new double[3];
    double length = 0;
    for (int k = 0; k < 3; k++) {
      d[k] = net.middle[k][to] - net.middle[k][from];
      length += d[k] * d[k];
    }
    double per = length > 0 ? volume / Math.sqrt(length) : 0;
    for (int k = 0; k < 3; k++) {
      way[k][to] += per * d[k];
    }
  }

  /** Cosine between the way that what is in a block came and the way on to another. */
  double onward(int from, int to) {
    double dot = 0;
    double a = 0;
    double b = 0;
    for (int k = 0; k < 3; k++) {
      double d = net.middle[k][to] - net.middle[k][from];
      dot += way[k][from] * d;
      a += way[k][from] * way[k][from];
      b += d * d;
    }
    return a > 0 && b > 0 ? dot / Math.sqrt(a * b) : 1;
  }

  /**
   * Takes what a step brings.
   *
   * @param blocks that get something
   * @param count of these
   * @param rate m3/s per block
   * @param warm W per block
   * @param from s at which the step begins
   * @return m3 for which there was no room
   */
  double take(int[] blocks, int count, double[] rate, double[] warm, double from, double dt) {
    tail = 0;
    for (int i = 0; i < count; i++) {
      int b = blocks[i];
      if (rate[b] > 0) {
        bring(b, rate[b] * dt, warm[b] * dt, from);
      }
    }
    double end = from + dt;
    double rest = 0;
    double restHeat = 0;
    for (int head = 0; head < tail; head++) {
      int b = queue[head];
      double over = fill(b, end);
      if (over > 0) {
        double per = arrived[b];
        if (!handOn(b, over, per)) {
          rest += over;
          restHeat += over * per;
        }
      }
    }
    return rest > 0 ? spread(rest, restHeat) : 0;
  }

  private void bring(int b, double volume, double warm, double from) {
    if (bring[b] == 0) {
      queue[tail++] = b;
      since[b] = from;
    }
    bring[b] += volume;
    bringHeat[b] += warm;
    since[b] = Math.min(since[b], from);
  }

  /** Returns m3 that a block can't hold. */
  private double fill(int b, double end) {
    double v = bring[b];
    double h = bringHeat[b];
    bring[b] = 0;
    bringHeat[b] = 0;
    began[b] = Math.min(began[b], (float) since[b]);
    double room = net.volume[b] - content[b];
    if (v < room) {
      content[b] += v;
      heat[b] += h;
      held += v;
      return 0;
    }
    double share = room / v;
    double over = v - room;
    filled[b] = (float) (since[b] + share * (end - since[b]));
    // What is handed on is as warm as what stays.
    arrived[b] = (heat[b] + h) / (net.volume[b] + over);
    content[b] = net.volume[b];
    heat[b] = 0;
    full[b] = true;
    fullCount++;
    held += room;
    return over;
  }

  private boolean handOn(int b, double over, double perVolume) {
    int[] start = net.graph.start();
    double all = 0;
    for (int k = start[b]; k < start[b + 1]; k++) {
      all += full[net.graph.other()[k]] ? 0 : net.blocks.shape()[net.graph.edge()[k]];
    }
    for (int k = start[b]; all > 0 && k < start[b + 1]; k++) {
      int to = net.graph.other()[k];
      if (!full[to]) {
        double v = over * net.blocks.shape()[net.graph.edge()[k]] / all;
        bring(to, v, v * perVolume, filled[b]);
        cameFrom(b, to, v);
      }
    }
    return all > 0;
  }

  /** Into whatever is partly filled, for what has no room beside where it came. */
  private double spread(double volume, double warm) {
    double room = 0;
    for (int b = 0; b < content.length; b++) {
      room += content[b] > 0 ? air(b) : 0;
    }
    double share = room > 0 ? Math.min(1 - 1e-9, volume / room) : 0;
    for (int b = 0; b < content.length; b++) {
      if (share > 0 && content[b] > 0 && !full[b]) {
        double v = share * air(b);
        content[b] += v;
        heat[b] += v * warm / volume;
        held += v;
      }
    }
    return volume - share * room;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.linear.Graph;
import java.util.Arrays;

/**
 * Which way the liquid goes and how steeply pressure falls there, per block, as the last suction
 * has it. A block's slope along an axis is the mean of those on its two sides; walls have none.
 */
public final class Course {
  /**
   * Of the slope where suction is spent: what is flatter counts as this, pressure being lost
   * elsewhere.
   */
  private static final double FLATTEST = 0.01;

  @SuppressWarnings("NullAway.Init") // taken before any use
  private Blocks blocks;

  private boolean known;

  /** x, y and z of the way down, length one or nothing, per block. */
  private double[][] way = {{}, {}, {}};

  private double[] steepness = {};

  /** Twice the axis per edge of the graph, one more if the lower block has the higher number. */
  private byte[] side = {};

  /** Metres between the blocks' middles, per edge. */
  private double[] length = {};

  /** Whether a suction has been followed yet. */
  boolean known() {
    return known;
  }

  /** Hands what is known to new blocks. */
  void take(Blocks fresh) {
    if (fresh == blocks) {
      return;
    }
    for (int d = 0; d < 3; d++) {
      way[d] = Liquid.carryOver(blocks, way[d], fresh);
    }
    steepness = Liquid.carryOver(blocks, steepness, fresh);
    blocks = fresh;
    side = new byte[fresh.graph.edges()];
    length = new double[fresh.graph.edges()];
    fresh.measure(side, length);
  }

  /**
   * Takes the course from a suction.
   *
   * @param q Pa per block
   * @param w mobility per block; where there is none nothing goes
   */
  public void follow(Liquid liquid, double[] q, double[] w) {
    take(liquid.blocks());
    known = true;
    double[] sum = new double[6];
    double[] weight = new double[6];
    double spent = 0;
    double steep = 0;
    for (int b = 0; b < q.length; b++) {
      double g = slope(b, liquid.shape(), q, w, sum, weight);
      double loss = w[b] * g * g * Math.pow(blocks.cubes.size()[b], 3);
      spent += loss;
      steep += loss * g;
    }
    double mean = spent > 0 ? steep / spent : 1;
    for (int b = 0; b < q.length; b++) {
      steepness[b] /= mean;
    }
  }

  private double slope(
      int b, double[] shape, double[] q, double[] w, double[] sum, double[] weight) {
    Arrays.fill(sum, 0);
    Arrays.fill(weight, 0);
    Graph g = blocks.graph;
    for (int k = g.start()[b]; k < g.start()[b + 1]; k++) {
      int to = g.other()[k];
      int e = g.edge()[k];
      if (shape[e] > 0 && w[to] > 0 && w[b] > 0) {
        boolean up = (to > b) == ((side[e] & 1) == 0);
        int at = (side[e] & 6) + (up ? 1 : 0);
        sum[at] += shape[e] * (up ? q[to] - q[b] : q[b] - q[to]) / length[e];
        weight[at] += shape[e];
      }
    }
    double square = 0;
    for (int d = 0; d < 3; d++) {
      double s = mean(sum, weight, 2 * d, blocks.mirrored(b, d));
      way[d][b] = s;
      square += s * s;
    }
    double all = Math.sqrt(square);
    for (int d = 0; d < 3 && all > 0; d++) {
      way[d][b] /= all;
    }
    steepness[b] = all;
    return all;
  }

  /** A block's mirror image is a side without a slope. */
  private static double mean(double[] sum, double[] weight, int at, boolean mirrored) {
    double low = weight[at] > 0 ? sum[at] / weight[at] : 0;
    double high = weight[at + 1] > 0 ? sum[at + 1] / weight[at + 1] : 0;
    int sides = (weight[at] > 0 || mirrored ? 1 : 0) + (weight[at + 1] > 0 ? 1 : 0);
    return sides > 0 ? (low + high) / sides : 0;
  }

  /** Cosine of the angle between two blocks' ways, not negative; 1 where one isn't known. */
  double alike(int a, int b) {
    if (!(steepness[a] > 0 && steepness[b] > 0)) {
      return 1;
    }
    double cosine = way[0][a] * way[0][b] + way[1][a] * way[1][b] + way[2][a] * way[2][b];
    return Math.min(1, Math.max(0, cosine));
  }

  /** How steep it is in a block, over the slope where suction is spent. */
  double steepness(int b) {
    return Math.max(FLATTEST, steepness[b]);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import java.util.Arrays;

/**
 * What blocks draw in a step: what their own cells contract by, and those beside them that set
 * before the step's middle. Cells beyond the reach of any liquid draw nothing.
 */
final class Draw {
  private final Cavity cavity;
  private final Contraction contraction;
  private final Reach reach;
  private final double noFlow;

  /** °C per cell when conduction had done half of its step. */
  private final double[] middle;

  private double[] draw = {};

  /**
   * @param middle °C per cell in the step's middle; read at each step
   */
  Draw(Cavity cavity, Contraction contraction, Reach reach, double[] middle, double noFlow) {
    this.cavity = cavity;
    this.contraction = contraction;
    this.reach = reach;
    this.middle = middle;
    this.noFlow = noFlow;
  }

  /** m3/s per block of the last step; not to be modified by others. */
  double[] perBlock() {
    return draw;
  }

  /** m3/s, of all blocks. */
  double sum() {
    return Arrays.stream(draw).sum();
  }

  /** m3/s that this step's cells ask for, by where liquid was joined last. */
  double asked() {
    double[] rate = contraction.rate();
    double sum = 0;
    for (int c = 0; c < rate.length; c++) {
      sum += hopeless(c) ? 0 : rate[c];
    }
    return sum;
  }

  /** Takes the step's rates, by where liquid is joined now. */
  void gather(Blocks blocks) {
    boolean[] joined = reach.joined();
    double[] rate = contraction.rate();
    if (draw.length != blocks.count()) {
      draw = new double[blocks.count()];
    }
    Arrays.fill(draw, 0);
    for (int c = 0; c < rate.length; c++) {
      if (joined[c]) {
        draw[blocks.of[c]] += rate[c];
      } else if (hopeless(c)) {
        contraction.withdraw(c);
      } else if (rate[c] > 0) {
        spread(blocks, c, rate[c] / reach.joinedBeside(c));
      }
    }
  }

  /** Goes on with the last step's draw, so many times as much. */
  void goOn(double times) {
    for (int c = 0; c < middle.length; c++) {
      if (hopeless(c)) {
        contraction.withdraw(c);
      }
    }
    for (int b = 0; b < draw.length; b++) {
      draw[b] *= times;
    }
  }

  /** Contracts beyond the reach of any liquid: neither joined nor just set beside some. */
  private boolean hopeless(int c) {
    return contraction.rate()[c] > 0
        && !reach.joined()[c]
        && (middle[c] > noFlow || reach.joinedBeside(c) == 0);
  }

  private void spread(Blocks blocks, int c, double each) {
    for (int f = cavity.faces(c) - 1; f >= 0; f--) {
      int b = cavity.across(c, f);
      if (reach.joined()[b]) {
        draw[blocks.of[b]] += each;
      }
    }
  }

  /** Books what the skin gives: no liquid came for that share of what a block's cells lose. */
  void lacks(Blocks blocks, Suction suction) {
    double[] rate = contraction.rate();
    for (int c = 0; c < rate.length; c++) {
      if (rate[c] > 0) {
        boolean own = reach.joined()[c];
        double share = own ? givenShare(suction, blocks.of[c]) : besides(blocks, suction, c);
        contraction.lacks(c, share);
      }
    }
  }

  private double besides(Blocks blocks, Suction suction, int c) {
    double sum = 0;
    for (int f = cavity.faces(c) - 1; f >= 0; f--) {
      int b = cavity.across(c, f);
      if (reach.joined()[b]) {
        sum += givenShare(suction, blocks.of[b]);
      }
    }
    return sum / reach.joinedBeside(c);
  }

  /** Share of what it draws that the skin gives at a block. */
  double givenShare(Suction suction, int block) {
    return draw[block] > 0 ? Math.min(1, Math.max(0, suction.given()[block] / draw[block])) : 0;
  }
}

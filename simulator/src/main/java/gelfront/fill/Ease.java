// SPDX-License-Identifier: Apache-2.0
package gelfront.fill;

import gelfront.feed.Gathering;
import gelfront.feed.Liquid;
import gelfront.feed.Mobility;
import gelfront.linear.StopRule;
import gelfront.material.ViscosityCurve;

/**
 * How easily liquid moves in each block, m2/(Pa s): that of a cavity which is full, hot where
 * nothing has come yet, so that the front is no wall.
 */
final class Ease {
  /** Relative residual: there are few solves, and the first one decides. */
  private static final StopRule STOP = new StopRule(1e-3, 1e-3, 100);

  private final FillNet net;
  private final ViscosityCurve curve;
  private final double noFlow;
  private final double entering;
  private final Mobility mobility;
  private final Liquid liquid;
  private final boolean[] flowing;
  private final double[] temperature;
  final double[] w;

  Ease(FillNet net, ViscosityCurve curve, double noFlow, double entering, boolean gathered) {
    this.net = net;
    this.curve = curve;
    this.noFlow = noFlow;
    this.entering = entering;
    mobility = new Mobility(net.cavity, STOP);
    liquid = new Liquid(net.cavity, gathered ? Gathering.SHOT : Gathering.SINGLE);
    flowing = new boolean[net.of.length];
    temperature = new double[net.of.length];
    w = new double[net.count()];
  }

  /**
   * @param full per block
   * @param now °C per cell; read where it is full
   */
  void refresh(boolean[] full, double[] now) {
    for (int c = 0; c < flowing.length; c++) {
      temperature[c] = full[net.of[c]] ? now[c] : entering;
      flowing[c] = temperature[c] > noFlow;
    }
    liquid.update(flowing);
    double[] solved = mobility.solve(liquid, flowing, temperature, curve, noFlow);
    for (int b = 0; b < w.length; b++) {
      double sum = 0;
      for (int i = net.first[b]; i < net.first[b + 1]; i++) {
        int c = net.cells[i];
        sum += flowing[c] ? net.cellVolume[c] * solved[liquid.block(c)] : 0;
      }
      w[b] = sum / net.volume[b];
    }
  }

  /** A block that was reckoned hot has been filled by liquid of a temperature. */
  void filled(int b, double t) {
    w[b] = t > noFlow ? w[b] * Math.exp(curve.logarithm(entering) - curve.logarithm(t)) : 0;
  }
}

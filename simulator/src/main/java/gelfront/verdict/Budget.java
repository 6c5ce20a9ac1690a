// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.finding.Amounts;
import gelfront.finding.Fed;
import gelfront.grid.Cavity;
import gelfront.material.Plastisol;
import gelfront.setup.Case;

/**
 * Millilitres, grams and even shrinkage.
 *
 * <pre>
 *   drawn in while fed:  V (1 - exp(-beta (T_shot - T(t_cut))))  per cell
 *   left afterwards:     s = 1 - exp(-beta_hot (T(t_cut) - T_noflow) - beta_gel (T_noflow - 25 °C))
 *   in length:           1 - (1 - mean s)^(1/3)
 * </pre>
 */
final class Budget {
  private static final double COLD = 25;

  private final Case setup;
  private final Cavity cavity;
  private final double drawn;
  private final double left;
  private final double part;
  private final double below;
  private final double demand;
  private final double partDrawn;
  private final ShotRecord shot;
  private final double closed;

  /**
   * @param closed s at which the part lost its last path to the sprue
   */
  Budget(Case setup, Cavity cavity, ShotRecord shot, float[] cutOff, double closed) {
    this.setup = setup;
    this.cavity = cavity;
    Plastisol p = setup.plastisol();
    double drawnSum = 0;
    double leftSum = 0;
    double partSum = 0;
    double belowSum = 0;
    double demandSum = 0;
    double partDrawnSum = 0;
    double[] volume = cavity.volumes();
    for (int c = 0; c < cavity.count(); c++) {
      boolean known = !Float.isInfinite(cutOff[c]) && cutOff[c] >= 0;
      double t = known ? Math.max(p.noFlow(), shot.history().at(c, cutOff[c])) : p.noFlow();
      double hot = setup.shot().temperature();
      double cellDrawn = volume[c] * -Math.expm1(-p.expansionHot() * Math.max(0, hot - t));
      drawnSum += cellDrawn;
      if (cavity.region()[c] == Cavity.Region.PART.ordinal()) {
        partSum += volume[c];
        double lost =
            p.expansionHot() * (t - p.noFlow()) + p.expansionGelled() * (p.noFlow() - COLD);
        belowSum += volume[c] * -Math.expm1(-p.expansionGelled() * (p.noFlow() - COLD));
        demandSum += volume[c] * -Math.expm1(-p.expansionHot() * (hot - p.noFlow()));
        partDrawnSum += cellDrawn;
        leftSum += volume[c] * -Math.expm1(-lost);
      }
    }
    this.shot = shot;
    this.closed = closed;
    below = belowSum;
    demand = demandSum;
    partDrawn = partDrawnSum;
    drawn = shot.flow().map(FlowRecord::drawnIn).orElse(drawnSum);
    left = partSum == 0 ? 0 : leftSum / partSum;
    part = partSum;
  }

  /** Share of length. */
  double linearShrinkage() {
    return -Math.expm1(Math.log1p(-left) / 3);
  }

  Fed fed() {
    int n = setup.drawn();
    return shot.flow()
        .map(
            f -> {
              double[] level = f.trace().level();
              double fell = level.length > 0 ? level[level.length - 1] : 0;
              double fed = f.demand() - f.partUnfed();
              return new Fed(
                  true,
                  f.demand() / n,
                  fed / n,
                  f.partUnfed() / n,
                  below / n,
                  f.half(),
                  fell,
                  f.dryAt());
            })
        .orElseGet(
            () ->
                new Fed(
                    false,
                    demand / n,
                    partDrawn / n,
                    (demand - partDrawn) / n,
                    below / n,
                    closed,
                    0,
                    Double.POSITIVE_INFINITY));
  }

  Amounts amounts() {
    double feed = cavity.volume() - part;
    double one = part / setup.drawn();
    double topUp = drawn * setup.cavities() / setup.drawn();
    double rho = setup.plastisol().densityHot();
    return new Amounts(
        one,
        feed,
        topUp,
        one * rho,
        feed * rho,
        topUp * rho,
        setup.cavities(),
        setup.shot().injectorCapacity());
  }
}

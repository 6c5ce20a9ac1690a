package gelfront.verdict;

import gelfront.finding.Amounts;
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

  Budget(Case setup, Cavity cavity, ShotRecord shot, float[] cutOff) {
    this.setup = setup;
    this.cavity = cavity;
    Plastisol p = setup.plastisol();
    double drawnSum = 0;
    double leftSum = 0;
    double partSum = 0;
    double[] volume = cavity.volumes();
    for (int c = 0; c < cavity.count(); c++) {
      boolean known = !Float.isInfinite(cutOff[c]) && cutOff[c] >= 0;
      double t = known ? Math.max(p.noFlow(), shot.history().at(c, cutOff[c])) : p.noFlow();
      drawnSum +=
          volume[c] * -Math.expm1(-p.expansionHot() * Math.max(0, setup.shot().temperature() - t));
      if (cavity.region()[c] == Cavity.Region.PART.ordinal()) {
        partSum += volume[c];
        double lost =
            p.expansionHot() * (t - p.noFlow()) + p.expansionGelled() * (p.noFlow() - COLD);
        leftSum += volume[c] * -Math.expm1(-lost);
      }
    }
    drawn = drawnSum;
    left = partSum == 0 ? 0 : leftSum / partSum;
    part = partSum;
  }

  /** Share of length. */
  double linearShrinkage() {
    return -Math.expm1(Math.log1p(-left) / 3);
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

// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.grid.Fold;
import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;
import java.util.List;

/**
 * The state of what is left of a folded model, and the whole's beside it: the same where nothing
 * was folded.
 */
public final class FoldedState {
  private final Fold fold;
  private final ThermalState whole;
  private final ThermalState left;

  /** J given to the whole's ledger so far: plastisol, mould, air, mouth. */
  private final double[] given = new double[4];

  /**
   * @param whole taken as it is now
   */
  public FoldedState(Fold fold, HeatCurves curves, ThermalState whole) {
    this.fold = fold;
    this.whole = whole;
    left = fold.times() == 1 ? whole : folded(curves);
  }

  private ThermalState folded(HeatCurves curves) {
    ThermalState part = new ThermalState(fold.model(), curves, 0);
    part.time = whole.time;
    Fold.spread(whole.temperature, fold.kept(), part.temperature);
    Fold.spread(whole.previous, fold.kept(), part.previous);
    Fold.spread(whole.enthalpy, fold.kept(), part.enthalpy);
    Fold.spread(whole.mould, fold.keptMould(), part.mould);
    return part;
  }

  /** What is calculated. */
  public ThermalState left() {
    return left;
  }

  /**
   * Shows the whole to those who look on.
   *
   * @return watches what is left
   */
  StepObserver shown(List<StepObserver> watching) {
    return (part, from) -> {
      unfold();
      watching.forEach(o -> o.after(whole, from));
      lose();
    };
  }

  /** Takes over what the whole has lost of its contact. */
  private void lose() {
    if (left != whole) {
      for (int c = 0; c < left.lostContact.length; c++) {
        left.lostContact[c] = whole.lostContact[fold.kept()[c]];
      }
    }
  }

  /** Tells the whole what has become of it; what was its temperature is its previous one. */
  public void unfold() {
    if (left == whole) {
      return;
    }
    whole.time = left.time;
    double[] old = whole.previous;
    whole.previous = whole.temperature;
    whole.temperature = old;
    Fold.spread(left.temperature, fold.cell(), whole.temperature);
    Fold.spread(left.enthalpy, fold.cell(), whole.enthalpy);
    Fold.spread(left.mould, fold.mould(), whole.mould);
    whole.ledger.add(
        more(0, left.ledger.plastisolGain()),
        more(1, left.ledger.mouldGain()),
        more(2, left.ledger.toAir()),
        more(3, left.ledger.throughMouth()));
  }

  private double more(int entry, double all) {
    double more = fold.times() * (all - given[entry]);
    given[entry] = all;
    return more;
  }
}

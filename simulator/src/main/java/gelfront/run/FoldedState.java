// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.grid.Fold;
import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;

/** The state of what is left of a folded model, and the whole's beside it. */
final class FoldedState {
  private final Fold fold;
  private final ThermalState left;

  /** J given to the whole's ledger so far: plastisol, mould, air, mouth. */
  private final double[] given = new double[4];

  /**
   * @param whole taken as it is now
   */
  FoldedState(Fold fold, HeatCurves curves, ThermalState whole) {
    this.fold = fold;
    left = new ThermalState(fold.model(), curves, 0);
    left.time = whole.time;
    Fold.spread(whole.temperature, fold.kept(), left.temperature);
    Fold.spread(whole.previous, fold.kept(), left.previous);
    Fold.spread(whole.enthalpy, fold.kept(), left.enthalpy);
    Fold.spread(whole.mould, fold.keptMould(), left.mould);
  }

  /** What is calculated. */
  ThermalState left() {
    return left;
  }

  /** Takes over what the whole has lost of its contact. */
  void lose(float[] contact) {
    for (int c = 0; c < left.lostContact.length; c++) {
      left.lostContact[c] = contact[fold.kept()[c]];
    }
  }

  /**
   * Tells the whole what has become of it.
   *
   * @param whole modified; what was its temperature is its previous one
   */
  void unfold(ThermalState whole) {
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

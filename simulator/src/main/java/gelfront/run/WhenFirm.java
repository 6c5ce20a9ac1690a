// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.state.HeatLedger;
import gelfront.state.ThermalState;
import java.util.Optional;

/**
 * The mould at the moment at which the last cell of a shot is firm. It lies between the ends of a
 * step, and mould and joules are taken in proportion: so what they hold still adds up.
 */
final class WhenFirm implements StepObserver {
  private final CrossingTimes firm;
  private final double[] mould;
  private HeatLedger moved = new HeatLedger();
  private Optional<OneShot.Opened> opened = Optional.empty();

  /**
   * @param firm looks on before this does
   */
  WhenFirm(CrossingTimes firm, ThermalState start) {
    this.firm = firm;
    mould = start.mould.clone();
    keep(start);
  }

  @Override
  public void after(ThermalState state, double from) {
    double at = firm.latest();
    if (at == Double.POSITIVE_INFINITY) {
      opened = Optional.empty();
      keep(state);
    } else if (opened.isEmpty()) {
      opened = Optional.of(between(at, state, (at - from) / (state.time - from)));
    }
  }

  private void keep(ThermalState state) {
    System.arraycopy(state.mould, 0, mould, 0, mould.length);
    moved = new HeatLedger();
    moved.add(state.ledger);
  }

  private OneShot.Opened between(double at, ThermalState state, double way) {
    double[] then = mould.clone();
    for (int m = 0; m < then.length; m++) {
      then[m] += way * (state.mould[m] - mould[m]);
    }
    return new OneShot.Opened(at, then, state.ledger.between(moved, way));
  }

  /** Empty while some cell is not firm. */
  Optional<OneShot.Opened> opened() {
    return opened;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import gelfront.grid.MouldCells;
import gelfront.state.HeatLedger;

/**
 * A mould without plastisol in it cools to the air: C dT/dt = sum G (T_j - T_i) + G_air (T_air -
 * T_i), by the steps of {@link MouldSolver}. Steps grow, since nothing comes but decay.
 */
public final class EmptyMould {
  /** s of the first step. */
  private static final double FIRST = 0.25;

  private static final double GROWTH = 1.3;

  /**
   * s. Metal's steps are nearly backward Euler: over t a decay of time constant tau comes out dt t
   * / (2 tau²) too slow, 2e-4 after ten minutes of tau = 4000 s.
   */
  private static final double LONGEST = 10;

  private final MouldSolver solver;
  private final double[] nothing;
  private final double[] change;

  /**
   * @param cells closed or open; empty in both cases
   */
  public EmptyMould(MouldCells cells) {
    solver = new MouldSolver(cells);
    nothing = new double[cells.count()];
    change = new double[cells.count()];
  }

  /**
   * Lets it cool.
   *
   * @param mould °C per cell; modified
   * @param seconds how long; 0 changes nothing
   * @param ledger gets what the mould gained and the air took
   */
  public void cool(double[] mould, double seconds, HeatLedger ledger) {
    double left = seconds;
    double step = FIRST;
    while (left > 0) {
      double dt = step >= left ? left : Math.min(step, Math.max(0.5 * left, FIRST));
      solver.solve(mould, nothing, dt, change);
      double[] moved = solver.apply(mould, nothing, dt, change);
      ledger.add(0, moved[0], moved[1], 0);
      left -= dt;
      step = Math.min(LONGEST, step * GROWTH);
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import gelfront.material.MouldMaterial;
import gelfront.setup.Block;
import gelfront.setup.Numerics;

/**
 * Lengths of steps from their errors: dt' = 0.9 dt (tol / e)^0.35 (e' / e)^0.1 with e' the error of
 * the step before; e goes with dt². A proportional-integral rule, as is common for ordinary
 * differential equations; exponents from the usual range, from memory.
 *
 * <p>No step is taken back. The fields are smooth between events, so an error foretells the next
 * one; taking back would mean a copy of state, ledger and the stepper's own memory for every step.
 */
public final class StepControl {
  /** First step after an event, s: a wall voxel of 0.35 mm takes 0.09 s to set. */
  private static final double FIRST = 0.01;

  /**
   * Of the step before an event, what the step after it is at least. A top-up or a cooler mouth
   * touches a few cells; nothing is as sudden as the shot's first moment.
   */
  private static final double AGAIN = 0.1;

  /**
   * Longest step, s: between two steps a run can be cancelled, and what the flow has closed in a
   * thick part is late by some of it. A cup of 30 mm closes after 331, 309, 294, 284 and 279 s with
   * 60, 20, 10, 5 and 2 s at level quick; parts that close within half a minute don't come near.
   */
  private static final double LONGEST = 20;

  private static final double MOST_GROWTH = 2;
  private static final double LEAST_GROWTH = 0.4;
  private static final double SAFETY = 0.9;

  /**
   * Effusivity sqrt(k C), W s^1/2 / m2 K, below which a mould's wall warms with the plastisol,
   * which has some 550: steels have thousands, resin and plaster 600, filled epoxy 1300.
   */
  private static final double POOR = 3000;

  /** Of the tolerance, beside a poor conductor. */
  private static final double TIGHTER = 0.25;

  private final double tolerance;
  private double wanted = FIRST;
  private double lastError = Double.NaN;

  /**
   * @param tolerance K, for the error as {@link StepError} has it
   */
  StepControl(double tolerance) {
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException("steps need a tolerance above 0 K: " + tolerance);
    }
    this.tolerance = tolerance;
  }

  /**
   * K. Measured on the standard case in voxels of 0.7 mm, against the same with a tolerance of
   * 0.004 K: greatest error of a cell's set time 0.56 %, 0.21 % and 0.09 %, in the mean 0.17 %,
   * 0.06 % and 0.02 %. Voxels of these levels are 1 %, 0.5 % and 0.3 % off: shorter steps make no
   * result better.
   */
  public static double tolerance(Numerics.Level level) {
    return switch (level) {
      case QUICK -> 2.0;
      case NORMAL -> 0.4;
      case FINE -> 0.12;
    };
  }

  /**
   * As above, for a block. Where the wall warms with the plastisol, both are stepped against each
   * other's mean over a step, and set times at waists are off first. A quarter of the tolerance
   * brings them from 2.9 % to 0.6 % in resin, and costs nothing: the two agree in fewer passes.
   */
  public static double tolerance(Numerics.Level level, Block block) {
    double least = effusivity(block.material());
    for (Block.Insert i : block.inserts()) {
      least = Math.min(least, effusivity(i.material()));
    }
    return (least < POOR ? TIGHTER : 1) * tolerance(level);
  }

  private static double effusivity(MouldMaterial m) {
    return Math.sqrt(m.conductivity() * m.volumetricHeat());
  }

  /** Something has changed: small again. */
  void restart() {
    wanted = Math.max(FIRST, AGAIN * wanted);
    lastError = Double.NaN;
  }

  /**
   * @param toEvent s that a step must not pass
   * @return s: up to the event, or half way where the rest would be a sliver
   */
  double length(double toEvent) {
    if (wanted >= toEvent * (1 - 1e-9)) {
      return toEvent;
    }
    return Math.min(wanted, Math.max(0.5 * toEvent, 1e-9));
  }

  /**
   * @param dt s of the step taken, shorter than wanted before an event
   * @param error K, NaN if unknown
   */
  void taken(double dt, double error) {
    double next = dt * growth(error);
    boolean cut = dt < wanted && !(error > tolerance);
    wanted = Math.min(LONGEST, cut ? Math.max(wanted, next) : next);
    lastError = error;
  }

  private double growth(double error) {
    if (!(error > 0)) {
      return MOST_GROWTH;
    }
    double by = SAFETY * Math.pow(tolerance / error, 0.35);
    if (lastError > 0) {
      by *= Math.pow(lastError / error, 0.1);
    }
    return Math.max(LEAST_GROWTH, Math.min(MOST_GROWTH, by));
  }
}

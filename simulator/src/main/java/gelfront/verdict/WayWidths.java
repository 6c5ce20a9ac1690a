// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.grid.Cavity;
import gelfront.grid.MouthSteps;
import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * How wide the way into a cavity is, step by step from the mouth: what counts of a step's cells is
 * the one farthest from walls.
 */
final class WayWidths {
  private final double tolerance;
  private final int[] steps;

  /** Metres from the wall, by steps; 0 where no cell of the way lies. */
  private final double[] half;

  /** The cell that is so far from it. */
  private final int[] deepest;

  /**
   * @param way cells of the cavity and of its gates
   * @param halfWidth metres from a cell to the wall
   */
  WayWidths(Cavity cavity, IntPredicate way, IntToDoubleFunction halfWidth) {
    tolerance = cavity.grid().spacing();
    steps = MouthSteps.of(cavity);
    half = new double[steps.length];
    deepest = new int[steps.length];
    Arrays.fill(deepest, -1);
    for (int c = 0; c < steps.length; c++) {
      if (steps[c] < half.length && way.test(c) && halfWidth.applyAsDouble(c) > half[steps[c]]) {
        half[steps[c]] = halfWidth.applyAsDouble(c);
        deepest[steps[c]] = c;
      }
    }
  }

  /**
   * The deepest cell where the way is narrowest, from a place on towards the mouth until it is a
   * voxel wider again: a nose that widens from the gate on leads back to the gate.
   */
  int narrowest(int place) {
    int best = steps[place];
    for (int s = best; s >= 0 && deepest[s] >= 0 && half[s] <= half[best] + tolerance; s--) {
      best = half[s] < half[best] ? s : best;
    }
    return deepest[best];
  }
}

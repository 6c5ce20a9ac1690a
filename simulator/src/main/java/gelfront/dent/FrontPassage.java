// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.grid.Cavity;

/**
 * How the setting front passes a cell: by its set time, and by how much earlier or later its
 * neighbours set. Times count by their roots, as fronts move.
 *
 * <pre>
 *   liquid share = 1/2 + (sqrt(t_set) - sqrt(t)) / max over neighbours of |sqrt(t_n) - sqrt(t_set)|
 * </pre>
 */
final class FrontPassage {
  private static final double LEAST = 1e-9;

  private final float[] root;
  private final float[] across;

  /**
   * @param set s per plastisol cell
   */
  FrontPassage(Cavity cavity, float[] set) {
    int n = set.length;
    root = new float[n];
    across = new float[n];
    for (int c = 0; c < n; c++) {
      root[c] = (float) Math.sqrt(set[c]);
    }
    for (int c = 0; c < n; c++) {
      double most = LEAST;
      for (int f = cavity.faces(c) - 1; f >= 0; f--) {
        most = Math.max(most, Math.abs(root[cavity.across(c, f)] - root[c]));
      }
      across[c] = (float) most;
    }
  }

  /** Share of a cell that is still liquid at a time, s. */
  double liquid(int cell, double time) {
    return Math.max(0, Math.min(1, 0.5 + (root[cell] - Math.sqrt(time)) / across[cell]));
  }
}

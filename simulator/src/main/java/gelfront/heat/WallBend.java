// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import gelfront.grid.Cavity;

/**
 * How much steeper or flatter the temperature meets a wall than a straight line from the cell's
 * middle does: the parabola through the wall, the cell and the cell behind it.
 *
 * <pre>
 *   wall |--- s ---o------ d ------o       g1 = q / k between wall and cell, g2 between the cells
 *   b = -s^2 / (s + d) (g1 - g2)           heat is driven to the wall by T - b
 * </pre>
 *
 * <p>Straight lines alone draw too little while the chill is within a cell or two of the wall.
 */
public final class WallBend {
  /** Of the fall of temperature to what lies behind the wall, at most. */
  private static final double MOST = 0.5;

  private final Cavity.Walls walls;

  /** Metres from the wall to the middle of the cell's true volume; per wall. */
  private final double[] reach;

  /** Cell behind the cell, itself where there is none of its size or its own image; per wall. */
  private final int[] behind;

  /** Metres from the cell's middle to that one's, 0 where there is none; per wall. */
  private final double[] further;

  /** K per wall. */
  private final double[] bend;

  /**
   * @param reach metres from the wall to the middle of the cell's true volume; per wall
   */
  public WallBend(Cavity cavity, double[] reach) {
    this.walls = cavity.walls();
    this.reach = reach;
    behind = new int[reach.length];
    further = new double[reach.length];
    bend = new double[reach.length];
    float[] shift = cavity.shifts();
    for (int w = 0; w < reach.length; w++) {
      int c = walls.cell()[w];
      int face = walls.face()[w];
      behind[w] = cavity.neighbours()[6 * c + (face ^ 1)];
      boolean image = cavity.mirrored(c, face ^ 1);
      if (behind[w] != c || image) {
        float other = image ? -shift[3 * c + face / 2] : shift[3 * behind[w] + face / 2];
        double moved = shift[3 * c + face / 2] - other;
        further[w] = cavity.edge(c) * (1 + (face % 2 == 0 ? -moved : moved));
      }
    }
  }

  /**
   * Takes the bend of a wall for a step.
   *
   * @param t °C per cell, in the middle of the step
   * @param fall K from the cell to what lies behind the wall
   * @param conductance W/K between them
   * @param k W/m K in the cell
   */
  public void take(int w, double[] t, double fall, double conductance, double k) {
    int c = walls.cell()[w];
    if (further[w] == 0) {
      return;
    }
    double e = walls.edge()[w];
    double g1 = conductance * fall / (k * e * e);
    double g2 = (t[behind[w]] - t[c]) / further[w];
    double b = -reach[w] * reach[w] / (reach[w] + further[w]) * (g1 - g2);
    double most = MOST * Math.abs(fall);
    bend[w] = Math.max(-most, Math.min(most, b));
  }

  /** K at a wall. */
  public double at(int w) {
    return bend[w];
  }
}

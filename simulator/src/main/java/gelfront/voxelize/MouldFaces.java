// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.grid.Cavity;
import gelfront.setup.Block;
import gelfront.setup.Side;
import java.util.Optional;

/**
 * Faces of mould cells: to each other and to the outside, plastisol's share taken off. Two half
 * cells, or a half cell and a film, in series:
 *
 * <pre>
 *   inside   A / (w_1 / (2 k_1) + w_2 / (2 k_2))
 *   outside  A / (1 / h + w / (2 k))</pre>
 */
final class MouldFaces {
  private final MouldGrid grid;
  private final double[] conductivity;
  private final double[] shift;

  private final Optional<TubeWall> tube;
  private final Optional<Outside> outside;

  /** Per axis and side, m2 of each grid cell's face that plastisol takes from the metal. */
  private final double[][] taken;

  /**
   * @param conductivity W/m K of each mould grid cell
   * @param shift metres from the middle of each to that of its metal, x, y, z by turns
   * @param tube on the block, whose liquid takes nothing between its cells
   * @param outside what of the block's box is air; absent: nothing
   */
  MouldFaces(
      MouldGrid grid,
      Cavity cavity,
      double[] conductivity,
      double[] shift,
      Optional<TubeWall> tube,
      Optional<Outside> outside) {
    this.tube = tube;
    this.outside = outside;
    this.shift = shift;
    this.grid = grid;
    this.conductivity = conductivity;
    this.taken = new double[6][grid.coarse().cellCount()];
    takeAbove(cavity);
    takeBelow(cavity);
    takeMouth(cavity);
  }

  /** Plastisol right below a face between two cells. */
  private void takeAbove(Cavity cavity) {
    for (int c = 0; c < cavity.count(); c++) {
      for (int a = 0; a < 3; a++) {
        int[] of = grid.of()[a];
        if (of[cavity.position(c, a, 1)] != of[cavity.position(c, a)] && !above(c)) {
          take(2 * a + 1, grid.holding(cavity, c), cavity.edge(c));
        }
      }
    }
  }

  /** Plastisol right above a face between two cells where there is none below it. */
  private void takeBelow(Cavity cavity) {
    Cavity.Walls walls = cavity.walls();
    for (int w = 0; w < walls.count(); w++) {
      int a = walls.face()[w] / 2;
      int c = walls.cell()[w];
      int[] of = grid.of()[a];
      boolean lower = walls.face()[w] % 2 == 0;
      if (lower && !above(c) && of[cavity.position(c, a, -1)] != of[cavity.position(c, a)]) {
        take(2 * a + 1, grid.holding(cavity, c) - grid.stride(a), walls.edge()[w]);
      }
    }
  }

  private boolean above(int cell) {
    return tube.isPresent() && tube.get().holds(cell);
  }

  /** The sprue's open end on an outer face; faces between two cells have been counted. */
  private void takeMouth(Cavity cavity) {
    Cavity.Walls walls = cavity.walls();
    for (int w = 0; w < walls.count(); w++) {
      int face = walls.face()[w];
      int cell = grid.holding(cavity, walls.cell()[w]);
      int last = grid.coarse().count(face / 2) - 1;
      boolean outer = face % 2 == 0 || grid.coarse().position(cell, face / 2) == last;
      if (walls.mouth()[w] && outer) {
        take(face, cell, walls.edge()[w]);
      }
    }
  }

  private void take(int face, int cell, double edge) {
    taken[face][cell] += edge * edge;
  }

  /** W/K between a grid cell and the next one along an axis. */
  double upwards(int cell, int axis) {
    int next = cell + grid.stride(axis);
    double series =
        half(cell, axis, true) / conductivity[cell] + half(next, axis, false) / conductivity[next];
    return touching(cell, axis) / series;
  }

  /** m2 that a grid cell and the next one along an axis have in common. */
  double touching(int cell, int axis) {
    double share = outside.isPresent() ? outside.get().upper(cell, axis) : 1;
    return Math.max(0, share * grid.area(cell, axis) - taken[2 * axis + 1][cell]);
  }

  /** Metres from the metal's middle to a face. */
  private double half(int cell, int axis, boolean upper) {
    double whole = 0.5 * grid.coarse().width(axis, grid.coarse().position(cell, axis));
    return whole - (upper ? shift[3 * cell + axis] : -shift[3 * cell + axis]);
  }

  /**
   * To what surrounds the block.
   *
   * @return W/K through all outer faces of a grid cell, and °C there, the mean by W/K
   */
  double[] outwards(int cell, Block block) {
    double sum = 0;
    double heat = 0;
    for (int face = 0; face < 6; face++) {
      int a = face / 2;
      boolean upper = face % 2 == 1;
      int i = grid.coarse().position(cell, a);
      if (i == (upper ? grid.coarse().count(a) - 1 : 0)) {
        Block.Face beyond = block.face(new Side(a, upper));
        double half = half(cell, a, upper) / conductivity[cell];
        double share = outside.isPresent() ? outside.get().side(cell, face) : 1;
        double area = Math.max(0, share * grid.area(cell, a) - taken[face][cell]);
        double g = beyond.film() > 0 ? area / (1 / beyond.film() + half) : 0;
        sum += g;
        heat += g * beyond.temperature();
      }
    }
    return new double[] {sum, sum > 0 ? heat / sum : block.airTemperature()};
  }
}

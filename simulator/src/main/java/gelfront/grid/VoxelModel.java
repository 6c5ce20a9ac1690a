// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

/**
 * Cavity and mould, and how heat passes between them.
 *
 * <p>Through wall link w flows U (T_cell - T_mould), U = 1 / (distance / (k A) + resistance), with
 * A the full voxel face and k the plastisol's conductivity.
 *
 * @param cavity plastisol cells and walls
 * @param mould mould cells
 * @param mouldCell per wall link the mould cell behind it, -1 at the sprue's mouth; length walls
 * @param resistance per wall link K/W from the true wall into the mould cell, contact included; 0
 *     at the mouth, where the run knows what lies beyond; length walls
 */
public record VoxelModel(Cavity cavity, MouldCells mould, int[] mouldCell, double[] resistance) {
  public VoxelModel {
    int walls = cavity.walls().count();
    if (mouldCell.length != walls || resistance.length != walls) {
      throw new IllegalArgumentException("one mould cell and one resistance per wall link");
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

/**
 * The mould's cells as a network of heat capacities: only cells that hold metal, numbered 0 to m-1.
 *
 * @param grid where they lie
 * @param cells grid number of each; length m
 * @param number mould cell of each grid cell, -1 where there is no metal; length grid cells
 * @param capacity J/K of each; length m
 * @param startTemperature °C; length m
 * @param neighbour mould cell across +x, +y, +z, -1 where there is none; length 3 m
 * @param conductance W/K to it; length 3 m
 * @param touching m2 of metal on both sides of that face; length 3 m
 * @param airConductance W/K through outer faces to what surrounds the block; length m
 * @param airTemperature °C of that, the mean by conductance where a cell has several outer faces;
 *     length m
 */
public record MouldCells(
    RectilinearGrid grid,
    int[] cells,
    int[] number,
    double[] capacity,
    double[] startTemperature,
    int[] neighbour,
    double[] conductance,
    double[] touching,
    double[] airConductance,
    double[] airTemperature) {
  public int count() {
    return cells.length;
  }
}

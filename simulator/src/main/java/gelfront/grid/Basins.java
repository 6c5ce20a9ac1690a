// SPDX-License-Identifier: Apache-2.0
package gelfront.grid;

import java.util.List;

/**
 * A field on the cavity's cells seen as a landscape with a spring at the sprue's mouth.
 *
 * @param level per plastisol cell the best lowest value met on a path to the mouth, its own value
 *     included; -1 where no path leads there
 * @param basins regions that only a lower saddle joins to the mouth, largest first
 */
public record Basins(float[] level, List<Basin> basins) {
  public Basins {
    basins = List.copyOf(basins);
  }

  /**
   * A region behind a saddle.
   *
   * @param cells plastisol cells that lie above the saddle
   * @param peak per entry of {@code cells} the peak it ends up with, index into {@code peaks}
   * @param level value at the saddle
   * @param saddle plastisol cell with the least value on the best path
   * @param peaks the highest first
   */
  public record Basin(int[] cells, int[] peak, float level, int saddle, List<Peak> peaks) {
    public Basin {
      peaks = List.copyOf(peaks);
    }
  }

  /**
   * @param cell plastisol cell with the highest value here
   * @param height that value
   * @param separated value at which it parts from the rest of its basin
   * @param saddle plastisol cell where it does
   */
  public record Peak(int cell, float height, float separated, int saddle) {}
}

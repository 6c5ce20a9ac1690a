// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Basins;
import gelfront.grid.Cavity;
import gelfront.grid.MergeTree;
import java.util.Arrays;

/**
 * Cut-off by connectivity, the limit in which the skin bears any suction: a place is fed as long as
 * a path of flowing plastisol leads to the sprue's mouth.
 *
 * <pre>  t_cut(x) = max over paths from x to the mouth of min along the path of t_set</pre>
 */
public final class CutOff {
  /** s that a pocket must outlast its constriction: below it the grid speaks, not the part. */
  private static final double PERSISTENCE = 0.5;

  /** The same as a share of its set time. */
  private static final double SHARE = 0.03;

  /** Cells a pocket must have to be one. */
  private static final int LEAST_CELLS = 27;

  private CutOff() {}

  /**
   * @param set s per plastisol cell, +infinity where it never set
   * @return level: cut-off time per cell, s; basins: pockets with at least some cells in the part
   */
  public static Basins of(Cavity cavity, float[] set) {
    Basins all = MergeTree.of(cavity, set, PERSISTENCE, SHARE, LEAST_CELLS);
    return new Basins(
        all.level(),
        all.basins().stream().filter(b -> partCells(cavity, b) >= LEAST_CELLS).toList());
  }

  private static long partCells(Cavity cavity, Basins.Basin basin) {
    int part = Cavity.Region.PART.ordinal();
    return Arrays.stream(basin.cells()).filter(c -> cavity.region()[c] == part).count();
  }
}

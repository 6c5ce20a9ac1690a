// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.grid.WallDistance;
import java.util.Arrays;

/**
 * The skin round a pocket at one time, from set times. A cell that the front is passing counts in
 * part ({@link FrontPassage}), so that the skin grows smoothly and not by voxels.
 */
final class PocketSkin {
  private final WallDistance walls;
  private final FrontPassage front;
  private final Sections sections;
  private final Skin skin;
  private final int[] outermost;

  PocketSkin(FrontPassage front, WallDistance walls, Sections sections) {
    this.front = front;
    this.walls = walls;
    this.sections = sections;
    skin = new Skin(sections);
    outermost = new int[sections.count()];
  }

  /** Forgets what was liquid. */
  void clear() {
    skin.clear();
    Arrays.fill(outermost, -1);
  }

  /**
   * Adds what is still liquid of a cell at a time.
   *
   * @param volume m3 that the cell stands for
   * @param time s
   * @return whether any of it is: if not, none will be later
   */
  boolean add(int cell, double volume, double time) {
    int s = sections.slice(cell);
    double share = s < 0 ? 0 : front.liquid(cell, time);
    if (share > 0) {
      skin.add(cell, volume * share);
      int o = outermost[s];
      if (o < 0 || walls.distance(cell) < walls.distance(o)) {
        outermost[s] = cell;
      }
    }
    return share > 0;
  }

  /** By slice. */
  Skin skin() {
    return skin;
  }

  /** Liquid cell nearest to the wall, -1: none. */
  int outermost(int s) {
    return outermost[s];
  }
}

package gelfront.dent;

import gelfront.grid.Cavity;
import gelfront.grid.WallDistance;
import java.util.Arrays;

/**
 * The skin round a pocket at one time, from set times. A cell that the front is passing counts in
 * part, by its set time and how much later or earlier its neighbours set (times by their roots, as
 * fronts move), so that the skin grows smoothly and not by voxels.
 */
final class PocketSkin {
  private final Cavity cavity;
  private final WallDistance walls;
  private final float[] set;
  private final Sections sections;
  private final Skin skin;
  private final int[] outermost;

  PocketSkin(Cavity cavity, WallDistance walls, float[] set, Sections sections) {
    this.cavity = cavity;
    this.walls = walls;
    this.set = set;
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
   */
  void add(int cell, double volume, double time) {
    int s = sections.slice(cell);
    double share = s < 0 ? 0 : share(cell, time);
    if (share > 0) {
      skin.add(cell, volume * share);
      int o = outermost[s];
      if (o < 0 || walls.distance(cell) < walls.distance(o)) {
        outermost[s] = cell;
      }
    }
  }

  private double share(int cell, double time) {
    double here = Math.sqrt(set[cell]);
    double across = 1e-9;
    for (int f = 0; f < cavity.faces(cell); f++) {
      int other = cavity.across(cell, f);
      across = Math.max(across, Math.abs(Math.sqrt(set[other]) - here));
    }
    return Math.max(0, Math.min(1, 0.5 + (here - Math.sqrt(time)) / across));
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

package gelfront.dent;

import gelfront.grid.Cavity;
import gelfront.grid.WallDistance;
import java.util.Arrays;

/**
 * Thickness of the set skin round the liquid, slice by slice, at one time.
 *
 * <pre>  A - A_liquid = P t - pi t^2</pre>
 *
 * <p>with A the slice's area, P its true wall per length, A_liquid what is still liquid of the
 * pocket: exact for a ring round a circle, and short by 0.9 t^2 at four square corners. A cell that
 * the front is passing counts in part, by its set time and how much later or earlier its neighbours
 * set (times by their roots, as fronts move), so that t grows smoothly and not by voxels. Never
 * under 0.2 mm.
 */
final class Skin {
  private static final double THINNEST = 0.2e-3;

  private final Cavity cavity;
  private final WallDistance walls;
  private final float[] set;
  private final Sections sections;

  private final double[] liquid;
  private final int[] outermost;

  Skin(Cavity cavity, WallDistance walls, float[] set, Sections sections) {
    this.cavity = cavity;
    this.walls = walls;
    this.set = set;
    this.sections = sections;
    liquid = new double[sections.count()];
    outermost = new int[sections.count()];
  }

  /** Forgets what was liquid. */
  void clear() {
    Arrays.fill(liquid, 0);
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
      sections.spread(cell, volume * share, liquid);
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

  /** Whether anything is liquid in the slice. */
  boolean isRound(int s) {
    return liquid[s] > 0;
  }

  /** Metres. */
  double thickness(int s) {
    double perimeter = sections.perimeter(s);
    double skin = Math.max(0, sections.area(s) - liquid[s] / sections.thickness());
    double root = Math.sqrt(Math.max(0, perimeter * perimeter - 4 * Math.PI * skin));
    return Math.max(THINNEST, 2 * skin / (perimeter + root));
  }

  /** Liquid cell nearest to the wall. */
  int outermost(int s) {
    return outermost[s];
  }
}

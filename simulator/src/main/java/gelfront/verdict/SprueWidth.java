// SPDX-License-Identifier: Apache-2.0
package gelfront.verdict;

import gelfront.grid.Cavity;
import gelfront.grid.WallDistance;
import gelfront.mesh.Vec3;
import java.util.Map;
import java.util.TreeMap;

/**
 * Where a sprue is narrowest: of the cells farthest from walls in each slice across it, the one
 * nearest to them. Slices nearer to its ends than half its width don't count: end faces are walls,
 * too.
 */
final class SprueWidth {
  private final Cavity cavity;
  private final WallDistance walls;

  /** Deepest cell per slice, from the part's side on. */
  private final TreeMap<Long, Integer> deepest = new TreeMap<>();

  private SprueWidth(Cavity cavity, WallDistance walls, Vec3 out) {
    this.cavity = cavity;
    this.walls = walls;
    for (int c = 0; c < cavity.count(); c++) {
      if (cavity.region()[c] == Cavity.Region.SPRUE.ordinal()) {
        long slice = Math.round(cavity.centre(c).dot(out) / cavity.grid().spacing());
        deepest.merge(slice, c, (a, b) -> walls.distance(a) >= walls.distance(b) ? a : b);
      }
    }
  }

  /**
   * @param out along the sprue, length one
   * @return cell; there must be a sprue
   */
  static int narrowest(Cavity cavity, WallDistance walls, Vec3 out) {
    return new SprueWidth(cavity, walls, out).narrowest();
  }

  private int narrowest() {
    double ends = deepest.values().stream().mapToDouble(walls::distance).max().orElse(0);
    int best = -1;
    for (Map.Entry<Long, Integer> slice : deepest.entrySet()) {
      int c = slice.getValue();
      double in = cavity.grid().spacing() * (slice.getKey() - deepest.firstKey());
      double out = cavity.grid().spacing() * (deepest.lastKey() - slice.getKey());
      boolean inside = Math.min(in, out) > ends;
      if (inside && (best < 0 || walls.distance(c) < walls.distance(best))) {
        best = c;
      }
    }
    return best >= 0 ? best : middle();
  }

  private int middle() {
    return deepest.values().stream().skip(deepest.size() / 2).findFirst().orElseThrow();
  }
}

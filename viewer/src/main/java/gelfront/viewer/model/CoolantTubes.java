// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Block;
import java.util.List;
import java.util.Optional;

/** A block's channels as bodies, as far as the mould goes: a case may let them begin outside. */
public final class CoolantTubes {
  private static final int SIDES = 40;

  private CoolantTubes() {}

  /**
   * @param mould what they are cut off by
   * @return one a channel; none for one that doesn't meet the mould
   */
  public static List<SkinMesh> of(List<Block.Channel> channels, Extent mould) {
    return channels.stream().flatMap(c -> of(c, mould).stream()).toList();
  }

  private static Optional<SkinMesh> of(Block.Channel c, Extent mould) {
    double[] from = xyz(c.from());
    double[] way = xyz(c.to().minus(c.from()));
    double[] low = xyz(mould.lower().times(1e-3));
    double[] high = xyz(mould.upper().times(1e-3));
    double begin = 0;
    double end = 1;
    for (int a = 0; a < 3; a++) {
      if (way[a] == 0) {
        end = from[a] < low[a] || from[a] > high[a] ? begin : end;
      } else {
        double one = (low[a] - from[a]) / way[a];
        double other = (high[a] - from[a]) / way[a];
        begin = Math.max(begin, Math.min(one, other));
        end = Math.min(end, Math.max(one, other));
      }
    }
    return end > begin ? Optional.of(tube(c, begin, end)) : Optional.empty();
  }

  private static double[] xyz(Vec3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }

  /**
   * @param begin share of its length from which it is drawn
   * @param end likewise, to which
   */
  private static SkinMesh tube(Block.Channel c, double begin, double end) {
    Vec3 way = c.to().minus(c.from());
    double r = 0.5 * c.diameter();
    Vec3 first = c.from().plus(way.times(begin));
    return SkinMesh.of(Solids.cylinder(first, c.from().plus(way.times(end)), r, r, SIDES));
  }
}

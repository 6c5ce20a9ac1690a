// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import gelfront.grid.Cavity;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * By how much suction rises in each region on the way from the mouth to one cavity.
 *
 * <pre>
 *   fall(region) = q where it ends - q where the region before it ended
 *   q where the part ends = sum of Q q / sum of Q,   Q what is drawn there and comes
 * </pre>
 */
final class Falls {
  private static final Cavity.Region[] WAY = {
    Cavity.Region.SPRUE, Cavity.Region.RUNNER, Cavity.Region.GATE, Cavity.Region.PART
  };

  private final Cavity cavity;
  private final Liquid liquid;
  private final Suction suction;
  private final int[] rank = new int[WAY.length];

  /** Faces between two regions. */
  private final int[] borders;

  Falls(Cavity cavity, Liquid liquid, Suction suction) {
    this.cavity = cavity;
    this.liquid = liquid;
    this.suction = suction;
    for (int i = 0; i < WAY.length; i++) {
      rank[WAY[i].ordinal()] = i;
    }
    CellFaces faces = liquid.faces;
    byte[] region = cavity.region();
    borders =
        IntStream.range(0, faces.count())
            .filter(f -> region[faces.a[f]] != region[faces.b[f]])
            .toArray();
  }

  /**
   * Pa per region, in the order of {@link Cavity.Region}.
   *
   * @param draw m3/s per block
   */
  double[] to(short[] owner, int number, double[] draw) {
    double[] ends = ends(owner, number);
    ends[WAY.length - 1] = part(owner, number, draw);
    double[] fall = new double[WAY.length];
    double before = 0;
    for (int i = 0; i < WAY.length; i++) {
      double end = Double.isNaN(ends[i]) ? before : Math.max(before, ends[i]);
      fall[WAY[i].ordinal()] = end - before;
      before = end;
    }
    return fall;
  }

  /** Mean over the faces through which a region leads on; NaN where there is none. */
  private double[] ends(short[] owner, int number) {
    double[] area = new double[WAY.length];
    double[] sum = new double[WAY.length];
    CellFaces faces = liquid.faces;
    int[] of = liquid.blocks().of;
    double[] q = suction.suction();
    for (int f : borders) {
      int a = faces.a[f];
      int b = faces.b[f];
      int from = rank[cavity.region()[a]];
      int to = rank[cavity.region()[b]];
      boolean open = of[a] >= 0 && of[b] >= 0 && q[of[a]] > 0 && q[of[b]] > 0;
      if (open && onTheWay(owner[a], number) && onTheWay(owner[b], number)) {
        double face = faces.area(f);
        area[Math.min(from, to)] += face;
        sum[Math.min(from, to)] += face * 0.5 * (q[of[a]] + q[of[b]]);
      }
    }
    Arrays.setAll(sum, i -> area[i] > 0 ? sum[i] / area[i] : Double.NaN);
    return sum;
  }

  private static boolean onTheWay(short owner, int number) {
    return owner == 0 || owner == number;
  }

  private double part(short[] owner, int number, double[] draw) {
    double sum = 0;
    double comes = 0;
    int[] first = liquid.blocks().first;
    for (int b = 0; b < draw.length; b++) {
      byte region = cavity.region()[first[b]];
      if (owner[first[b]] == number && region == Cavity.Region.PART.ordinal()) {
        double q = Math.max(0, draw[b] - suction.given()[b]);
        comes += q;
        sum += q * suction.suction()[b];
      }
    }
    return comes > 0 ? sum / comes : Double.NaN;
  }

  /** Cell of a cavity where suction is spent most, by volume; -1: nowhere in it. */
  int narrowest(short[] owner, int number) {
    int best = -1;
    double most = 0;
    Blocks blocks = liquid.blocks();
    for (int b = 0; b < blocks.count(); b++) {
      int c = blocks.first[b];
      double lost = suction.lostAt(b) / Math.pow(blocks.cubes.size()[b], 3);
      boolean here = owner[c] == number && cavity.region()[c] == Cavity.Region.PART.ordinal();
      if (lost > most && here) {
        most = lost;
        best = c;
      }
    }
    return best;
  }
}

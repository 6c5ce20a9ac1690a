// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.grid.Basins;
import gelfront.grid.Cavity;
import gelfront.mesh.Vec3;

/** Makes a pocket's lobes from what its slices lost. */
final class LobeMaker {
  /**
   * Share of a section's radius by which the late places lie to one side, on the mean, for the skin
   * to be clearly thinner there: own judgement. Voxels alone make 0.01.
   */
  private static final double CLEARLY = 0.03;

  /** Part of "up" across the axis from which a part lies rather than stands. */
  private static final double LIES = 0.3;

  private final Cavity cavity;
  private final Sections sections;
  private final float[] set;
  private final Vec3 up;

  /**
   * @param set s per plastisol cell
   * @param up unit vector, up while it cools
   */
  LobeMaker(Cavity cavity, Sections sections, float[] set, Vec3 up) {
    this.cavity = cavity;
    this.sections = sections;
    this.set = set;
    this.up = up;
  }

  DentLobes of(Basins.Basin pocket, Lost low, Lost high) {
    Vec3[] centre = centres(pocket, false);
    Vec3[] late = centres(pocket, true);
    DentLobes.Slice[] slices = new DentLobes.Slice[sections.count()];
    double volume = 0;
    Vec3 thin = Vec3.ZERO;
    double weight = 0;
    for (int s = 0; s < slices.length; s++) {
      double lost = low.share(s) * sections.area(s);
      if (centre[s] == null || late[s] == null || (lost == 0 && high.tacky(s) == 0)) {
        continue;
      }
      slices[s] = slice(s, centre[s], lost, low, high);
      volume += lost * sections.thickness();
      Vec3 side = across(late[s].minus(centre[s])).times(1 / sections.radius(s));
      thin = thin.plus(side.times(high.tacky(s)));
      weight += high.tacky(s);
    }
    Vec3 mean = weight > 0 ? thin.times(1 / weight) : Vec3.ZERO;
    double start = sections.start();
    return new DentLobes(
        sections.axis(), start, sections.thickness(), toward(mean), slices, volume);
  }

  private DentLobes.Slice slice(int s, Vec3 centre, double lost, Lost low, Lost high) {
    double perimeter = sections.perimeter(s);
    double arc = Math.min(perimeter, lost > 0 ? low.arc(s) : high.arc(s));
    double depth = arc > 0 ? Math.min(low.worst(s), 2 * lost / arc) : 0;
    double ring = perimeter > 0 ? Math.max(0, lost - 0.5 * depth * arc) / perimeter : 0;
    return new DentLobes.Slice(centre, perimeter, arc, depth, ring, low.mildest(s), high.tacky(s));
  }

  private Vec3 toward(Vec3 thin) {
    Vec3 upward = across(up);
    if (thin.length() > CLEARLY || (upward.length() < LIES && thin.length() > 1e-9)) {
      return thin.unit();
    }
    if (upward.length() > 1e-6) {
      return upward.unit();
    }
    Vec3 any = Math.abs(sections.axis().x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
    return across(any).unit();
  }

  private Vec3 across(Vec3 v) {
    return v.minus(sections.axis().times(v.dot(sections.axis())));
  }

  private Vec3 place(int cell) {
    return cavity.centre(cell);
  }

  /** Of the pocket's cells in each slice; or weighted by how late they set. */
  private Vec3[] centres(Basins.Basin pocket, boolean byTime) {
    Vec3[] sum = new Vec3[sections.count()];
    double[] n = new double[sum.length];
    for (int c : pocket.cells()) {
      int s = sections.slice(c);
      if (s >= 0) {
        double late = Math.max(0, Math.min(1e6, set[c] - pocket.level()));
        double w = cavity.cubeVolume(c) * (byTime ? late : 1);
        sum[s] = sum[s] == null ? place(c).times(w) : sum[s].plus(place(c).times(w));
        n[s] += w;
      }
    }
    for (int s = 0; s < sum.length; s++) {
      sum[s] = n[s] > 0 ? sum[s].times(1 / n[s]) : null;
    }
    return sum;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.mesh.Vec3;
import java.util.Arrays;

/**
 * Thickness of the set skin round the liquid, slice by slice, at one time.
 *
 * <pre>
 *   A - A_liquid = P t - pi t^2
 *   thinnest     = t - |c_liquid - c|</pre>
 *
 * <p>with A the slice's area, P its true wall per length, A_liquid what is still liquid: exact for
 * a ring round a circle, and short by 0.9 t^2 at four square corners. c and c_liquid are the
 * middles of slice and liquid across the axis: a round core beside the middle leaves so much less
 * on its side. Never under 0.2 mm.
 */
final class Skin {
  private static final double THINNEST = 0.2e-3;

  private final Sections sections;
  private final double[] liquid;
  private final double[][] moment;

  Skin(Sections sections) {
    this.sections = sections;
    liquid = new double[sections.count()];
    moment = new double[3][sections.count()];
  }

  /** Forgets what was liquid. */
  void clear() {
    Arrays.fill(liquid, 0);
    for (double[] m : moment) {
      Arrays.fill(m, 0);
    }
  }

  /**
   * Adds what is still liquid of a cell.
   *
   * @param volume m3
   */
  void add(int cell, double volume) {
    sections.spread(cell, volume, liquid);
    for (int a = 0; a < 3; a++) {
      sections.spread(cell, volume * sections.place(cell, a), moment[a]);
    }
  }

  /** Whether anything is liquid in the slice, and walls go at least half round it. */
  boolean isRound(int s) {
    return liquid[s] > 0 && sections.perimeter(s) > Math.PI * sections.radius(s);
  }

  /** Metres, in the mean. */
  double thickness(int s) {
    double perimeter = sections.perimeter(s);
    double skin = Math.max(0, sections.area(s) - liquid[s] / sections.thickness());
    double root = Math.sqrt(Math.max(0, perimeter * perimeter - 4 * Math.PI * skin));
    return Math.max(THINNEST, 2 * skin / (perimeter + root));
  }

  /** Metres, on the thinnest side. */
  double thinnest(int s) {
    Vec3 middle = new Vec3(moment[0][s], moment[1][s], moment[2][s]).times(1 / liquid[s]);
    Vec3 aside = middle.minus(sections.centre(s));
    double along = aside.dot(sections.axis());
    double off = aside.minus(sections.axis().times(along)).length();
    return Math.max(THINNEST, thickness(s) - off);
  }

  /** How easily the slice gives way, R^4 / t^3, m; 0 where it has no ring round liquid. */
  double softness(int s) {
    return isRound(s) ? Math.pow(sections.radius(s), 4) / Math.pow(thickness(s), 3) : 0;
  }
}

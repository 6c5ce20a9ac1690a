// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import gelfront.mesh.Vec3;

/**
 * Where a pocket's dents lie on the surface, slice by slice along the part's axis: one broad lobe
 * on one side, and what is left of the slice's lost area all round.
 *
 * <pre>
 *   depth(y) = d (1 + cos(2 pi y / w)) / 2 + g,   |y| below w / 2, y round the section
 *   d w / 2 + g P = e A
 *   d = min(law(e), 2 e A / w)</pre>
 *
 * <p>with e A the area that the slice lost beyond even shrinkage, w the lobe's arc, P the
 * perimeter, d from {@link SkinLaw} without tack. So the lobes of all slices hold what wasn't fed.
 * Lobes of all slices look the same way: to the side where the skin is clearly thinnest, else up,
 * where liquid sinks away from the skin.
 */
public final class DentLobes {
  private final Vec3 axis;
  private final double start;
  private final double thickness;
  private final Vec3 toward;
  private final Slice[] slices;
  private final double volume;

  /**
   * One slice.
   *
   * @param centre of the pocket in it, metres
   * @param perimeter metres
   * @param arc metres round the section that the lobe takes
   * @param depth metres of the lobe
   * @param ring metres all round
   * @param low metres, low bound of the lobe
   * @param high metres, high bound of the lobe
   */
  record Slice(
      Vec3 centre,
      double perimeter,
      double arc,
      double depth,
      double ring,
      double low,
      double high) {}

  /**
   * @param start place along the axis of the middle of slice 0, metres
   * @param thickness of a slice, metres
   * @param toward unit vector across the axis, to the side of the lobes
   * @param slices null where the pocket takes nothing
   * @param volume m3 that they hold together
   */
  DentLobes(Vec3 axis, double start, double thickness, Vec3 toward, Slice[] slices, double volume) {
    this.axis = axis;
    this.start = start;
    this.thickness = thickness;
    this.toward = toward;
    this.slices = slices;
    this.volume = volume;
  }

  /** m3 that the lobes hold: unfed contraction, even shrinkage taken off. */
  public double volume() {
    return volume;
  }

  /** Unit vector across the part's axis, to the side that is pulled in. */
  public Vec3 toward() {
    return toward;
  }

  boolean takesFrom(int slice) {
    return slices[slice] != null;
  }

  /** Of the pocket in a slice that it takes from, metres. */
  Vec3 centre(int slice) {
    return slices[slice].centre;
  }

  /**
   * Adds a place's depths, metres: all of it, low and high bound of the lobe.
   *
   * @param p on the surface, metres
   * @param out three values, added to
   */
  public void addAt(Vec3 p, double[] out) {
    double u = (p.dot(axis) - start) / thickness;
    int below = (int) Math.floor(u);
    double up = u - below;
    add(below, 1 - up, p, out);
    add(below + 1, up, p, out);
  }

  private void add(int s, double weight, Vec3 p, double[] out) {
    boolean beyond = s < 0 || s >= slices.length;
    if (beyond || slices[s] == null || weight < 1e-12) {
      return;
    }
    Slice slice = slices[s];
    Vec3 across = p.minus(slice.centre);
    across = across.minus(axis.times(across.dot(axis)));
    double l = across.length();
    double angle = l > 0 ? Math.acos(Math.max(-1, Math.min(1, across.dot(toward) / l))) : 0;
    double y = angle / (2 * Math.PI) * slice.perimeter;
    double shape = y < 0.5 * slice.arc ? 0.5 + 0.5 * Math.cos(2 * Math.PI * y / slice.arc) : 0;
    out[0] += weight * (slice.depth * shape + slice.ring);
    out[1] += weight * slice.low * shape;
    out[2] += weight * slice.high * shape;
  }
}

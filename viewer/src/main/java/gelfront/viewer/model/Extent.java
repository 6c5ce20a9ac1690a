// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.Box;
import gelfront.mesh.Vec3;
import gelfront.result.Fields;

/**
 * A box round what is shown.
 *
 * @param lower millimetres, part coordinates
 * @param upper millimetres, part coordinates
 */
public record Extent(Vec3 lower, Vec3 upper) {

  /**
   * Round all plastisol cells.
   *
   * @throws IllegalArgumentException if there is no cell
   */
  public static Extent of(Fields f) {
    if (f.cells().length == 0) {
      throw new IllegalArgumentException("holds no plastisol cell, so there is nothing to show");
    }
    Vec3 low = f.centre(f.cells()[0]);
    Vec3 high = low;
    for (int cell : f.cells()) {
      Vec3 c = f.centre(cell);
      low = new Vec3(Math.min(low.x(), c.x()), Math.min(low.y(), c.y()), Math.min(low.z(), c.z()));
      high =
          new Vec3(Math.max(high.x(), c.x()), Math.max(high.y(), c.y()), Math.max(high.z(), c.z()));
    }
    Vec3 half = new Vec3(1, 1, 1).times(0.5 * f.spacing());
    return new Extent(low.minus(half).times(1e3), high.plus(half).times(1e3));
  }

  /**
   * @param box metres
   */
  public static Extent of(Box box) {
    return new Extent(box.min().times(1e3), box.max().times(1e3));
  }

  /** Round both. */
  public Extent with(Extent o) {
    Box all = new Box(lower, upper).union(new Box(o.lower, o.upper));
    return new Extent(all.min(), all.max());
  }

  /**
   * Grown evenly towards a box round both.
   *
   * @param most times the radius that it may have, above 1
   */
  public Extent towards(Extent o, double most) {
    Extent all = with(o);
    double more = all.radius() - radius();
    double share = more > 0 ? Math.min(1, (most - 1) * radius() / more) : 1;
    return new Extent(
        lower.plus(all.lower.minus(lower).times(share)),
        upper.plus(all.upper.minus(upper).times(share)));
  }

  public Vec3 middle() {
    return lower.plus(upper).times(0.5);
  }

  /** Whether it is no longer along y than along x. */
  public boolean longAlongX() {
    return upper.x() - lower.x() >= upper.y() - lower.y();
  }

  /** Half of the box's diagonal, mm. */
  public double radius() {
    return 0.5 * upper.distance(lower);
  }
}

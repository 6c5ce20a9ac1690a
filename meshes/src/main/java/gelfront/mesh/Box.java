// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh;

/** An axis-aligned box, metres, {@code min <= max} on every axis. */
public record Box(Vec3 min, Vec3 max) {
  public Box {
    if (!(min.x() <= max.x() && min.y() <= max.y() && min.z() <= max.z())) {
      throw new IllegalArgumentException("empty box: " + min + " to " + max);
    }
  }

  public Vec3 size() {
    return max.minus(min);
  }

  public Vec3 centre() {
    return min.plus(max).times(0.5);
  }

  public Box union(Box o) {
    return new Box(
        new Vec3(
            Math.min(min.x(), o.min.x()),
            Math.min(min.y(), o.min.y()),
            Math.min(min.z(), o.min.z())),
        new Vec3(
            Math.max(max.x(), o.max.x()),
            Math.max(max.y(), o.max.y()),
            Math.max(max.z(), o.max.z())));
  }

  /** This box with {@code d} metres added on every side. */
  public Box grown(double d) {
    Vec3 g = new Vec3(d, d, d);
    return new Box(min.minus(g), max.plus(g));
  }

  public boolean contains(Vec3 p) {
    return p.x() >= min.x()
        && p.x() <= max.x()
        && p.y() >= min.y()
        && p.y() <= max.y()
        && p.z() >= min.z()
        && p.z() <= max.z();
  }
}

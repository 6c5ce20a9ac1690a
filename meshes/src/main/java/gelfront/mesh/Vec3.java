// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh;

/** A point or direction in the part's own (CAD) coordinates, in metres when it is a place. */
public record Vec3(double x, double y, double z) {
  public static final Vec3 ZERO = new Vec3(0, 0, 0);

  public Vec3 plus(Vec3 o) {
    return new Vec3(x + o.x, y + o.y, z + o.z);
  }

  public Vec3 minus(Vec3 o) {
    return new Vec3(x - o.x, y - o.y, z - o.z);
  }

  public Vec3 times(double s) {
    return new Vec3(s * x, s * y, s * z);
  }

  public double dot(Vec3 o) {
    return x * o.x + y * o.y + z * o.z;
  }

  public Vec3 cross(Vec3 o) {
    return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  public double distance(Vec3 o) {
    return minus(o).length();
  }

  /**
   * This direction at length one.
   *
   * @throws ArithmeticException if it has no length
   */
  public Vec3 unit() {
    double l = length();
    if (!(l > 0) || Double.isInfinite(l)) {
      throw new ArithmeticException("a direction needs a length: " + this);
    }
    return times(1 / l);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.Vec3;

/**
 * An eye that goes round a place of the part and looks at it, z up.
 *
 * @param extent of the part
 * @param target mm, part coordinates, that it looks at
 * @param yaw rad about z; -pi/2 looks along +y with x to the right
 * @param pitch rad above the x-y plane, short of straight up or down
 * @param distance mm from the target
 */
public record Orbit(Extent extent, Vec3 target, double yaw, double pitch, double distance) {
  private static final double STEEPEST = Math.toRadians(89);

  public Orbit {
    pitch = Math.max(-STEEPEST, Math.min(STEEPEST, pitch));
    double r = extent.radius();
    distance = Math.max(0.3 * r, Math.min(15 * r, distance));
  }

  /**
   * A view on the long side, a little from the right and above, in which the whole box is seen.
   *
   * @param fieldOfView rad, bottom to top of the picture
   * @param aspect width over height of the picture
   */
  public static Orbit round(Extent extent, double fieldOfView, double aspect) {
    double yaw = Math.toRadians(extent.longAlongX() ? -68 : 22);
    Orbit near = new Orbit(extent, extent.middle(), yaw, Math.toRadians(22), 0);
    double tanUp = Math.tan(fieldOfView / 2);
    double needed = 0;
    Vec3 half = extent.upper().minus(extent.middle());
    for (int corner = 0; corner < 8; corner++) {
      Vec3 c =
          new Vec3(
              half.x() * (1 - 2 * (corner & 1)),
              half.y() * (1 - (corner & 2)),
              half.z() * (1 - (corner & 4) / 2));
      double nearer = -c.dot(near.forward());
      double across = Math.abs(c.dot(near.right())) / (tanUp * aspect);
      double upright = Math.abs(c.dot(near.up())) / tanUp;
      needed = Math.max(needed, nearer + Math.max(across, upright));
    }
    return new Orbit(extent, near.target, near.yaw, near.pitch, 1.12 * needed);
  }

  public Orbit turned(double byYaw, double byPitch) {
    return new Orbit(extent, target, yaw + byYaw, pitch + byPitch, distance);
  }

  /** Looked at from where a direction of length one points to. */
  public Orbit from(Vec3 direction) {
    double up = Math.asin(Math.max(-1, Math.min(1, direction.z())));
    double flat = Math.hypot(direction.x(), direction.y());
    double round = flat < 1e-9 ? yaw : Math.atan2(direction.y(), direction.x());
    return new Orbit(extent, target, round, up, distance);
  }

  /**
   * @param factor on the distance; below 1 goes nearer
   */
  public Orbit zoomed(double factor) {
    return new Orbit(extent, target, yaw, pitch, factor * distance);
  }

  /** Looks at another place, within twice the box. */
  public Orbit lookingAt(Vec3 place) {
    Vec3 off = place.minus(extent.middle());
    double far = off.length() / (2 * extent.radius());
    Vec3 kept = far > 1 ? extent.middle().plus(off.times(1 / far)) : place;
    return new Orbit(extent, kept, yaw, pitch, distance);
  }

  /** Moved along the picture, in shares of its height. */
  public Orbit slid(double toRight, double toTop, double fieldOfView) {
    double height = 2 * distance * Math.tan(fieldOfView / 2);
    return lookingAt(target.plus(right().times(toRight * height)).plus(up().times(toTop * height)));
  }

  /** Where the eye is, mm, part coordinates. */
  public Vec3 eye() {
    return target.minus(forward().times(distance));
  }

  /** Unit vector the eye looks along. */
  public Vec3 forward() {
    double flat = Math.cos(pitch);
    return new Vec3(-flat * Math.cos(yaw), -flat * Math.sin(yaw), -Math.sin(pitch));
  }

  /** Unit vector to the picture's right. */
  public Vec3 right() {
    return new Vec3(-Math.sin(yaw), Math.cos(yaw), 0);
  }

  /** Unit vector to the picture's top. */
  public Vec3 up() {
    return right().cross(forward());
  }

  /**
   * The line of sight through a point of the picture.
   *
   * @param x 0 at the left edge to 1 at the right
   * @param y 0 at the top to 1 at the bottom
   * @param fieldOfView rad, bottom to top
   * @param aspect width over height
   */
  public Ray through(double x, double y, double fieldOfView, double aspect) {
    double tan = Math.tan(fieldOfView / 2);
    Vec3 d =
        forward()
            .plus(right().times((2 * x - 1) * tan * aspect))
            .plus(up().times((1 - 2 * y) * tan));
    return new Ray(eye(), d.unit());
  }
}

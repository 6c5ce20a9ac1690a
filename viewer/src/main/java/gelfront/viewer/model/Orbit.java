package gelfront.viewer.model;

import gelfront.mesh.Vec3;

/**
 * An eye that goes round the middle of the part and looks at it, z up.
 *
 * @param extent of the part
 * @param yaw rad about z; -pi/2 looks along +y with x to the right
 * @param pitch rad above the x-y plane, short of straight up or down
 * @param distance mm from the middle
 */
public record Orbit(Extent extent, double yaw, double pitch, double distance) {
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
    Orbit near =
        new Orbit(extent, Math.toRadians(extent.longAlongX() ? -68 : 22), Math.toRadians(22), 0);
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
    return new Orbit(extent, near.yaw, near.pitch, 1.12 * needed);
  }

  public Orbit turned(double byYaw, double byPitch) {
    return new Orbit(extent, yaw + byYaw, pitch + byPitch, distance);
  }

  /**
   * @param factor on the distance; below 1 goes nearer
   */
  public Orbit zoomed(double factor) {
    return new Orbit(extent, yaw, pitch, factor * distance);
  }

  /** Where the eye is, mm, part coordinates. */
  public Vec3 eye() {
    return extent.middle().minus(forward().times(distance));
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
}

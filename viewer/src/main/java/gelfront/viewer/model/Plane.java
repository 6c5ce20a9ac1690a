// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.Vec3;

/**
 * Where the picture is cut open; what lies on the normal's side stays.
 *
 * @param at mm, part coordinates, a point on it
 * @param normal length one, towards what stays
 */
public record Plane(Vec3 at, Vec3 normal) {
  public Plane {
    normal = normal.unit();
  }

  /** Lengthwise through the middle, the half towards the eye of {@link Orbit#round} away. */
  public static Plane lengthwise(Extent extent) {
    return extent.longAlongX()
        ? new Plane(extent.middle(), new Vec3(0, 1, 0))
        : new Plane(extent.middle(), new Vec3(-1, 0, 0));
  }

  /** Across an axis (0 x, 1 y, 2 z), through the middle. */
  public static Plane across(int axis, Extent extent) {
    return new Plane(
        extent.middle(),
        switch (axis) {
          case 0 -> new Vec3(-1, 0, 0);
          case 1 -> new Vec3(0, 1, 0);
          default -> new Vec3(0, 0, -1);
        });
  }

  /** mm in front of the plane, negative where it is cut away. */
  public double above(Vec3 p) {
    return p.minus(at).dot(normal);
  }

  public boolean keeps(Vec3 p) {
    return above(p) >= 0;
  }

  /** Moved along its normal, mm. */
  public Plane moved(double by) {
    return new Plane(at.plus(normal.times(by)), normal);
  }

  /** Turned about an axis of length one, by an angle in rad, its point staying. */
  public Plane turned(Vec3 axis, double angle) {
    Vec3 n =
        normal
            .times(Math.cos(angle))
            .plus(axis.cross(normal).times(Math.sin(angle)))
            .plus(axis.times(axis.dot(normal) * (1 - Math.cos(angle))));
    return new Plane(at, n);
  }

  /** The same plane at a share of its way through the box, 0 to 1. */
  public Plane at(double share, Extent extent) {
    double[] reach = reach(extent);
    double to = reach[0] + share * (reach[1] - reach[0]);
    return moved(to - at.minus(extent.middle()).dot(normal));
  }

  /** Where it stands on its way through the box, 0 to 1. */
  public double share(Extent extent) {
    double[] reach = reach(extent);
    double s = (at.minus(extent.middle()).dot(normal) - reach[0]) / (reach[1] - reach[0]);
    return Math.max(0, Math.min(1, s));
  }

  /** Of the box's corners along the normal, from its middle. */
  private double[] reach(Extent extent) {
    Vec3 half = extent.upper().minus(extent.middle());
    double r =
        Math.abs(half.x() * normal.x())
            + Math.abs(half.y() * normal.y())
            + Math.abs(half.z() * normal.z());
    return new double[] {-r, r};
  }
}

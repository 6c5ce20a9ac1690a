// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;

/**
 * Where a copy of the part lies in the block: p' = p.x ex + p.y ey + p.z ez + shift.
 *
 * @param ex where the direction x goes, length one
 * @param ey likewise y; square to ex
 * @param ez likewise z; square to both; against ex x ey where the copy is mirrored
 * @param shift where the origin goes, metres
 */
public record Placement(Vec3 ex, Vec3 ey, Vec3 ez, Vec3 shift) {
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Y = new Vec3(0, 1, 0);
  private static final Vec3 Z = new Vec3(0, 0, 1);
  private static final double EXACT = 1e-9;

  public Placement {
    double off = Math.abs(ex.dot(ey)) + Math.abs(ey.dot(ez)) + Math.abs(ez.dot(ex));
    off += Math.abs(ex.length() - 1) + Math.abs(ey.length() - 1) + Math.abs(ez.length() - 1);
    if (!(off < EXACT)) {
      throw new IllegalArgumentException("a copy can't be another shape");
    }
  }

  /** By a distance, metres. */
  public static Placement shifted(Vec3 by) {
    return new Placement(X, Y, Z, by);
  }

  /**
   * Turned counter-clockwise seen against the axis (Rodrigues' formula).
   *
   * @param angle radians
   * @param axis length one
   * @param about a point on the axis, metres
   */
  public static Placement turned(double angle, Vec3 axis, Vec3 about) {
    return about(turn(X, angle, axis), turn(Y, angle, axis), turn(Z, angle, axis), about);
  }

  /**
   * Mirrored.
   *
   * @param normal of the mirror, length one
   * @param about a point on the mirror, metres
   */
  public static Placement mirrored(Vec3 normal, Vec3 about) {
    return about(flip(X, normal), flip(Y, normal), flip(Z, normal), about);
  }

  private static Vec3 turn(Vec3 v, double angle, Vec3 axis) {
    return v.times(Math.cos(angle))
        .plus(axis.cross(v).times(Math.sin(angle)))
        .plus(axis.times(axis.dot(v) * (1 - Math.cos(angle))));
  }

  private static Vec3 flip(Vec3 v, Vec3 normal) {
    return v.minus(normal.times(2 * v.dot(normal)));
  }

  private static Placement about(Vec3 ex, Vec3 ey, Vec3 ez, Vec3 fixed) {
    Placement p = new Placement(ex, ey, ez, Vec3.ZERO);
    return p.then(fixed.minus(p.point(fixed)));
  }

  /** And then shifted, metres. */
  public Placement then(Vec3 by) {
    return new Placement(ex, ey, ez, shift.plus(by));
  }

  /** Where a place goes. */
  public Vec3 point(Vec3 p) {
    return direction(p).plus(shift);
  }

  /** Where a direction goes. */
  public Vec3 direction(Vec3 d) {
    return ex.times(d.x()).plus(ey.times(d.y())).plus(ez.times(d.z()));
  }

  /** The copy of a mesh, wound outwards as the mesh is. */
  public TriangleMesh of(TriangleMesh mesh) {
    double[] v = mesh.copyVertices();
    for (int i = 0; i < mesh.vertexCount(); i++) {
      Vec3 p = point(mesh.vertex(i));
      v[3 * i] = p.x();
      v[3 * i + 1] = p.y();
      v[3 * i + 2] = p.z();
    }
    int[] t = mesh.copyTriangles();
    boolean mirrored = ex.cross(ey).dot(ez) < 0;
    for (int i = 0; mirrored && i < t.length; i += 3) {
      int second = t[i + 1];
      t[i + 1] = t[i + 2];
      t[i + 2] = second;
    }
    return new TriangleMesh(v, t);
  }
}

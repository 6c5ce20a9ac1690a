// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.shape;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.List;

/** Closed solids, outward-wound, metres. */
public final class Solids {
  private Solids() {}

  /** A frustum with flat ends. */
  public static TriangleMesh cylinder(Vec3 from, Vec3 to, double r0, double r1, int segments) {
    Vec3 d = to.minus(from).unit();
    Vec3 any = Math.abs(d.x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
    Vec3 u = any.minus(d.times(any.dot(d))).unit();
    Vec3 v = d.cross(u);
    double[] p = new double[6 * segments];
    for (int s = 0; s < segments; s++) {
      double a = 2 * Math.PI * s / segments;
      Vec3 rim = u.times(Math.cos(a)).plus(v.times(Math.sin(a)));
      put(p, s, from.plus(rim.times(r0)));
      put(p, segments + s, to.plus(rim.times(r1)));
    }
    return extrusion(p, segments);
  }

  /**
   * A bar of a given outline.
   *
   * @param outline counter-clockwise convex points (u, v), metres; v along {@code up}, u along up x
   *     (to - from)
   * @param up across the bar
   */
  public static TriangleMesh prism(List<double[]> outline, Vec3 from, Vec3 to, Vec3 up) {
    Vec3 d = to.minus(from).unit();
    Vec3 v = up.minus(d.times(up.dot(d))).unit();
    Vec3 u = v.cross(d);
    int n = outline.size();
    double[] p = new double[6 * n];
    for (int i = 0; i < n; i++) {
      Vec3 o = u.times(outline.get(i)[0]).plus(v.times(outline.get(i)[1]));
      put(p, i, from.plus(o));
      put(p, n + i, to.plus(o));
    }
    return extrusion(p, n);
  }

  /**
   * A body along x with elliptical sections and flat ends.
   *
   * @param x rising, metres
   * @param ry half-widths along y there, positive
   * @param rz half-heights along z there, positive
   */
  public static TriangleMesh elliptic(double[] x, double[] ry, double[] rz, int segments) {
    int rings = x.length;
    double[] p = new double[3 * (rings * segments + 2)];
    int[] t = new int[6 * rings * segments];
    int at = 0;
    for (int i = 0; i < rings; i++) {
      for (int s = 0; s < segments; s++) {
        double a = 2 * Math.PI * s / segments;
        put(p, i * segments + s, new Vec3(x[i], ry[i] * Math.cos(a), rz[i] * Math.sin(a)));
        int j = (s + 1) % segments;
        if (i + 1 < rings) {
          at = add(t, at, i * segments + s, i * segments + j, (i + 1) * segments + j);
          at = add(t, at, i * segments + s, (i + 1) * segments + j, (i + 1) * segments + s);
        }
      }
    }
    int first = rings * segments;
    put(p, first, new Vec3(x[0], 0, 0));
    put(p, first + 1, new Vec3(x[rings - 1], 0, 0));
    for (int s = 0; s < segments; s++) {
      int j = (s + 1) % segments;
      at = add(t, at, first, j, s);
      at = add(t, at, first + 1, first - segments + s, first - segments + j);
    }
    return new TriangleMesh(p, t);
  }

  /** A body of revolution about x with flat ends; radii positive. */
  public static TriangleMesh revolution(double[] x, double[] r, int segments) {
    return elliptic(x, r, r, segments);
  }

  /** A ball. */
  public static TriangleMesh sphere(Vec3 centre, double radius, int segments) {
    int rings = segments / 2 - 1;
    double[] p = new double[3 * (rings * segments + 2)];
    int[] t = new int[6 * rings * segments];
    int at = 0;
    for (int i = 0; i < rings; i++) {
      double polar = Math.PI * (i + 1) / (rings + 1);
      for (int s = 0; s < segments; s++) {
        double a = 2 * Math.PI * s / segments;
        double r = Math.sin(polar);
        Vec3 d = new Vec3(-Math.cos(polar), r * Math.cos(a), r * Math.sin(a));
        put(p, i * segments + s, centre.plus(d.times(radius)));
        int j = (s + 1) % segments;
        if (i + 1 < rings) {
          at = add(t, at, i * segments + s, i * segments + j, (i + 1) * segments + j);
          at = add(t, at, i * segments + s, (i + 1) * segments + j, (i + 1) * segments + s);
        }
      }
    }
    int pole = rings * segments;
    put(p, pole, centre.plus(new Vec3(-radius, 0, 0)));
    put(p, pole + 1, centre.plus(new Vec3(radius, 0, 0)));
    for (int s = 0; s < segments; s++) {
      int j = (s + 1) % segments;
      at = add(t, at, pole, j, s);
      at = add(t, at, pole + 1, pole - segments + s, pole - segments + j);
    }
    return new TriangleMesh(p, t);
  }

  /** A ring about the x axis: the tube's centre runs at {@code major} round it. */
  public static TriangleMesh torus(double major, double minor, int segments) {
    double[] p = new double[3 * segments * segments];
    int[] t = new int[6 * segments * segments];
    int at = 0;
    for (int i = 0; i < segments; i++) {
      double u = 2 * Math.PI * i / segments;
      for (int s = 0; s < segments; s++) {
        double v = 2 * Math.PI * s / segments;
        double r = major + minor * Math.cos(v);
        put(p, i * segments + s, new Vec3(minor * Math.sin(v), r * Math.cos(u), r * Math.sin(u)));
        int i2 = (i + 1) % segments;
        int s2 = (s + 1) % segments;
        at = add(t, at, i * segments + s, i2 * segments + s2, i * segments + s2);
        at = add(t, at, i * segments + s, i2 * segments + s, i2 * segments + s2);
      }
    }
    return new TriangleMesh(p, t);
  }

  /** A cuboid. */
  public static TriangleMesh box(Vec3 min, Vec3 max) {
    double y = 0.5 * (max.y() - min.y());
    double z = 0.5 * (max.z() - min.z());
    Vec3 from = new Vec3(min.x(), min.y() + y, min.z() + z);
    return prism(
        List.of(
            new double[] {-y, -z}, new double[] {y, -z}, new double[] {y, z}, new double[] {-y, z}),
        from,
        new Vec3(max.x(), from.y(), from.z()),
        new Vec3(0, 0, 1));
  }

  private static void put(double[] p, int vertex, Vec3 v) {
    p[3 * vertex] = v.x();
    p[3 * vertex + 1] = v.y();
    p[3 * vertex + 2] = v.z();
  }

  /** Two rings of n points, counter-clockwise seen from the second, and their fans. */
  private static TriangleMesh extrusion(double[] p, int n) {
    int[] t = new int[3 * (4 * n - 4)];
    int at = 0;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      at = add(t, at, i, j, n + j);
      at = add(t, at, i, n + j, n + i);
    }
    for (int i = 1; i + 1 < n; i++) {
      at = add(t, at, 0, i + 1, i);
      at = add(t, at, n, n + i, n + i + 1);
    }
    return new TriangleMesh(p, t);
  }

  private static int add(int[] t, int at, int a, int b, int c) {
    t[at] = a;
    t[at + 1] = b;
    t[at + 2] = c;
    return at + 3;
  }
}

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

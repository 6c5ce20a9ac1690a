// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;

/** Which shells overlap, and which lie wholly inside another. */
final class Nesting {
  /**
   * Triangles looked at per pair, of those near the other's box: enough to notice any overlap worth
   * uniting.
   */
  private static final int SAMPLES = 400;

  /** A direction that runs along no part's axis. */
  private static final Vec3 RAY = new Vec3(0.8164, 0.5071, 0.2763).unit();

  private final TriangleMesh mesh;
  private final List<List<Integer>> triangles = new ArrayList<>();

  Nesting(TriangleMesh mesh, Shells shells) {
    this.mesh = mesh;
    for (int s = 0; s < shells.count(); s++) {
      triangles.add(new ArrayList<>());
    }
    for (int t = 0; t < mesh.triangleCount(); t++) {
      triangles.get(shells.of(t)).add(t);
    }
  }

  /** Whether shell {@code a}'s first corner lies inside shell {@code b}. */
  boolean inside(int a, int b) {
    return contains(b, mesh.vertex(mesh.corner(triangles.get(a).get(0), 0)));
  }

  /** Whether surfaces of both shells cross. */
  boolean cross(int a, int b) {
    return pierces(a, b) || pierces(b, a);
  }

  /** Boxes apart means shells apart. */
  boolean boxesMeet(int a, int b) {
    double[] x = box(a);
    double[] y = box(b);
    for (int i = 0; i < 3; i++) {
      if (x[i] > y[i + 3] || y[i] > x[i + 3]) {
        return false;
      }
    }
    return true;
  }

  private double[] box(int s) {
    double inf = Double.POSITIVE_INFINITY;
    double[] b = {inf, inf, inf, -inf, -inf, -inf};
    for (int t : triangles.get(s)) {
      for (int c = 0; c < 9; c++) {
        double v = mesh.coordinate(mesh.corner(t, c / 3), c % 3);
        b[c % 3] = Math.min(b[c % 3], v);
        b[c % 3 + 3] = Math.max(b[c % 3 + 3], v);
      }
    }
    return b;
  }

  private boolean contains(int s, Vec3 p) {
    int crossings = 0;
    for (int t : triangles.get(s)) {
      double hit = hit(t, p, RAY);
      crossings += hit > 0 && hit < Double.POSITIVE_INFINITY ? 1 : 0;
    }
    return crossings % 2 == 1;
  }

  /** Whether an edge of {@code a} goes through a triangle of {@code b}. */
  private boolean pierces(int a, int b) {
    double[] box = box(b);
    List<Integer> list = triangles.get(a).stream().filter(t -> near(t, box)).toList();
    int step = Math.max(1, list.size() / SAMPLES);
    for (int i = 0; i < list.size(); i += step) {
      int t = list.get(i);
      for (int c = 0; c < 3; c++) {
        Vec3 p = mesh.vertex(mesh.corner(t, c));
        Vec3 d = mesh.vertex(mesh.corner(t, (c + 1) % 3)).minus(p);
        if (near(p, p.plus(d), box) && d.length() > 0 && pierced(b, p, d)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean near(int t, double[] box) {
    Vec3 a = mesh.vertex(mesh.corner(t, 0));
    Vec3 b = mesh.vertex(mesh.corner(t, 1));
    Vec3 c = mesh.vertex(mesh.corner(t, 2));
    return near(a, b, box) || near(b, c, box) || near(c, a, box);
  }

  private static boolean near(Vec3 p, Vec3 q, double[] box) {
    return Math.max(p.x(), q.x()) >= box[0]
        && Math.min(p.x(), q.x()) <= box[3]
        && Math.max(p.y(), q.y()) >= box[1]
        && Math.min(p.y(), q.y()) <= box[4]
        && Math.max(p.z(), q.z()) >= box[2]
        && Math.min(p.z(), q.z()) <= box[5];
  }

  private boolean pierced(int s, Vec3 p, Vec3 d) {
    for (int t : triangles.get(s)) {
      double hit = hit(t, p, d);
      if (hit > 1e-9 && hit < 1 - 1e-9) {
        return true;
      }
    }
    return false;
  }

  /** Multiple of {@code d} from {@code p} to triangle t's inside; +infinity where it is missed. */
  private double hit(int t, Vec3 p, Vec3 d) {
    Vec3 a = mesh.vertex(mesh.corner(t, 0));
    Vec3 e1 = mesh.vertex(mesh.corner(t, 1)).minus(a);
    Vec3 e2 = mesh.vertex(mesh.corner(t, 2)).minus(a);
    Vec3 h = d.cross(e2);
    double det = e1.dot(h);
    if (det == 0) {
      return Double.POSITIVE_INFINITY;
    }
    Vec3 s = p.minus(a);
    double u = s.dot(h) / det;
    Vec3 q = s.cross(e1);
    double v = d.dot(q) / det;
    return u >= 0 && v >= 0 && u + v <= 1 ? e2.dot(q) / det : Double.POSITIVE_INFINITY;
  }
}

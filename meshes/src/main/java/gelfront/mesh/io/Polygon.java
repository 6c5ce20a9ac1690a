// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * Flat polygons as triangles, by clipping ears (G. H. Meisters, Polygons have ears, American
 * Mathematical Monthly 82, 1975). Polygons of more than 64 corners, or that have no ear because
 * they aren't flat or cross themselves, become fans: these have the same boundary, so the volume
 * inside is the same, too.
 */
final class Polygon {
  private static final int CLIPPED = 64;

  private Polygon() {}

  /**
   * @param p corners, in order
   * @return three corner numbers a triangle, wound like the polygon
   */
  static int[] triangles(List<Vec3> p) {
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < p.size(); i++) {
      left.add(i);
    }
    int[] out = new int[3 * (p.size() - 2)];
    int n = 0;
    Vec3 normal = normal(p);
    while (left.size() > 3 && p.size() <= CLIPPED) {
      int ear = ear(p, left, normal);
      if (ear < 0) {
        break;
      }
      n = put(out, n, left, ear);
      left.remove(ear);
    }
    for (int i = 1; i < left.size() - 1; i++) {
      out[n++] = left.get(0);
      out[n++] = left.get(i);
      out[n++] = left.get(i + 1);
    }
    return out;
  }

  private static int put(int[] out, int n, List<Integer> left, int at) {
    int m = left.size();
    out[n] = left.get((at + m - 1) % m);
    out[n + 1] = left.get(at);
    out[n + 2] = left.get((at + 1) % m);
    return n + 3;
  }

  /** Twice the area as a vector: Newell's sum. */
  private static Vec3 normal(List<Vec3> p) {
    Vec3 sum = Vec3.ZERO;
    for (int i = 1; i < p.size() - 1; i++) {
      sum = sum.plus(p.get(i).minus(p.get(0)).cross(p.get(i + 1).minus(p.get(0))));
    }
    return sum;
  }

  /** From the second corner on, so that convex ones become fans about the first. */
  private static int ear(List<Vec3> p, List<Integer> left, Vec3 normal) {
    int m = left.size();
    for (int i = 1; i <= m; i++) {
      Vec3 a = p.get(left.get((i + m - 1) % m));
      Vec3 b = p.get(left.get(i % m));
      Vec3 c = p.get(left.get((i + 1) % m));
      if (turn(a, b, c, normal) > 0 && empty(p, left, a, b, c, normal)) {
        return i % m;
      }
    }
    return -1;
  }

  private static double turn(Vec3 a, Vec3 b, Vec3 c, Vec3 normal) {
    return b.minus(a).cross(c.minus(a)).dot(normal);
  }

  private static boolean empty(
      List<Vec3> p, List<Integer> left, Vec3 a, Vec3 b, Vec3 c, Vec3 normal) {
    for (int i : left) {
      Vec3 q = p.get(i);
      boolean corner = q.equals(a) || q.equals(b) || q.equals(c);
      if (!corner
          && turn(a, b, q, normal) >= 0
          && turn(b, c, q, normal) >= 0
          && turn(c, a, q, normal) >= 0) {
        return false;
      }
    }
    return true;
  }
}

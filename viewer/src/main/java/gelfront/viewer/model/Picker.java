// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.Optional;

/** Which place of a mesh a line of sight meets first. Möller and Trumbore's test, all triangles. */
public final class Picker {
  private final double[] v;
  private final int[] t;

  /**
   * @param mesh metres
   */
  public Picker(TriangleMesh mesh) {
    v = mesh.copyVertices();
    for (int i = 0; i < v.length; i++) {
      v[i] *= 1e3;
    }
    t = mesh.copyTriangles();
  }

  /**
   * A place on the mesh.
   *
   * @param place mm
   * @param outward normal of the triangle, length one
   * @param distance mm from the eye
   */
  public record Hit(Vec3 place, Vec3 outward, double distance) {}

  /** The first place that is met. */
  public Optional<Hit> first(Ray ray) {
    return first(ray, Optional.empty());
  }

  /**
   * @param kept only what lies on its kept side is met
   */
  public Optional<Hit> first(Ray ray, Optional<Plane> kept) {
    double best = Double.POSITIVE_INFINITY;
    int found = -1;
    for (int i = 0; i < t.length; i += 3) {
      double d = distance(ray, i);
      if (d < best && (kept.isEmpty() || kept.get().keeps(ray.at(d)))) {
        best = d;
        found = i;
      }
    }
    return found < 0 ? Optional.empty() : Optional.of(hit(ray, found, best));
  }

  private Hit hit(Ray ray, int i, double distance) {
    Vec3 n = edge(i, 1).cross(edge(i, 2)).unit();
    return new Hit(ray.at(distance), n, distance);
  }

  private Vec3 corner(int i, int c) {
    int at = 3 * t[i + c];
    return new Vec3(v[at], v[at + 1], v[at + 2]);
  }

  private Vec3 edge(int i, int c) {
    return corner(i, c).minus(corner(i, 0));
  }

  /** mm along the ray to a triangle; infinite where it is missed. */
  private double distance(Ray ray, int i) {
    Vec3 e1 = edge(i, 1);
    Vec3 e2 = edge(i, 2);
    Vec3 p = ray.direction().cross(e2);
    double det = e1.dot(p);
    if (Math.abs(det) < 1e-14) {
      return Double.POSITIVE_INFINITY;
    }
    Vec3 s = ray.from().minus(corner(i, 0));
    double u = s.dot(p) / det;
    Vec3 q = s.cross(e1);
    double w = ray.direction().dot(q) / det;
    double d = e2.dot(q) / det;
    return u >= 0 && w >= 0 && u + w <= 1 && d > 0 ? d : Double.POSITIVE_INFINITY;
  }
}

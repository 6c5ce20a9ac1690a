// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.shape;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * How thick a solid is at its surface: the diameter of the largest ball inside that touches the
 * surface there. A ball that touches at p and passes through q has the radius
 *
 * <pre>  r = |q - p|^2 / (2 n . (q - p)),  n: inward normal at p</pre>
 *
 * <p>and the least of these over the surface is the largest that fits. Points seen from p at more
 * than 45 degrees from n are passed over: they are p's own neighbours, whose places say more of the
 * facets than of the shape.
 */
public final class Thickness {
  /** Least cosine between the inward normal and what lies across. */
  private static final double ACROSS = Math.sqrt(0.5);

  /** Facets that meet at less than this belong to one rounded surface: cosine. */
  private static final double GENTLE = Math.cos(Math.toRadians(40));

  private Thickness() {}

  /**
   * @param at on the surface, metres
   * @param outward normal there, length one
   * @param thickness metres
   */
  public record Sample(Vec3 at, Vec3 outward, double thickness) {}

  /**
   * @param mesh closed, outward-wound
   * @param samples about so many, spread evenly over the surface
   * @return in the mesh's order; a handful more or less than asked for
   */
  public static List<Sample> of(TriangleMesh mesh, int samples) {
    List<Vec3> at = new ArrayList<>();
    List<Vec3> out = new ArrayList<>();
    spread(mesh, mesh.area() / samples, at, out);
    Vec3 box = mesh.box().size();
    double most = 0.5 * Math.min(box.x(), Math.min(box.y(), box.z()));
    List<Sample> all = new ArrayList<>();
    for (int i = 0; i < at.size(); i++) {
      double r = radius(at, i, out.get(i), most);
      all.add(new Sample(at.get(i), out.get(i), 2 * r));
    }
    return all;
  }

  /** Middles of small triangles of one size, so many that each stands for about the given area. */
  private static void spread(TriangleMesh mesh, double each, List<Vec3> at, List<Vec3> out) {
    Vec3[] facets = facets(mesh);
    List<List<Integer>> round = round(mesh);
    double owed = 0.5;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      owed += facets[t].length() / each;
      int n = (int) Math.ceil(Math.sqrt(Math.floor(owed)));
      if (n < 1 || !(facets[t].length() > 0)) {
        continue;
      }
      owed -= (double) n * n;
      Vec3[] p = new Vec3[3];
      Vec3[] normal = new Vec3[3];
      for (int c = 0; c < 3; c++) {
        p[c] = mesh.vertex(mesh.corner(t, c));
        normal[c] = smooth(facets, round.get(mesh.corner(t, c)), facets[t].unit());
      }
      for (int k = 0; k < 2; k++) { // those that point as the triangle does, and those between
        double third = (k + 1) / 3.0;
        for (int i = 0; i < n - k; i++) {
          for (int j = 0; j < n - k - i; j++) {
            at.add(mix(p, (i + third) / n, (j + third) / n));
            out.add(mix(normal, (i + third) / n, (j + third) / n).unit());
          }
        }
      }
    }
  }

  private static Vec3 mix(Vec3[] of, double u, double v) {
    return of[0].times(1 - u - v).plus(of[1].times(u)).plus(of[2].times(v));
  }

  /** Outward, as long as their triangle's area, m2. */
  private static Vec3[] facets(TriangleMesh mesh) {
    Vec3[] all = new Vec3[mesh.triangleCount()];
    for (int t = 0; t < all.length; t++) {
      Vec3 a = mesh.vertex(mesh.corner(t, 0));
      Vec3 b = mesh.vertex(mesh.corner(t, 1)).minus(a);
      all[t] = b.cross(mesh.vertex(mesh.corner(t, 2)).minus(a)).times(0.5);
    }
    return all;
  }

  private static List<List<Integer>> round(TriangleMesh mesh) {
    List<List<Integer>> all = new ArrayList<>();
    for (int v = 0; v < mesh.vertexCount(); v++) {
      all.add(new ArrayList<>());
    }
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        all.get(mesh.corner(t, c)).add(t);
      }
    }
    return all;
  }

  /** Mean normal at a vertex over facets that bend gently: a rounded surface, not an edge. */
  private static Vec3 smooth(Vec3[] facets, List<Integer> round, Vec3 own) {
    Vec3 sum = own.times(1e-12);
    for (int t : round) {
      double length = facets[t].length();
      if (length > 0 && facets[t].dot(own) > GENTLE * length) {
        sum = sum.plus(facets[t]);
      }
    }
    return sum.unit();
  }

  private static double radius(List<Vec3> at, int i, Vec3 outward, double most) {
    Vec3 p = at.get(i);
    double least = most;
    for (int k = 0; k < at.size(); k++) {
      Vec3 way = at.get(k).minus(p);
      double inward = -way.dot(outward);
      double square = way.dot(way);
      if (k != i && inward > 0 && inward * inward >= ACROSS * ACROSS * square) {
        least = Math.min(least, square / (2 * inward));
      }
    }
    return least;
  }
}

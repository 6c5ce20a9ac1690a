// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.Optional;

/** The open end of a sprue that is part of the mesh: a flat face, marked by a point or proposed. */
final class MouthFinder {
  private MouthFinder() {}

  /**
   * @param marked a point on the open end's flat face; absent: the largest flat face that lies on a
   *     side of the mesh's box
   * @throws VoxelException if there is no such face
   */
  static Mouth find(TriangleMesh mesh, Optional<Vec3> marked) {
    return marked.isPresent() ? at(mesh, marked.get()) : proposed(mesh);
  }

  private static Mouth at(TriangleMesh mesh, Vec3 p) {
    double least = Double.POSITIVE_INFINITY;
    int best = -1;
    org.joml.Vector3d q = new org.joml.Vector3d();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec3 a = mesh.vertex(mesh.corner(t, 0));
      Vec3 b = mesh.vertex(mesh.corner(t, 1));
      Vec3 c = mesh.vertex(mesh.corner(t, 2));
      org.joml.Intersectiond.findClosestPointOnTriangle(
          a.x(), a.y(), a.z(), b.x(), b.y(), b.z(), c.x(), c.y(), c.z(), p.x(), p.y(), p.z(), q);
      double d = q.distance(p.x(), p.y(), p.z());
      if (d < least && normal(mesh, t).length() > 0) {
        least = d;
        best = t;
      }
    }
    if (best < 0 || least > 2e-3) {
      throw new VoxelException(
          "feed.mouth",
          "the pour opening stated at " + FeedShapes.mm(p) + " is not on the mesh's surface");
    }
    return face(mesh, normal(mesh, best).unit(), mesh.vertex(mesh.corner(best, 0)));
  }

  private static Mouth proposed(TriangleMesh mesh) {
    Box box = mesh.box();
    Mouth best = null;
    double most = 0;
    for (int side = 0; side < 6; side++) {
      double sign = side % 2 == 0 ? -1 : 1;
      Vec3 n =
          new Vec3(side / 2 == 0 ? sign : 0, side / 2 == 1 ? sign : 0, side / 2 == 2 ? sign : 0);
      Vec3 corner = side % 2 == 0 ? box.min() : box.max();
      double area = area(mesh, n, corner);
      if (area > most) {
        most = area;
        best = face(mesh, n, corner);
      }
    }
    if (best == null || most < 1e-6) {
      throw new VoxelException(
          "feed",
          "no flat pour opening was found on any side of the mesh; state the mouth's place");
    }
    return best;
  }

  private static Vec3 normal(TriangleMesh m, int t) {
    Vec3 a = m.vertex(m.corner(t, 0));
    return m.vertex(m.corner(t, 1)).minus(a).cross(m.vertex(m.corner(t, 2)).minus(a));
  }

  private static boolean inPlane(TriangleMesh m, int t, Vec3 n, Vec3 p) {
    for (int c = 0; c < 3; c++) {
      if (Math.abs(m.vertex(m.corner(t, c)).minus(p).dot(n)) > 1e-5) {
        return false;
      }
    }
    return normal(m, t).dot(n) > 0;
  }

  private static double area(TriangleMesh m, Vec3 n, Vec3 p) {
    double sum = 0;
    for (int t = 0; t < m.triangleCount(); t++) {
      sum += inPlane(m, t, n, p) ? 0.5 * normal(m, t).length() : 0;
    }
    return sum;
  }

  /** The face's centre of area, and the distance of its farthest corner from there. */
  private static Mouth face(TriangleMesh m, Vec3 n, Vec3 p) {
    Vec3 sum = Vec3.ZERO;
    double area = 0;
    for (int t = 0; t < m.triangleCount(); t++) {
      if (inPlane(m, t, n, p)) {
        double a = 0.5 * normal(m, t).length();
        for (int c = 0; c < 3; c++) {
          sum = sum.plus(m.vertex(m.corner(t, c)).times(a / 3));
        }
        area += a;
      }
    }
    if (!(area > 0)) {
      throw new VoxelException(
          "feed.mouth", "the pour opening at " + FeedShapes.mm(p) + " is not a flat face");
    }
    Vec3 centre = sum.times(1 / area);
    double radius = 0;
    for (int t = 0; t < m.triangleCount(); t++) {
      for (int c = 0; c < 3 && inPlane(m, t, n, p); c++) {
        radius = Math.max(radius, m.vertex(m.corner(t, c)).distance(centre));
      }
    }
    return new Mouth(centre, n, radius);
  }
}

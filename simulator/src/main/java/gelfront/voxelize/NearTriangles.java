// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.joml.Intersectiond;
import org.joml.Vector3d;

/** Triangles round a place, to measure how far points near it are from them. */
final class NearTriangles {
  /** Nine numbers a triangle, metres. */
  private final double[] corners;

  /** Lower and upper ends along x, y and z: six numbers a triangle. */
  private final double[] boxes;

  private final Vector3d closest = new Vector3d();

  /**
   * @param reach metres along each axis within which triangles count
   */
  NearTriangles(Vec3 at, double reach, List<Labelled> solids) {
    corners =
        solids.stream()
            .map(Labelled::mesh)
            .flatMapToDouble(
                m ->
                    IntStream.range(0, m.triangleCount())
                        .filter(t -> touches(m, t, at, reach))
                        .boxed()
                        .flatMapToDouble(t -> corners(m, t)))
            .toArray();
    boxes = new double[corners.length / 9 * 6];
    for (int i = 0; i < boxes.length; i += 2) {
      int c = i / 6 * 9 + i % 6 / 2;
      boxes[i] = Math.min(corners[c], Math.min(corners[c + 3], corners[c + 6]));
      boxes[i + 1] = Math.max(corners[c], Math.max(corners[c + 3], corners[c + 6]));
    }
  }

  private static boolean touches(TriangleMesh m, int t, Vec3 at, double reach) {
    for (int a = 0; a < 3; a++) {
      double c = a == 0 ? at.x() : a == 1 ? at.y() : at.z();
      double lo = Double.POSITIVE_INFINITY;
      double hi = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < 3; k++) {
        double v = m.coordinate(m.corner(t, k), a);
        lo = Math.min(lo, v);
        hi = Math.max(hi, v);
      }
      if (lo > c + reach || hi < c - reach) {
        return false;
      }
    }
    return true;
  }

  private static DoubleStream corners(TriangleMesh m, int t) {
    return IntStream.range(0, 9).mapToDouble(i -> m.coordinate(m.corner(t, i / 3), i % 3));
  }

  /**
   * Metres from a point to the nearest of them.
   *
   * @param farthest that is told, where all are farther
   */
  double distance(Vec3 p, double farthest) {
    double least = farthest;
    for (int t = 0; 6 * t < boxes.length; t++) {
      if (meets(6 * t, p, least)) {
        least = Math.min(least, distance(9 * t, p));
      }
    }
    return least;
  }

  /** Whether a box of half the edge {@code by} round a point meets a triangle's. */
  private boolean meets(int b, Vec3 p, double by) {
    return p.x() + by > boxes[b]
        && p.x() - by < boxes[b + 1]
        && p.y() + by > boxes[b + 2]
        && p.y() - by < boxes[b + 3]
        && p.z() + by > boxes[b + 4]
        && p.z() - by < boxes[b + 5];
  }

  private double distance(int c, Vec3 p) {
    Intersectiond.findClosestPointOnTriangle(
        corners[c],
        corners[c + 1],
        corners[c + 2],
        corners[c + 3],
        corners[c + 4],
        corners[c + 5],
        corners[c + 6],
        corners[c + 7],
        corners[c + 8],
        p.x(),
        p.y(),
        p.z(),
        closest);
    return closest.distance(p.x(), p.y(), p.z());
  }
}

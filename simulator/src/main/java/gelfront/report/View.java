// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;

/**
 * A camera without perspective.
 *
 * @param centre the place in the middle of the picture, metres
 * @param right unit vector towards the picture's right
 * @param up unit vector towards its top
 * @param toward unit vector towards the viewer
 * @param scale pixels a metre
 * @param width pixels
 * @param height pixels
 */
record View(Vec3 centre, Vec3 right, Vec3 up, Vec3 toward, double scale, int width, int height) {

  /**
   * Looks so that {@code axes.along} runs to the right and {@code axes.through} to the viewer, then
   * turns.
   *
   * @param yaw radians that the viewer walks to the right round the part
   * @param pitch radians that the viewer rises
   */
  static View turned(Axes axes, double yaw, double pitch) {
    Vec3 level = axes.through().times(Math.cos(yaw)).plus(axes.along().times(Math.sin(yaw)));
    Vec3 right = axes.along().times(Math.cos(yaw)).minus(axes.through().times(Math.sin(yaw)));
    Vec3 toward = level.times(Math.cos(pitch)).plus(axes.up().times(Math.sin(pitch)));
    return new View(Vec3.ZERO, right, toward.cross(right), toward, 1, 1, 1);
  }

  /**
   * The same direction, moved and scaled so that all vertices are in the picture.
   *
   * @param width pixels
   * @param mostHeight pixels without {@code extra}; less where the mesh is flat
   * @param margin pixels left free on every side
   * @param extra pixels left free above and below besides
   */
  View fitted(TriangleMesh mesh, int width, int mostHeight, int margin, int extra) {
    double[] lo = {1e9, 1e9, 1e9};
    double[] hi = {-1e9, -1e9, -1e9};
    for (int v = 0; v < mesh.vertexCount(); v++) {
      Vec3 p = mesh.vertex(v);
      double[] q = {p.dot(right), p.dot(up), p.dot(toward)};
      for (int a = 0; a < 3; a++) {
        lo[a] = Math.min(lo[a], q[a]);
        hi[a] = Math.max(hi[a], q[a]);
      }
    }
    double w = hi[0] - lo[0];
    double h = hi[1] - lo[1];
    double s = Math.min((width - 2 * margin) / w, (mostHeight - 2 * margin) / h);
    Vec3 middle =
        right
            .times((lo[0] + hi[0]) / 2)
            .plus(up.times((lo[1] + hi[1]) / 2))
            .plus(toward.times((lo[2] + hi[2]) / 2));
    int height = (int) Math.ceil(h * s) + 2 * (margin + extra);
    return new View(middle, right, up, toward, s, width, height);
  }

  /**
   * The same direction, moved and scaled so that a ball is in the picture.
   *
   * @param radius metres
   */
  View round(Vec3 middle, double radius, int width, int height) {
    double s = Math.min(width, height) / (2 * radius);
    return new View(middle, right, up, toward, s, width, height);
  }

  double x(Vec3 p) {
    return width / 2.0 + scale * p.minus(centre).dot(right);
  }

  double y(Vec3 p) {
    return height / 2.0 - scale * p.minus(centre).dot(up);
  }

  /** Metres towards the viewer. */
  double depth(Vec3 p) {
    return p.minus(centre).dot(toward);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;

/** Where a straight line meets a mesh (Möller and Trumbore, J. Graphics Tools 2 (1997) 21). */
final class RayCast {
  private RayCast() {}

  /**
   * @param d direction, length one
   * @return for each hit the distance from {@code at} along {@code d}, metres, negative behind it,
   *     and the normal's component along {@code d}: positive where the line leaves
   */
  static List<double[]> along(TriangleMesh mesh, Vec3 at, Vec3 d) {
    List<double[]> hits = new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec3 a = mesh.vertex(mesh.corner(t, 0));
      Vec3 e1 = mesh.vertex(mesh.corner(t, 1)).minus(a);
      Vec3 e2 = mesh.vertex(mesh.corner(t, 2)).minus(a);
      Vec3 p = d.cross(e2);
      double det = e1.dot(p);
      if (det == 0) {
        continue;
      }
      Vec3 s = at.minus(a);
      double u = s.dot(p) / det;
      Vec3 q = s.cross(e1);
      double v = d.dot(q) / det;
      if (u >= 0 && v >= 0 && u + v <= 1) {
        hits.add(new double[] {e2.dot(q) / det, e1.cross(e2).unit().dot(d)});
      }
    }
    return hits;
  }
}

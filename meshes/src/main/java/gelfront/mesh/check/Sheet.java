// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.function.ToDoubleFunction;

/** Tells surfaces without thickness, such as a face that was exported in place of its solid. */
final class Sheet {
  /** Of the extent, how far corners may lie off one plane: rounding to single precision. */
  private static final double FLAT = 1e-6;

  /** Of what is drawn, how much is missing where a whole side is: a ball's half lacks 0.5. */
  private static final double SIDE = 0.4;

  private Sheet() {}

  /** Whether all corners lie in one plane, taken through three of them that are far apart. */
  static boolean flat(TriangleMesh mesh) {
    Vec3 a = mesh.vertex(0);
    Vec3 along = farthest(mesh, p -> p.distance(a)).minus(a);
    Vec3 across = farthest(mesh, p -> along.cross(p.minus(a)).length()).minus(a);
    Vec3 normal = along.cross(across);
    ToDoubleFunction<Vec3> off = p -> Math.abs(normal.dot(p.minus(a)));
    return off.applyAsDouble(farthest(mesh, off)) <= FLAT * along.length() * normal.length();
  }

  private static Vec3 farthest(TriangleMesh mesh, ToDoubleFunction<Vec3> from) {
    Vec3 best = mesh.vertex(0);
    double most = from.applyAsDouble(best);
    for (int v = 1; v < mesh.vertexCount(); v++) {
      double far = from.applyAsDouble(mesh.vertex(v));
      if (far > most) {
        most = far;
        best = mesh.vertex(v);
      }
    }
    return best;
  }

  /**
   * Whether this is one shell that lacks a whole side. Areas as vectors sum to zero over what is
   * closed, so what closes a shell is no smaller than the sum over its own triangles.
   */
  static boolean skin(TriangleMesh mesh, Shells shells) {
    if (shells.count() != 1 || shells.closed(0) || shells.twisted(0)) {
      return false;
    }
    Vec3 sum = Vec3.ZERO;
    double drawn = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec3 a = mesh.vertex(mesh.corner(t, 0));
      Vec3 b = mesh.vertex(mesh.corner(t, 1));
      Vec3 twice = b.minus(a).cross(mesh.vertex(mesh.corner(t, 2)).minus(a));
      sum = shells.flip(t) ? sum.minus(twice) : sum.plus(twice);
      drawn += twice.length();
    }
    return sum.length() > SIDE * drawn;
  }
}

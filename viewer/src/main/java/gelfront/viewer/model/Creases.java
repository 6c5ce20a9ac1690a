// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Edges that a drawing of a body would have: where its faces bend. */
final class Creases {
  /** Cosine of the least bend: 25 degrees, which facets of fine roundings stay below. */
  private static final double BEND = Math.cos(Math.toRadians(25));

  private Creases() {}

  /**
   * @param mesh metres, closed
   * @return x, y, z of both ends of each edge, mm; 6 an edge
   */
  static float[] of(TriangleMesh mesh) {
    Map<Long, Vec3> facing = new HashMap<>();
    List<Integer> ends = new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec3 normal = normal(mesh, t);
      for (int c = 0; c < 3; c++) {
        int a = mesh.corner(t, c);
        int b = mesh.corner(t, (c + 1) % 3);
        Vec3 other = facing.remove(key(mesh, b, a));
        if (other == null) {
          facing.put(key(mesh, a, b), normal);
        } else if (other.dot(normal) < BEND) {
          ends.add(a);
          ends.add(b);
        }
      }
    }
    return lines(mesh, ends);
  }

  private static long key(TriangleMesh mesh, int from, int to) {
    return (long) from * mesh.vertexCount() + to;
  }

  private static Vec3 normal(TriangleMesh mesh, int t) {
    Vec3 a = mesh.vertex(mesh.corner(t, 0));
    Vec3 n = mesh.vertex(mesh.corner(t, 1)).minus(a).cross(mesh.vertex(mesh.corner(t, 2)).minus(a));
    double length = n.length();
    return length > 0 ? n.times(1 / length) : n;
  }

  private static float[] lines(TriangleMesh mesh, List<Integer> ends) {
    float[] out = new float[3 * ends.size()];
    for (int i = 0; i < out.length; i++) {
      out[i] = (float) (1e3 * mesh.coordinate(ends.get(i / 3), i % 3));
    }
    return out;
  }
}

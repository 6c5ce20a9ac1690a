// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Thins a mesh for showing: vertices that share a cube become their mean, triangles that collapse
 * go. What was closed stays closed (edges still meet in pairs), which the cut pictures need.
 */
final class Decimate {
  private Decimate() {}

  /** The mesh itself if it has at most {@code most} triangles, else one that has. */
  static TriangleMesh atMost(TriangleMesh mesh, int most) {
    TriangleMesh thin = mesh;
    // A surface of area A in cubes of edge h keeps about 2 A / h^2 triangles.
    double h = Math.sqrt(1.5 * mesh.area() / most);
    while (thin.triangleCount() > most) {
      thin = cluster(mesh, h);
      h *= 1.15;
    }
    return thin;
  }

  private static TriangleMesh cluster(TriangleMesh mesh, double h) {
    Box box = mesh.box();
    Map<Long, Integer> cubes = new HashMap<>();
    int[] to = new int[mesh.vertexCount()];
    double[] sum = new double[3 * mesh.vertexCount()];
    int[] members = new int[mesh.vertexCount()];
    for (int v = 0; v < to.length; v++) {
      Vec3 p = mesh.vertex(v).minus(box.min()).times(1 / h);
      long cube = ((long) p.x() << 42) | ((long) p.y() << 21) | (long) p.z();
      int next = cubes.size();
      to[v] = cubes.computeIfAbsent(cube, k -> next);
      members[to[v]]++;
      for (int a = 0; a < 3; a++) {
        sum[3 * to[v] + a] += mesh.coordinate(v, a);
      }
    }
    double[] vertices = Arrays.copyOf(sum, 3 * cubes.size());
    for (int i = 0; i < vertices.length; i++) {
      vertices[i] /= members[i / 3];
    }
    return new TriangleMesh(vertices, corners(mesh, to));
  }

  private static int[] corners(TriangleMesh mesh, int[] to) {
    int[] corners = new int[3 * mesh.triangleCount()];
    int n = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int a = to[mesh.corner(t, 0)];
      int b = to[mesh.corner(t, 1)];
      int c = to[mesh.corner(t, 2)];
      if (a != b && b != c && c != a) {
        corners[n++] = a;
        corners[n++] = b;
        corners[n++] = c;
      }
    }
    return Arrays.copyOf(corners, n);
  }
}

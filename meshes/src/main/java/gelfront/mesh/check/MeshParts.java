// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import gelfront.mesh.TriangleMesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The bodies of a mesh one by one. */
public final class MeshParts {
  private MeshParts() {}

  /** Its shells, in the order of their first triangles; a single one as it is. */
  public static List<TriangleMesh> of(TriangleMesh mesh) {
    Shells shells = new Shells(mesh, new EdgeTable(mesh));
    if (shells.count() == 1) {
      return List.of(mesh);
    }
    List<TriangleMesh> parts = new ArrayList<>();
    for (int s = 0; s < shells.count(); s++) {
      parts.add(part(mesh, shells, s));
    }
    return parts;
  }

  private static TriangleMesh part(TriangleMesh mesh, Shells shells, int shell) {
    int[] number = new int[mesh.vertexCount()];
    Arrays.fill(number, -1);
    double[] vertices = new double[3 * mesh.vertexCount()];
    int[] corners = new int[3 * mesh.triangleCount()];
    int known = 0;
    int n = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3 && shells.of(t) == shell; c++) {
        int v = mesh.corner(t, c);
        if (number[v] < 0) {
          number[v] = known;
          for (int axis = 0; axis < 3; axis++) {
            vertices[3 * known + axis] = mesh.coordinate(v, axis);
          }
          known++;
        }
        corners[n++] = number[v];
      }
    }
    return new TriangleMesh(Arrays.copyOf(vertices, 3 * known), Arrays.copyOf(corners, n));
  }
}

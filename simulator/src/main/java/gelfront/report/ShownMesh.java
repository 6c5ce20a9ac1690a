// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;

/** A mesh with what shading needs: a normal a face, and a mean normal a vertex. */
final class ShownMesh {
  private final TriangleMesh mesh;
  private final Vec3[] faces;
  private final Vec3[] vertices;

  ShownMesh(TriangleMesh mesh) {
    this.mesh = mesh;
    this.faces = new Vec3[mesh.triangleCount()];
    this.vertices = new Vec3[mesh.vertexCount()];
    double[] sum = new double[3 * vertices.length];
    for (int t = 0; t < faces.length; t++) {
      Vec3 a = mesh.vertex(mesh.corner(t, 0));
      Vec3 n =
          mesh.vertex(mesh.corner(t, 1)).minus(a).cross(mesh.vertex(mesh.corner(t, 2)).minus(a));
      for (int c = 0; c < 3; c++) {
        int v = 3 * mesh.corner(t, c);
        sum[v] += n.x();
        sum[v + 1] += n.y();
        sum[v + 2] += n.z();
      }
      faces[t] = unitOrZero(n);
    }
    for (int v = 0; v < vertices.length; v++) {
      vertices[v] = unitOrZero(new Vec3(sum[3 * v], sum[3 * v + 1], sum[3 * v + 2]));
    }
  }

  private static Vec3 unitOrZero(Vec3 n) {
    double l = n.length();
    return l > 0 ? n.times(1 / l) : Vec3.ZERO;
  }

  TriangleMesh mesh() {
    return mesh;
  }

  /** Unit normal of a triangle, outwards; zero if it has no area. */
  Vec3 faceNormal(int t) {
    return faces[t];
  }

  /** The corners' mean normals, blended at a place in the triangle; unit length, or zero. */
  Vec3 smoothNormal(int t, Vec3 p) {
    int a = mesh.corner(t, 0);
    int b = mesh.corner(t, 1);
    int c = mesh.corner(t, 2);
    Vec3 n = faces[t];
    double wa = share(n, p, mesh.vertex(b), mesh.vertex(c));
    double wb = share(n, p, mesh.vertex(c), mesh.vertex(a));
    double wc = share(n, p, mesh.vertex(a), mesh.vertex(b));
    return unitOrZero(
        vertices[a].times(wa).plus(vertices[b].times(wb)).plus(vertices[c].times(wc)));
  }

  private static double share(Vec3 n, Vec3 p, Vec3 q, Vec3 r) {
    return Math.max(0, q.minus(p).cross(r.minus(p)).dot(n));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.shape;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Splits long edges in their middle, so that values on vertices can show what lies between. The
 * surface stays the same, and closed if it was; vertices keep their numbers, new ones follow.
 */
public final class Refine {
  private Refine() {}

  /**
   * @param longest metres that an edge may have
   * @param mostTriangles at which it stops, to a factor of four
   */
  public static TriangleMesh to(TriangleMesh mesh, double longest, int mostTriangles) {
    TriangleMesh now = mesh;
    while (now.triangleCount() < mostTriangles) {
      TriangleMesh next = new Pass(now, longest).split();
      if (next.triangleCount() == now.triangleCount()) {
        return now;
      }
      now = next;
    }
    return now;
  }

  /** Every edge that is too long is halved once. */
  private static final class Pass {
    private final TriangleMesh mesh;
    private final double longest;
    private final Map<Long, Integer> middles = new HashMap<>();
    private final List<Vec3> added = new ArrayList<>();
    private final List<int[]> triangles = new ArrayList<>();

    Pass(TriangleMesh mesh, double longest) {
      this.mesh = mesh;
      this.longest = longest;
    }

    TriangleMesh split() {
      for (int t = 0; t < mesh.triangleCount(); t++) {
        triangle(mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2));
      }
      double[] vertices = java.util.Arrays.copyOf(mesh.copyVertices(), 3 * count());
      for (int i = 0; i < added.size(); i++) {
        int at = 3 * (mesh.vertexCount() + i);
        vertices[at] = added.get(i).x();
        vertices[at + 1] = added.get(i).y();
        vertices[at + 2] = added.get(i).z();
      }
      return new TriangleMesh(
          vertices, triangles.stream().flatMapToInt(java.util.Arrays::stream).toArray());
    }

    private int count() {
      return mesh.vertexCount() + added.size();
    }

    /** Turned so that its first edge is halved, or else none is. */
    private void triangle(int a, int b, int c) {
      int ab = middle(a, b);
      int bc = middle(b, c);
      int ca = middle(c, a);
      if (ab >= 0) {
        halved(a, b, c, ab, bc, ca);
      } else if (bc >= 0) {
        halved(b, c, a, bc, ca, ab);
      } else if (ca >= 0) {
        halved(c, a, b, ca, ab, bc);
      } else {
        triangles.add(new int[] {a, b, c});
      }
    }

    private void halved(int a, int b, int c, int ab, int bc, int ca) {
      if (bc >= 0 && ca >= 0) {
        triangles.add(new int[] {a, ab, ca, ab, b, bc, ca, bc, c, ab, bc, ca});
      } else if (bc >= 0) {
        triangles.add(new int[] {a, ab, c, ab, b, bc, ab, bc, c});
      } else if (ca >= 0) {
        triangles.add(new int[] {a, ab, ca, ab, b, c, ab, c, ca});
      } else {
        triangles.add(new int[] {a, ab, c, ab, b, c});
      }
    }

    /** Number of the vertex half way; -1 where the edge is short enough. */
    private int middle(int a, int b) {
      Vec3 p = mesh.vertex(a);
      Vec3 q = mesh.vertex(b);
      if (p.distance(q) <= longest) {
        return -1;
      }
      long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
      return middles.computeIfAbsent(
          key,
          k -> {
            added.add(p.plus(q).times(0.5));
            return count() - 1;
          });
    }
  }
}

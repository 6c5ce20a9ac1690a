// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.shape;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.Arrays;

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

    /** Edges that are halved, in rising order: see {@link #edge}. */
    private final long[] tooLong;

    /** Of the triangles made so far; each one makes four at most. */
    private final int[] corners;

    private int filled;

    Pass(TriangleMesh mesh, double longest) {
      this.mesh = mesh;
      this.longest = longest;
      corners = new int[12 * mesh.triangleCount()];
      tooLong = longEdges();
    }

    private long[] longEdges() {
      long[] all = new long[3 * mesh.triangleCount()];
      int n = 0;
      for (int t = 0; t < mesh.triangleCount(); t++) {
        for (int c = 0; c < 3; c++) {
          int a = mesh.corner(t, c);
          int b = mesh.corner(t, (c + 1) % 3);
          if (isLong(a, b)) {
            all[n++] = edge(a, b);
          }
        }
      }
      Arrays.sort(all, 0, n);
      int different = 0;
      for (int i = 0; i < n; i++) {
        if (i == 0 || all[i] != all[i - 1]) {
          all[different++] = all[i];
        }
      }
      return Arrays.copyOf(all, different);
    }

    TriangleMesh split() {
      for (int t = 0; t < mesh.triangleCount(); t++) {
        triangle(mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2));
      }
      double[] vertices =
          Arrays.copyOf(mesh.copyVertices(), 3 * (mesh.vertexCount() + tooLong.length));
      for (int i = 0; i < tooLong.length; i++) {
        Vec3 middle =
            mesh.vertex((int) (tooLong[i] >> 32)).plus(mesh.vertex((int) tooLong[i])).times(0.5);
        int at = 3 * (mesh.vertexCount() + i);
        vertices[at] = middle.x();
        vertices[at + 1] = middle.y();
        vertices[at + 2] = middle.z();
      }
      return new TriangleMesh(vertices, Arrays.copyOf(corners, filled));
    }

    private void add(int... triangles) {
      System.arraycopy(triangles, 0, corners, filled, triangles.length);
      filled += triangles.length;
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
        add(a, b, c);
      }
    }

    private void halved(int a, int b, int c, int ab, int bc, int ca) {
      if (bc >= 0 && ca >= 0) {
        add(a, ab, ca, ab, b, bc, ca, bc, c, ab, bc, ca);
      } else if (bc >= 0) {
        add(a, ab, c, ab, b, bc, ab, bc, c);
      } else if (ca >= 0) {
        add(a, ab, ca, ab, b, c, ab, c, ca);
      } else {
        add(a, ab, c, ab, b, c);
      }
    }

    /** Number of the vertex half way; -1 where the edge is short enough. */
    private int middle(int a, int b) {
      if (!isLong(a, b)) {
        return -1;
      }
      return mesh.vertexCount() + Arrays.binarySearch(tooLong, edge(a, b));
    }

    private boolean isLong(int a, int b) {
      return mesh.vertex(a).distance(mesh.vertex(b)) > longest;
    }

    /** Both its ends, the lower number first. */
    private static long edge(int a, int b) {
      return (long) Math.min(a, b) << 32 | Math.max(a, b);
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import gelfront.mesh.TriangleMesh;

/** Which triangles have the same three corners, in any order. */
final class Repeats {
  private final int[] first;
  private final int[] uses;

  Repeats(TriangleMesh mesh) {
    int n = mesh.triangleCount();
    first = new int[n];
    uses = new int[n];
    int[] order = new int[n];
    for (int t = 0; t < n; t++) {
      order[t] = t;
    }
    for (int rank = 0; rank < 3; rank++) {
      order = sorted(mesh, order, rank);
    }
    int head = -1;
    for (int t : order) {
      head = head >= 0 && same(mesh, head, t) ? head : t;
      first[t] = head;
      uses[head]++;
    }
  }

  /** Triangles in rising order of one of their corners, ties in the order given. */
  private static int[] sorted(TriangleMesh mesh, int[] order, int rank) {
    int[] next = new int[mesh.vertexCount() + 1];
    for (int t : order) {
      next[corner(mesh, t, rank) + 1]++;
    }
    for (int v = 0; v < mesh.vertexCount(); v++) {
      next[v + 1] += next[v];
    }
    int[] out = new int[order.length];
    for (int t : order) {
      out[next[corner(mesh, t, rank)]++] = t;
    }
    return out;
  }

  private static boolean same(TriangleMesh mesh, int t, int u) {
    for (int rank = 0; rank < 3; rank++) {
      if (corner(mesh, t, rank) != corner(mesh, u, rank)) {
        return false;
      }
    }
    return true;
  }

  /** The highest (0), middle (1) or lowest (2) vertex number. */
  private static int corner(TriangleMesh mesh, int t, int rank) {
    int a = mesh.corner(t, 0);
    int b = mesh.corner(t, 1);
    int c = mesh.corner(t, 2);
    int high = Math.max(a, Math.max(b, c));
    int low = Math.min(a, Math.min(b, c));
    return rank == 0 ? high : rank == 2 ? low : a - high + b - low + c;
  }

  /** Whether an earlier triangle has the same corners. */
  boolean repeats(int t) {
    return first[t] != t;
  }

  /** How many triangles have these corners. */
  int uses(int t) {
    return uses[first[t]];
  }

  /** Triangles that repeat another. */
  int count() {
    int n = 0;
    for (int t = 0; t < first.length; t++) {
      n += repeats(t) ? 1 : 0;
    }
    return n;
  }
}

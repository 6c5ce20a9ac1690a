// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayDeque;
import java.util.Arrays;

/**
 * Connected pieces of a mesh and how their triangles must be flipped to face alike. Pieces hold
 * together over edges with exactly two triangles; where more meet, pieces only touch.
 */
final class Shells {
  private final TriangleMesh mesh;
  private final EdgeTable edges;
  private final int[] shell;
  private final boolean[] flip;
  private int count;
  private final boolean[] closed;
  private final boolean[] shuffled;
  private final boolean[] twisted;

  Shells(TriangleMesh mesh, EdgeTable edges) {
    this.mesh = mesh;
    this.edges = edges;
    shell = new int[mesh.triangleCount()];
    flip = new boolean[mesh.triangleCount()];
    Arrays.fill(shell, -1);
    boolean[] isClosed = new boolean[mesh.triangleCount()];
    boolean[] isShuffled = new boolean[mesh.triangleCount()];
    boolean[] isTwisted = new boolean[mesh.triangleCount()];
    for (int t = 0; t < shell.length; t++) {
      if (shell[t] < 0) {
        isClosed[count] = true;
        flood(t, isClosed, isShuffled, isTwisted);
        count++;
      }
    }
    closed = Arrays.copyOf(isClosed, count);
    shuffled = Arrays.copyOf(isShuffled, count);
    twisted = Arrays.copyOf(isTwisted, count);
  }

  private void flood(int seed, boolean[] isClosed, boolean[] isShuffled, boolean[] isTwisted) {
    ArrayDeque<Integer> queue = new ArrayDeque<>();
    shell[seed] = count;
    queue.add(seed);
    while (!queue.isEmpty()) {
      int t = queue.remove();
      for (int h = 3 * t; h < 3 * t + 3; h++) {
        isClosed[count] &= edges.uses(h) % 2 == 0;
        if (edges.uses(h) != 2) {
          continue;
        }
        int g = edges.other(h);
        boolean against = edges.from(g) == edges.from(h);
        boolean wanted = flip[t] ^ against;
        isShuffled[count] |= against;
        if (shell[g / 3] < 0) {
          shell[g / 3] = count;
          flip[g / 3] = wanted;
          queue.add(g / 3);
        } else {
          isTwisted[count] |= flip[g / 3] != wanted;
        }
      }
    }
  }

  int count() {
    return count;
  }

  /** Shell of a triangle. */
  int of(int t) {
    return shell[t];
  }

  /** Whether a triangle must be flipped to face like the first of its shell. */
  boolean flip(int t) {
    return flip[t];
  }

  boolean closed(int s) {
    return closed[s];
  }

  boolean shuffled(int s) {
    return shuffled[s];
  }

  /** One-sided: no flipping makes it face alike. */
  boolean twisted(int s) {
    return twisted[s];
  }

  /**
   * Signed volumes by shell, m3, taken about the mesh's centre so that far-off parts keep digits.
   *
   * @param flipped with triangles turned to face like the first of their shell
   */
  double[] volumes(boolean flipped) {
    double[] v = new double[count];
    Vec3 o = mesh.box().centre();
    for (int t = 0; t < shell.length; t++) {
      double six =
          mesh.vertex(mesh.corner(t, 0))
              .minus(o)
              .dot(
                  mesh.vertex(mesh.corner(t, 1))
                      .minus(o)
                      .cross(mesh.vertex(mesh.corner(t, 2)).minus(o)));
      v[shell[t]] += (flipped && flip[t] ? -six : six) / 6;
    }
    return v;
  }
}

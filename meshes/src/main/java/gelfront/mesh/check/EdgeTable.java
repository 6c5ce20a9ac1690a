package gelfront.mesh.check;

import gelfront.mesh.TriangleMesh;

/**
 * Which triangles meet at which edge. Half-edge h = 3 t + c runs from corner c of triangle t to its
 * next corner; the half-edges of one undirected edge form a ring.
 */
final class EdgeTable {
  private final TriangleMesh mesh;
  private final int[] ring;
  private final int[] uses;

  EdgeTable(TriangleMesh mesh) {
    this.mesh = mesh;
    int n = 3 * mesh.triangleCount();
    ring = new int[n];
    uses = new int[n];
    int[] start = new int[mesh.vertexCount() + 1];
    for (int h = 0; h < n; h++) {
      start[Math.min(from(h), to(h)) + 1]++;
    }
    for (int v = 0; v < mesh.vertexCount(); v++) {
      start[v + 1] += start[v];
    }
    int[] bucket = new int[n];
    int[] next = start.clone();
    for (int h = 0; h < n; h++) {
      bucket[next[Math.min(from(h), to(h))]++] = h;
    }
    for (int v = 0; v < mesh.vertexCount(); v++) {
      link(bucket, start[v], start[v + 1]);
    }
  }

  /** Rings the half-edges of one bucket that share their other end, too. */
  private void link(int[] bucket, int from, int to) {
    for (int i = from; i < to; i++) {
      int h = bucket[i];
      if (uses[h] > 0) {
        continue;
      }
      int end = Math.max(from(h), to(h));
      int last = h;
      int count = 1;
      for (int j = i + 1; j < to; j++) {
        int g = bucket[j];
        if (uses[g] == 0 && Math.max(from(g), to(g)) == end) {
          ring[last] = g;
          last = g;
          count++;
          uses[g] = -1;
        }
      }
      ring[last] = h;
      for (int g = h, k = 0; k < count; k++, g = ring[g]) {
        uses[g] = count;
      }
    }
  }

  int from(int h) {
    return mesh.corner(h / 3, h % 3);
  }

  int to(int h) {
    return mesh.corner(h / 3, (h + 1) % 3);
  }

  int count() {
    return uses.length;
  }

  /** Number of triangles at this half-edge's edge. */
  int uses(int h) {
    return uses[h];
  }

  /** The next half-edge of the same edge; itself where it is alone. */
  int other(int h) {
    return ring[h];
  }
}

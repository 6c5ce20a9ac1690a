// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import java.util.Arrays;

/** Collects triangles as three points each and merges points with the same coordinates. */
final class MeshAssembler {
  /** Triangles of one file; ten times what a fine scan has. */
  static final int MOST = 20_000_000;

  private final double metres;
  private double[] vertices;
  private int vertexCount;
  private int[] corners;
  private int cornerCount;
  private int[] table;

  /**
   * @param metres length of the unit that points come in
   * @param triangles expected
   */
  MeshAssembler(double metres, int triangles) {
    this.metres = metres;
    if (triangles > MOST) {
      throw tooMany();
    }
    vertices = new double[Math.max(24, 3 * (triangles / 2 + 3))];
    corners = new int[Math.max(24, 3 * triangles)];
    table = new int[Integer.highestOneBit(Math.max(64, 2 * triangles)) * 2];
    Arrays.fill(table, -1);
  }

  private static MeshException tooMany() {
    return new MeshException("more than " + MOST / 1_000_000 + " million triangles: refused");
  }

  int triangleCount() {
    return cornerCount / 3;
  }

  /** Adds one corner, in the file's unit. */
  void corner(double x, double y, double z) {
    if (cornerCount == 3 * MOST) {
      throw tooMany();
    }
    if (!Double.isFinite(x * metres) || !Double.isFinite(y * metres + z * metres)) {
      throw new MeshException("a coordinate is too large to be one");
    }
    if (cornerCount == corners.length) {
      corners = Arrays.copyOf(corners, 2 * cornerCount);
    }
    corners[cornerCount++] = vertex(x * metres + 0.0, y * metres + 0.0, z * metres + 0.0);
  }

  private int vertex(double x, double y, double z) {
    int slot = slot(x, y, z);
    if (table[slot] >= 0) {
      return table[slot];
    }
    if (3 * vertexCount + 3 > vertices.length) {
      vertices = Arrays.copyOf(vertices, 2 * vertices.length);
    }
    vertices[3 * vertexCount] = x;
    vertices[3 * vertexCount + 1] = y;
    vertices[3 * vertexCount + 2] = z;
    table[slot] = vertexCount++;
    if (2 * vertexCount > table.length) {
      grow();
    }
    return vertexCount - 1;
  }

  private int slot(double x, double y, double z) {
    long h = Double.doubleToLongBits(x) * 0x9E3779B97F4A7C15L;
    h = (h ^ (h >>> 29) ^ Double.doubleToLongBits(y)) * 0xBF58476D1CE4E5B9L;
    h = (h ^ (h >>> 32) ^ Double.doubleToLongBits(z)) * 0x94D049BB133111EBL;
    int slot = (int) (h >>> 33) & (table.length - 1);
    while (table[slot] >= 0 && !same(table[slot], x, y, z)) {
      slot = (slot + 1) & (table.length - 1);
    }
    return slot;
  }

  private boolean same(int v, double x, double y, double z) {
    return vertices[3 * v] == x && vertices[3 * v + 1] == y && vertices[3 * v + 2] == z;
  }

  private void grow() {
    table = new int[2 * table.length];
    Arrays.fill(table, -1);
    for (int v = 0; v < vertexCount; v++) {
      table[slot(vertices[3 * v], vertices[3 * v + 1], vertices[3 * v + 2])] = v;
    }
  }

  /** Ends the collecting: what was only needed for merging is let go. */
  TriangleMesh mesh() {
    table = new int[0];
    return new TriangleMesh(
        Arrays.copyOf(vertices, 3 * vertexCount), Arrays.copyOf(corners, cornerCount));
  }
}

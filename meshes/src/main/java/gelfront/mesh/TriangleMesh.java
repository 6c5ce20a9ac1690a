// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh;

import java.util.Arrays;

/**
 * An immutable indexed triangle mesh. Vertices are (x, y, z) in metres; a triangle is three vertex
 * numbers, counter-clockwise seen from outside the solid. The mesh itself promises nothing about
 * being closed: {@code MeshCheck} finds out.
 */
public final class TriangleMesh {
  private final double[] vertices;
  private final int[] triangles;

  /**
   * Copies its input.
   *
   * @param vertices x, y, z of vertex 0, then of vertex 1, ...; metres; finite
   * @param triangles three vertex numbers a triangle
   * @throws IllegalArgumentException on a length that is no multiple of three, a number out of
   *     range or a coordinate that is not finite
   */
  public TriangleMesh(double[] vertices, int[] triangles) {
    if (vertices.length % 3 != 0 || triangles.length % 3 != 0) {
      throw new IllegalArgumentException("coordinates and corners come in threes");
    }
    for (double c : vertices) {
      if (!Double.isFinite(c)) {
        throw new IllegalArgumentException("a coordinate is not a finite number: " + c);
      }
    }
    for (int v : triangles) {
      if (v < 0 || v >= vertices.length / 3) {
        throw new IllegalArgumentException("no vertex number " + v);
      }
    }
    this.vertices = vertices.clone();
    this.triangles = triangles.clone();
  }

  public int vertexCount() {
    return vertices.length / 3;
  }

  public int triangleCount() {
    return triangles.length / 3;
  }

  /** Vertex number of corner {@code c} (0, 1, 2) of triangle {@code t}. */
  public int corner(int t, int c) {
    return triangles[3 * t + c];
  }

  /** Coordinate {@code axis} (0 x, 1 y, 2 z) of vertex {@code v}, metres. */
  public double coordinate(int v, int axis) {
    return vertices[3 * v + axis];
  }

  public Vec3 vertex(int v) {
    return new Vec3(vertices[3 * v], vertices[3 * v + 1], vertices[3 * v + 2]);
  }

  /** A copy of all coordinates, x y z by turns. */
  public double[] copyVertices() {
    return vertices.clone();
  }

  /** A copy of all corners, three vertex numbers a triangle. */
  public int[] copyTriangles() {
    return triangles.clone();
  }

  /**
   * The box round all vertices.
   *
   * @throws IllegalStateException if there is no vertex
   */
  public Box box() {
    if (vertices.length == 0) {
      throw new IllegalStateException("an empty mesh has no box");
    }
    double[] lo = Arrays.copyOf(vertices, 3);
    double[] hi = lo.clone();
    for (int i = 3; i < vertices.length; i++) {
      lo[i % 3] = Math.min(lo[i % 3], vertices[i]);
      hi[i % 3] = Math.max(hi[i % 3], vertices[i]);
    }
    return new Box(new Vec3(lo[0], lo[1], lo[2]), new Vec3(hi[0], hi[1], hi[2]));
  }

  /** Signed volume, m3 (divergence theorem): positive where faces look outwards. */
  public double volume() {
    double six = 0;
    for (int t = 0; t < triangleCount(); t++) {
      six += vertex(corner(t, 0)).dot(vertex(corner(t, 1)).cross(vertex(corner(t, 2))));
    }
    return six / 6;
  }

  /** Sum of the triangles' areas, m2. */
  public double area() {
    double two = 0;
    for (int t = 0; t < triangleCount(); t++) {
      Vec3 a = vertex(corner(t, 0));
      two += vertex(corner(t, 1)).minus(a).cross(vertex(corner(t, 2)).minus(a)).length();
    }
    return two / 2;
  }

  /** Both meshes as one, nothing welded or united. */
  public TriangleMesh plus(TriangleMesh o) {
    double[] v = Arrays.copyOf(vertices, vertices.length + o.vertices.length);
    System.arraycopy(o.vertices, 0, v, vertices.length, o.vertices.length);
    int[] t = Arrays.copyOf(triangles, triangles.length + o.triangles.length);
    for (int i = 0; i < o.triangles.length; i++) {
      t[triangles.length + i] = o.triangles[i] + vertexCount();
    }
    return new TriangleMesh(v, t);
  }
}

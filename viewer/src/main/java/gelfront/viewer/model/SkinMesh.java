// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;

/**
 * A mesh as a card draws it: three corners a triangle, each with its own normal, smooth where
 * neighbours bend little and sharp at edges.
 *
 * @param positions x, y, z a corner, mm; 9 a triangle
 * @param normals likewise, length one
 * @param vertex of the mesh, one a corner
 */
public record SkinMesh(float[] positions, float[] normals, int[] vertex) {
  /** Cosine of the bend from which on an edge is drawn sharp: 40 degrees. */
  private static final double SHARP = Math.cos(Math.toRadians(40));

  /**
   * @param mesh metres
   */
  public static SkinMesh of(TriangleMesh mesh) {
    int n = mesh.triangleCount();
    double[] facing = new double[3 * n];
    double[] area = new double[n];
    for (int t = 0; t < n; t++) {
      Vec3 a = mesh.vertex(mesh.corner(t, 0));
      Vec3 cross =
          mesh.vertex(mesh.corner(t, 1)).minus(a).cross(mesh.vertex(mesh.corner(t, 2)).minus(a));
      area[t] = cross.length();
      double s = area[t] > 0 ? 1 / area[t] : 0;
      facing[3 * t] = s * cross.x();
      facing[3 * t + 1] = s * cross.y();
      facing[3 * t + 2] = s * cross.z();
    }
    return corners(mesh, facing, area);
  }

  private static SkinMesh corners(TriangleMesh mesh, double[] facing, double[] area) {
    int n = mesh.triangleCount();
    int[] start = new int[mesh.vertexCount() + 1];
    int[] round = around(mesh, start);
    float[] positions = new float[9 * n];
    float[] normals = new float[9 * n];
    int[] vertex = new int[3 * n];
    double[] sum = new double[3];
    for (int c = 0; c < 3 * n; c++) {
      int v = mesh.corner(c / 3, c % 3);
      vertex[c] = v;
      normal(c / 3, v, start, round, facing, area, sum);
      for (int axis = 0; axis < 3; axis++) {
        positions[3 * c + axis] = (float) (1e3 * mesh.coordinate(v, axis));
        normals[3 * c + axis] = (float) sum[axis];
      }
    }
    return new SkinMesh(positions, normals, vertex);
  }

  /** Triangles round each vertex, one after another; {@code start} is filled. */
  private static int[] around(TriangleMesh mesh, int[] start) {
    int n = mesh.triangleCount();
    for (int c = 0; c < 3 * n; c++) {
      start[mesh.corner(c / 3, c % 3) + 1]++;
    }
    for (int v = 1; v < start.length; v++) {
      start[v] += start[v - 1];
    }
    int[] next = start.clone();
    int[] round = new int[3 * n];
    for (int c = 0; c < 3 * n; c++) {
      round[next[mesh.corner(c / 3, c % 3)]++] = c / 3;
    }
    return round;
  }

  private static void normal(
      int t, int v, int[] start, int[] round, double[] facing, double[] area, double[] sum) {
    sum[0] = 0;
    sum[1] = 0;
    sum[2] = 0;
    for (int i = start[v]; i < start[v + 1]; i++) {
      int o = round[i];
      double alike =
          facing[3 * t] * facing[3 * o]
              + facing[3 * t + 1] * facing[3 * o + 1]
              + facing[3 * t + 2] * facing[3 * o + 2];
      if (o == t || alike > SHARP) {
        for (int axis = 0; axis < 3; axis++) {
          sum[axis] += area[o] * facing[3 * o + axis];
        }
      }
    }
    double l = Math.sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]);
    for (int axis = 0; axis < 3 && l > 0; axis++) {
      sum[axis] /= l;
    }
  }

  /** Values of the mesh's vertices, one a corner. */
  public float[] corners(float[] perVertex) {
    float[] out = new float[vertex.length];
    for (int c = 0; c < out.length; c++) {
      out[c] = perVertex[vertex[c]];
    }
    return out;
  }
}

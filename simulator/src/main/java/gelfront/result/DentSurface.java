// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;

/**
 * How deep the part's surface is dented, even shrinkage taken off; 0 where it isn't.
 *
 * @param mesh the part, metres; its own vertices first, in their order, then those that halve long
 *     edges
 * @param depth metres inwards per vertex, such that all of it together holds the dents' volume
 * @param low metres, low bound of the local dent
 * @param high metres, high bound
 */
public record DentSurface(TriangleMesh mesh, float[] depth, float[] low, float[] high) {
  public DentSurface {
    int n = mesh.vertexCount();
    if (depth.length != n || low.length != n || high.length != n) {
      throw new IllegalArgumentException("a dented surface has one value per vertex");
    }
  }

  /** A surface without a dent. */
  public static DentSurface flat(TriangleMesh mesh) {
    int n = mesh.vertexCount();
    return new DentSurface(mesh, new float[n], new float[n], new float[n]);
  }

  /** Metres. */
  public double deepest() {
    double most = 0;
    for (float d : depth) {
      most = Math.max(most, d);
    }
    return most;
  }

  /** Unit normals, outwards, x y z per vertex; zero where no triangle has an area. */
  public static double[] normals(TriangleMesh m) {
    double[] sum = new double[3 * m.vertexCount()];
    for (int t = 0; t < m.triangleCount(); t++) {
      Vec3 a = m.vertex(m.corner(t, 0));
      Vec3 n = m.vertex(m.corner(t, 1)).minus(a).cross(m.vertex(m.corner(t, 2)).minus(a));
      for (int c = 0; c < 3; c++) {
        int v = 3 * m.corner(t, c);
        sum[v] += n.x();
        sum[v + 1] += n.y();
        sum[v + 2] += n.z();
      }
    }
    for (int v = 0; v < sum.length; v += 3) {
      double l = Math.sqrt(sum[v] * sum[v] + sum[v + 1] * sum[v + 1] + sum[v + 2] * sum[v + 2]);
      for (int a = v; a < v + 3; a++) {
        sum[a] = l > 0 ? sum[a] / l : 0;
      }
    }
    return sum;
  }

  /** The surface as it is pulled in, so many times as deep. */
  public TriangleMesh pulledIn(double times) {
    double[] normal = normals(mesh);
    double[] v = mesh.copyVertices();
    for (int i = 0; i < v.length; i++) {
      v[i] -= times * depth[i / 3] * normal[i];
    }
    return new TriangleMesh(v, mesh.copyTriangles());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A numbered list of points and the faces that name them, for formats that have such. */
final class Corners {
  /** Corners of a face; a cap from a drawing has hundreds. */
  static final int MOST = 10_000;

  private double[] xyz;
  private int count;

  Corners(int expected) {
    xyz = new double[3 * Math.max(8, expected)];
  }

  int count() {
    return count;
  }

  void add(double x, double y, double z) {
    if (3 * count + 3 > xyz.length) {
      xyz = Arrays.copyOf(xyz, Math.max(xyz.length + 3, (int) Math.min(1.5 * xyz.length, 2e9)));
    }
    xyz[3 * count] = x;
    xyz[3 * count + 1] = y;
    xyz[3 * count + 2] = z;
    count++;
  }

  /** Gives a face's triangles to the mesh; numbers from 0, all of them known. */
  void face(int[] face, int n, MeshAssembler mesh) {
    if (n == 3) {
      for (int c = 0; c < 3; c++) {
        give(face[c], mesh);
      }
      return;
    }
    List<Vec3> p = new ArrayList<>(n);
    for (int c = 0; c < n; c++) {
      int v = 3 * face[c];
      p.add(new Vec3(xyz[v], xyz[v + 1], xyz[v + 2]));
    }
    for (int c : Polygon.triangles(p)) {
      give(face[c], mesh);
    }
  }

  private void give(int v, MeshAssembler mesh) {
    mesh.corner(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
  }

  /** Whether a face's number of corners makes sense, else why not. */
  static void checkSize(long n) {
    if (n < 3) {
      throw new MeshException("a face has " + n + " corners: three are needed");
    }
    if (n > MOST) {
      throw new MeshException("a face has " + n + " corners, more than " + MOST);
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.mould;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.HashMap;
import java.util.Map;

/**
 * The surface round a set of samples as surface nets (S. Frisken Gibson, Constrained elastic
 * surface nets, MICCAI 1998): one vertex in each cube of eight samples that differ, in the mean of
 * the places where the cube's edges meet the wall, which come from the drawing itself. Ends of the
 * box are flat.
 */
final class Hollow {
  private final Lattice lattice;
  private final Crossings[] lines;
  private final boolean[] inside;
  private final Map<Long, Integer> vertices = new HashMap<>();
  private double[] xyz = new double[3 * 1024];
  private int[] corners = new int[3 * 1024];
  private int cornerCount;

  Hollow(Lattice lattice, Crossings[] lines, boolean[] inside) {
    this.lattice = lattice;
    this.lines = lines;
    this.inside = inside;
  }

  /** Closed, wound outwards. */
  TriangleMesh mesh() {
    for (int s = 0; s < inside.length; s++) {
      if (inside[s]) {
        for (int axis = 0; axis < 3; axis++) {
          side(s, axis, true);
          side(s, axis, false);
        }
      }
    }
    return new TriangleMesh(
        java.util.Arrays.copyOf(xyz, 3 * vertices.size()),
        java.util.Arrays.copyOf(corners, cornerCount));
  }

  private boolean in(int i, int j, int k) {
    int[] n = lattice.n();
    boolean there = i >= 0 && j >= 0 && k >= 0 && i < n[0] && j < n[1] && k < n[2];
    return there && inside[lattice.number(i, j, k)];
  }

  /** The face between a sample inside and its neighbour, if that one is outside. */
  private void side(int sample, int axis, boolean up) {
    int[] p = {
      lattice.position(sample, 0), lattice.position(sample, 1), lattice.position(sample, 2)
    };
    int[] q = p.clone();
    q[axis] += up ? 1 : -1;
    if (in(q[0], q[1], q[2])) {
      return;
    }
    int u = (axis + 1) % 3;
    int v = (axis + 2) % 3;
    int[] cube = p.clone(); // a cube is named by its lowest sample
    cube[axis] = Math.min(p[axis], q[axis]);
    int[] ring = new int[4];
    int[][] turn = {{0, 0}, {-1, 0}, {-1, -1}, {0, -1}};
    for (int r = 0; r < 4; r++) {
      int[] c = cube.clone();
      c[u] += turn[r][0];
      c[v] += turn[r][1];
      ring[r] = vertex(c);
    }
    quad(ring, up);
  }

  private void quad(int[] r, boolean up) {
    int a = r[0];
    int b = up ? r[1] : r[3];
    int c = r[2];
    int d = up ? r[3] : r[1];
    if (cornerCount + 6 > corners.length) {
      corners = java.util.Arrays.copyOf(corners, 2 * corners.length);
    }
    for (int corner : new int[] {a, b, c, a, c, d}) {
      corners[cornerCount++] = corner;
    }
  }

  private int vertex(int[] cube) {
    long key =
        ((cube[0] + 1L) * (lattice.n()[1] + 2) + cube[1] + 1) * (lattice.n()[2] + 2) + cube[2] + 1;
    Integer known = vertices.get(key);
    if (known != null) {
      return known;
    }
    Vec3 at = middle(cube);
    int number = vertices.size();
    vertices.put(key, number);
    if (3 * number + 3 > xyz.length) {
      xyz = java.util.Arrays.copyOf(xyz, 2 * xyz.length);
    }
    xyz[3 * number] = at.x();
    xyz[3 * number + 1] = at.y();
    xyz[3 * number + 2] = at.z();
    return number;
  }

  /** Mean of the walls on the cube's twelve edges. */
  private Vec3 middle(int[] cube) {
    Vec3 sum = Vec3.ZERO;
    int n = 0;
    for (int axis = 0; axis < 3; axis++) {
      for (int c = 0; c < 4; c++) {
        int[] p = cube.clone();
        p[(axis + 1) % 3] += c & 1;
        p[(axis + 2) % 3] += c >> 1;
        int[] q = p.clone();
        q[axis]++;
        boolean low = in(p[0], p[1], p[2]);
        if (low != in(q[0], q[1], q[2])) {
          sum = sum.plus(low ? wall(p, axis, true) : wall(q, axis, false));
          n++;
        }
      }
    }
    return sum.times(1.0 / n);
  }

  /** From a sample inside towards its neighbour outside. */
  private Vec3 wall(int[] p, int axis, boolean up) {
    double[] at = {lattice.at(0, p[0]), lattice.at(1, p[1]), lattice.at(2, p[2])};
    boolean end = up ? p[axis] == lattice.n()[axis] - 1 : p[axis] == 0;
    at[axis] =
        end
            ? (up ? lattice.high(axis) : lattice.low(axis))
            : lines[axis].wall(p[(axis + 1) % 3], p[(axis + 2) % 3], p[axis], up);
    return new Vec3(at[0], at[1], at[2]);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.result.Fields;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The cells of one pocket as a closed, rounded body: their outer faces, corners evened out. */
public final class Blob {
  private static final int EVENED = 16;

  /**
   * Towards the neighbours' mean and a little more back: evens out and keeps the volume (Taubin).
   */
  private static final double IN = 0.5;

  private static final double OUT = -0.53;

  private static final int[][] QUADS = {
    {0, 4, 6, 2}, {1, 3, 7, 5}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 2, 3, 1}, {4, 5, 7, 6}
  };

  private final Fields f;
  private final Map<Long, Integer> numbers = new HashMap<>();
  private final List<Vec3> places = new ArrayList<>();
  private final List<Integer> triangles = new ArrayList<>();
  private final List<Set<Integer>> beside = new ArrayList<>();

  private Blob(Fields f) {
    this.f = f;
  }

  /**
   * @param number of the pocket
   * @return metres, part coordinates; empty where no cell is of that pocket
   */
  public static TriangleMesh of(Fields f, int number) {
    Set<Integer> cells = new HashSet<>();
    for (int c = 0; c < f.cells().length; c++) {
      if (f.pocket()[c] == number) {
        cells.add(f.cells()[c]);
      }
    }
    Blob blob = new Blob(f);
    int[] step = {1, f.nx(), f.nx() * f.ny()};
    for (int cell : cells) {
      for (int side = 0; side < 6; side++) {
        int to = cell + (side % 2 == 0 ? -1 : 1) * step[side / 2];
        if (!cells.contains(to)) {
          blob.face(cell, side);
        }
      }
    }
    return blob.mesh();
  }

  private void face(int cell, int side) {
    int[] q = new int[4];
    for (int c = 0; c < 4; c++) {
      q[c] = corner(cell, QUADS[side][c]);
    }
    for (int c = 0; c < 4; c++) {
      beside.get(q[c]).add(q[(c + 1) % 4]);
      beside.get(q[(c + 1) % 4]).add(q[c]);
    }
    triangles.addAll(List.of(q[0], q[1], q[2], q[0], q[2], q[3]));
  }

  private int corner(int cell, int which) {
    int i = cell % f.nx() + (which & 1);
    int j = cell / f.nx() % f.ny() + (which >> 1 & 1);
    int k = cell / f.nx() / f.ny() + (which >> 2);
    long key = i + (f.nx() + 1L) * (j + (f.ny() + 1L) * k);
    Integer known = numbers.putIfAbsent(key, places.size());
    if (known != null) {
      return known;
    }
    places.add(f.origin().plus(new Vec3(i, j, k).times(f.spacing())));
    beside.add(new HashSet<>());
    return places.size() - 1;
  }

  private TriangleMesh mesh() {
    List<Vec3> now = places;
    for (int round = 0; round < EVENED; round++) {
      List<Vec3> next = new ArrayList<>(now.size());
      for (int v = 0; v < now.size(); v++) {
        Vec3 sum = Vec3.ZERO;
        for (int o : beside.get(v)) {
          sum = sum.plus(now.get(o));
        }
        Vec3 mean = sum.times(1.0 / beside.get(v).size());
        double by = round % 2 == 0 ? IN : OUT;
        next.add(now.get(v).plus(mean.minus(now.get(v)).times(by)));
      }
      now = next;
    }
    double[] v = new double[3 * now.size()];
    for (int i = 0; i < now.size(); i++) {
      v[3 * i] = now.get(i).x();
      v[3 * i + 1] = now.get(i).y();
      v[3 * i + 2] = now.get(i).z();
    }
    return new TriangleMesh(v, triangles.stream().mapToInt(Integer::intValue).toArray());
  }
}

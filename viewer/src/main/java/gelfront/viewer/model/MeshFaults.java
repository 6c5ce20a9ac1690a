// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import gelfront.mesh.TriangleMesh;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is wrong with a mesh, as lines to be drawn on it.
 *
 * @param open x, y, z of both ends of each edge with an odd number of triangles, mm; 6 an edge
 * @param flipped likewise, edges whose two triangles face opposite ways
 */
public record MeshFaults(float[] open, float[] flipped) {
  /** Vertices nearer than this are one: what welding joins is no fault; 0.01 mm. */
  private static final double SAME = 1e-5;

  /**
   * @param mesh metres, as it is in the file
   */
  public static MeshFaults of(TriangleMesh mesh) {
    int[] joined = joined(mesh);
    Map<Long, int[]> edges = new HashMap<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        int a = joined[mesh.corner(t, c)];
        int b = joined[mesh.corner(t, (c + 1) % 3)];
        if (a != b) {
          long key = (long) Math.min(a, b) * mesh.vertexCount() + Math.max(a, b);
          int[] seen = edges.computeIfAbsent(key, k -> new int[] {a, b, 0, 0});
          seen[seen[0] == a ? 2 : 3]++;
        }
      }
    }
    List<Integer> open = new ArrayList<>();
    List<Integer> flipped = new ArrayList<>();
    for (int[] e : edges.values()) {
      if ((e[2] + e[3]) % 2 != 0) {
        open.addAll(List.of(e[0], e[1]));
      } else if (e[2] != e[3]) {
        flipped.addAll(List.of(e[0], e[1]));
      }
    }
    return new MeshFaults(lines(mesh, open), lines(mesh, flipped));
  }

  private record Place(long x, long y, long z) {}

  /** For each vertex the first one at its place. */
  private static int[] joined(TriangleMesh mesh) {
    Map<Place, Integer> first = new HashMap<>();
    int[] out = new int[mesh.vertexCount()];
    for (int v = 0; v < out.length; v++) {
      Place p =
          new Place(
              Math.round(mesh.coordinate(v, 0) / SAME),
              Math.round(mesh.coordinate(v, 1) / SAME),
              Math.round(mesh.coordinate(v, 2) / SAME));
      Integer known = first.putIfAbsent(p, v);
      out[v] = known == null ? v : known;
    }
    return out;
  }

  private static float[] lines(TriangleMesh mesh, List<Integer> ends) {
    float[] out = new float[3 * ends.size()];
    for (int i = 0; i < out.length; i++) {
      out[i] = (float) (1e3 * mesh.coordinate(ends.get(i / 3), i % 3));
    }
    return out;
  }

  public boolean none() {
    return open.length == 0 && flipped.length == 0;
  }

  /** What the lines mean; empty where there are none. */
  public String words() {
    List<String> says = new ArrayList<>();
    if (open.length > 0) {
      says.add(open.length / 6 + " open edges, drawn red: the skin ends there, as round a hole");
    }
    if (flipped.length > 0) {
      says.add(flipped.length / 6 + " edges drawn yellow: a part faces inside out there");
    }
    return String.join("; ", says);
  }
}

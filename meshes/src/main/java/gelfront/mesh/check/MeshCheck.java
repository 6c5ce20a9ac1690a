// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;

/** Looks a mesh over without changing it. */
public final class MeshCheck {
  /** Shells up to which each is held against each. */
  static final int MANY = 200;

  private static final String EXPORT = ", and export the solid, not a face of it";

  private final TriangleMesh mesh;
  private final EdgeTable edges;
  private final Shells shells;
  private final List<String> refusals = new ArrayList<>();
  private final List<String> warnings = new ArrayList<>();

  private MeshCheck(TriangleMesh mesh) {
    this.mesh = mesh;
    this.edges = new EdgeTable(mesh);
    this.shells = new Shells(mesh, edges);
  }

  /**
   * @throws gelfront.mesh.MeshException if there is no vertex
   */
  public static MeshReport inspect(TriangleMesh mesh) {
    if (mesh.vertexCount() == 0) {
      throw new gelfront.mesh.MeshException("no triangles in it");
    }
    return new MeshCheck(mesh).report();
  }

  private MeshReport report() {
    int open = openEdges();
    refuseOpen(open);
    List<MeshReport.Shell> list = shellList();
    int zero = zeroArea(mesh);
    int duplicates = new Repeats(mesh).count();
    List<int[]> overlaps = open == 0 ? overlaps() : List.of();
    note(zero, "triangles without area");
    note(duplicates, "triangles that repeat another");
    double volume = list.stream().mapToDouble(MeshReport.Shell::volume).sum();
    List<String> reasons = new ArrayList<>(refusals);
    reasons.addAll(warnings);
    return new MeshReport(
        mesh.triangleCount(),
        mesh.box(),
        volume,
        mesh.area(),
        open == 0,
        open,
        holes(),
        list,
        zero,
        duplicates,
        overlaps,
        !refusals.isEmpty()
            ? MeshReport.Verdict.REFUSED
            : warnings.isEmpty() ? MeshReport.Verdict.OK : MeshReport.Verdict.WARNING,
        reasons);
  }

  private void note(int n, String what) {
    if (n > 0) {
      warnings.add(n + " " + what);
    }
  }

  private int openEdges() {
    int n = 0;
    for (int h = 0; h < edges.count(); h++) {
      // each edge once: at the half-edge with the lowest number of its ring
      n += open(h) && lowest(h) == h ? 1 : 0;
    }
    return n;
  }

  private boolean open(int h) {
    return edges.uses(h) % 2 == 1;
  }

  /** What has no thickness isn't mended by closing a hole: it gets words of its own. */
  private void refuseOpen(int n) {
    if (Sheet.flat(mesh)) {
      refusals.add("a flat sheet without thickness: in CAD make it a solid" + EXPORT);
    } else if (n > 0) {
      int first = IntStream.range(0, edges.count()).filter(this::open).findFirst().orElseThrow();
      String where = n + " open edges, the first at " + mm(mesh.vertex(edges.from(first)));
      refusals.add(
          Sheet.skin(mesh, shells)
              ? "a single skin, open over a whole side ("
                  + where
                  + "): in CAD close it or give it thickness"
                  + EXPORT
              : "not closed: " + where);
    }
  }

  private int lowest(int h) {
    int least = h;
    for (int g = edges.other(h); g != h; g = edges.other(g)) {
      least = Math.min(least, g);
    }
    return least;
  }

  /** Connected groups of open edges. */
  private int holes() {
    int[] parent = new int[mesh.vertexCount()];
    for (int v = 0; v < parent.length; v++) {
      parent[v] = v;
    }
    Set<Integer> touched = new HashSet<>();
    for (int h = 0; h < edges.count(); h++) {
      if (open(h)) {
        touched.add(edges.from(h));
        touched.add(edges.to(h));
        parent[root(parent, edges.from(h))] = root(parent, edges.to(h));
      }
    }
    return (int) touched.stream().filter(v -> parent[v] == v).count();
  }

  private static int root(int[] parent, int v) {
    int at = v;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  private List<MeshReport.Shell> shellList() {
    double[] volumes = shells.volumes(false);
    int[] count = new int[shells.count()];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      count[shells.of(t)]++;
    }
    List<MeshReport.Shell> list = new ArrayList<>();
    for (int s = 0; s < count.length; s++) {
      MeshReport.Winding w =
          shells.shuffled(s)
              ? MeshReport.Winding.SHUFFLED
              : volumes[s] < 0 ? MeshReport.Winding.INWARD : MeshReport.Winding.OUTWARD;
      list.add(new MeshReport.Shell(count[s], volumes[s], shells.closed(s), w));
      describe(s, w);
    }
    return list;
  }

  private void describe(int s, MeshReport.Winding w) {
    if (shells.twisted(s)) {
      refusals.add("shell " + (s + 1) + " has only one side: it encloses nothing");
    } else if (w == MeshReport.Winding.SHUFFLED) {
      warnings.add("shell " + (s + 1) + " has triangles that face the wrong way");
    } else if (w == MeshReport.Winding.INWARD && shells.count() == 1 && shells.closed(s)) {
      warnings.add("the mesh is inside out");
    }
  }

  static int zeroArea(TriangleMesh m) {
    int n = 0;
    for (int t = 0; t < m.triangleCount(); t++) {
      Vec3 a = m.vertex(m.corner(t, 0));
      Vec3 e = m.vertex(m.corner(t, 1)).minus(a);
      n += e.cross(m.vertex(m.corner(t, 2)).minus(a)).length() == 0 ? 1 : 0;
    }
    return n;
  }

  private List<int[]> overlaps() {
    List<int[]> found = new ArrayList<>();
    if (shells.count() > MANY) {
      warnings.add(
          shells.count()
              + " shells: more than "
              + MANY
              + ", so it was not examined which overlap or lie in one another; none is taken for"
              + " a void");
    }
    if (shells.count() == 1 || shells.count() > MANY) {
      return found;
    }
    Nesting nesting = new Nesting(mesh, shells);
    for (int a = 0; a < shells.count(); a++) {
      for (int b = a + 1; b < shells.count(); b++) {
        if (nesting.boxesMeet(a, b)
            && (nesting.cross(a, b) || nesting.inside(a, b) || nesting.inside(b, a))) {
          found.add(new int[] {a + 1, b + 1});
        }
      }
    }
    if (!found.isEmpty()) {
      warnings.add(
          found.size() == 1
              ? "1 pair of shells overlaps or lies in one another; they are united, unless one is a"
                  + " void in the other"
              : found.size()
                  + " pairs of shells overlap or lie in one another; they are united, unless one"
                  + " is a void in the other");
    }
    return found;
  }

  static String mm(Vec3 p) {
    return String.format(
        Locale.ROOT, "(%.3f, %.3f, %.3f) mm", p.x() * 1e3, p.y() * 1e3, p.z() * 1e3);
  }
}

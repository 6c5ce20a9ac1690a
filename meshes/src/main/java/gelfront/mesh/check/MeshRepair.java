// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Makes a mesh closed and consistently wound, tells what it did, or refuses. */
public final class MeshRepair {
  /** Cracks up to this are welded unless the caller says otherwise, metres. */
  public static final double WELD = 0.01e-3;

  private MeshRepair() {}

  /**
   * @param weld widest crack that is closed, metres
   * @throws MeshException with the reason and the place, if the mesh can't be trusted
   */
  public static PreparedMesh prepare(TriangleMesh mesh, double weld) {
    MeshReport report = MeshCheck.inspect(mesh);
    List<String> repairs = new ArrayList<>();
    boolean spare = report.duplicates() > 0 || report.zeroArea() > 0;
    TriangleMesh clean = spare ? dropped(mesh, repairs) : mesh;
    if (clean.triangleCount() == 0) {
      throw new MeshException("the mesh encloses no volume");
    }
    MeshReport after = clean == mesh ? report : MeshCheck.inspect(clean);
    if (!after.closed()) {
      clean = weld(clean, weld, repairs);
      after = MeshCheck.inspect(clean);
    }
    if (after.verdict() == MeshReport.Verdict.REFUSED) {
      throw new MeshException(String.join("; ", after.reasons()));
    }
    TriangleMesh oriented = orient(clean, repairs);
    checkEdges(oriented);
    return new PreparedMesh(oriented, report, repairs);
  }

  /**
   * A repeated triangle is one too many, unless it is the wall between two bodies that meet face to
   * face: then both go. The one that leaves the mesh closed is right.
   */
  private static TriangleMesh dropped(TriangleMesh mesh, List<String> repairs) {
    TriangleMesh once = drop(mesh, repairs);
    if (once.triangleCount() == 0 || MeshCheck.inspect(once).closed()) {
      return once;
    }
    TriangleMesh open = withoutWalls(mesh);
    if (open.triangleCount() == 0 || !MeshCheck.inspect(open).closed()) {
      return once;
    }
    repairs.clear();
    repairs.add(
        (mesh.triangleCount() - open.triangleCount())
            + " triangles of walls between bodies that touch, or empty ones, dropped");
    return open;
  }

  /** Without empty triangles and without any that another repeats. */
  private static TriangleMesh withoutWalls(TriangleMesh mesh) {
    Repeats repeats = new Repeats(mesh);
    int[] kept = new int[3 * mesh.triangleCount()];
    int n = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int a = mesh.corner(t, 0);
      int b = mesh.corner(t, 1);
      int c = mesh.corner(t, 2);
      if (a != b && b != c && c != a && repeats.uses(t) == 1) {
        kept[n++] = a;
        kept[n++] = b;
        kept[n++] = c;
      }
    }
    return new TriangleMesh(mesh.copyVertices(), Arrays.copyOf(kept, n));
  }

  /** Inside and outside are defined where, at every edge, as many triangles run to as fro. */
  private static void checkEdges(TriangleMesh mesh) {
    EdgeTable edges = new EdgeTable(mesh);
    for (int h = 0; h < edges.count(); h++) {
      int net = 1;
      for (int g = edges.other(h); g != h; g = edges.other(g)) {
        net += edges.from(g) == edges.from(h) ? 1 : -1;
      }
      if (net != 0) {
        throw new MeshException(
            edges.uses(h)
                + " triangles meet at one edge and leave open what is inside, at "
                + MeshCheck.mm(mesh.vertex(edges.from(h))));
      }
    }
  }

  /** Without triangles that repeat a corner or another triangle. */
  private static TriangleMesh drop(TriangleMesh mesh, List<String> repairs) {
    int[] kept = new int[3 * mesh.triangleCount()];
    int n = 0;
    Repeats repeats = new Repeats(mesh);
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int a = mesh.corner(t, 0);
      int b = mesh.corner(t, 1);
      int c = mesh.corner(t, 2);
      if (a != b && b != c && c != a && !repeats.repeats(t)) {
        kept[n++] = a;
        kept[n++] = b;
        kept[n++] = c;
      }
    }
    int dropped = mesh.triangleCount() - n / 3;
    if (dropped == 0) {
      return mesh;
    }
    repairs.add(dropped + " empty or repeated triangles dropped");
    return new TriangleMesh(mesh.copyVertices(), Arrays.copyOf(kept, n));
  }

  private static TriangleMesh weld(TriangleMesh mesh, double tolerance, List<String> repairs) {
    EdgeTable edges = new EdgeTable(mesh);
    boolean[] open = new boolean[mesh.vertexCount()];
    for (int h = 0; h < edges.count(); h++) {
      if (edges.uses(h) % 2 == 1) {
        open[edges.from(h)] = true;
        open[edges.to(h)] = true;
      }
    }
    int[] to = new int[mesh.vertexCount()];
    int welded = 0;
    Map<String, List<Integer>> cells = new HashMap<>();
    for (int v = 0; v < to.length; v++) {
      to[v] = v;
      if (open[v]) {
        int twin = twin(mesh, v, tolerance, cells);
        to[v] = twin;
        welded += twin == v ? 0 : 1;
      }
    }
    if (welded == 0) {
      return mesh;
    }
    int[] triangles = mesh.copyTriangles();
    for (int i = 0; i < triangles.length; i++) {
      triangles[i] = to[triangles[i]];
    }
    repairs.add(
        String.format(
            Locale.ROOT, "cracks of up to %.3f mm welded at %d corners", tolerance * 1e3, welded));
    return drop(new TriangleMesh(mesh.copyVertices(), triangles), new ArrayList<>());
  }

  /** The first open corner met within the tolerance, or the corner itself, which is remembered. */
  private static int twin(
      TriangleMesh mesh, int v, double tolerance, Map<String, List<Integer>> cells) {
    Vec3 p = mesh.vertex(v);
    long[] at = {cell(p.x(), tolerance), cell(p.y(), tolerance), cell(p.z(), tolerance)};
    for (int n = 0; n < 27; n++) {
      String key = (at[0] + n % 3 - 1) + "," + (at[1] + n / 3 % 3 - 1) + "," + (at[2] + n / 9 - 1);
      for (int other : cells.getOrDefault(key, List.of())) {
        if (mesh.vertex(other).distance(p) <= tolerance) {
          return other;
        }
      }
    }
    cells.computeIfAbsent(at[0] + "," + at[1] + "," + at[2], k -> new ArrayList<>()).add(v);
    return v;
  }

  private static long cell(double x, double size) {
    return (long) Math.floor(x / size);
  }

  private static TriangleMesh orient(TriangleMesh mesh, List<String> repairs) {
    Shells shells = new Shells(mesh, new EdgeTable(mesh));
    double[] volume = shells.volumes(true);
    double[] original = shells.volumes(false);
    checkVolumes(mesh, shells, volume);
    boolean[] isVoid = voids(mesh, shells, original);
    int[] t = mesh.copyTriangles();
    int turned = 0;
    for (int i = 0; i < mesh.triangleCount(); i++) {
      int s = shells.of(i);
      if (shells.flip(i) ^ (volume[s] < 0) ^ isVoid[s]) {
        int keep = t[3 * i];
        t[3 * i] = t[3 * i + 1];
        t[3 * i + 1] = keep;
        turned++;
      }
    }
    if (turned > 0) {
      repairs.add(turned + " triangles turned round to face outwards");
    }
    return turned == 0 ? mesh : new TriangleMesh(mesh.copyVertices(), t);
  }

  /** Refuses a shell whose mean thickness is lost in the rounding of single-precision files. */
  private static void checkVolumes(TriangleMesh mesh, Shells shells, double[] volume) {
    double[] area = new double[volume.length];
    int[] first = new int[volume.length];
    for (int t = mesh.triangleCount() - 1; t >= 0; t--) {
      Vec3 a = mesh.vertex(mesh.corner(t, 0));
      Vec3 e = mesh.vertex(mesh.corner(t, 1)).minus(a);
      area[shells.of(t)] += 0.5 * e.cross(mesh.vertex(mesh.corner(t, 2)).minus(a)).length();
      first[shells.of(t)] = t;
    }
    double least = 1e-7 * mesh.box().size().length();
    for (int s = 0; s < volume.length; s++) {
      if (!(Math.abs(volume[s]) > least * area[s])) {
        throw new MeshException(
            "shell "
                + (s + 1)
                + " encloses no volume, at "
                + MeshCheck.mm(mesh.vertex(mesh.corner(first[s], 0)))
                + ": in CAD give it thickness or leave it out");
      }
    }
  }

  /**
   * A shell wholly inside another and wound against it is a void, or a solid where the other is a
   * void; wound alike it is swallowed. Not looked for among too many shells, which the report says.
   */
  private static boolean[] voids(TriangleMesh mesh, Shells shells, double[] original) {
    boolean[] isVoid = new boolean[shells.count()];
    if (shells.count() == 1 || shells.count() > MeshCheck.MANY) {
      return isVoid;
    }
    Nesting nesting = new Nesting(mesh, shells);
    double[] size = shells.volumes(true);
    List<Integer> largestFirst = new ArrayList<>();
    for (int s = 0; s < size.length; s++) {
      size[s] = Math.abs(size[s]);
      largestFirst.add(s);
    }
    largestFirst.sort((a, b) -> Double.compare(size[b], size[a]));
    for (int i = 1; i < size.length; i++) {
      int a = largestFirst.get(i);
      int b = container(nesting, a, largestFirst.subList(0, i));
      if (b >= 0) {
        checkWinding(shells, a, b);
        isVoid[a] = isVoid[b] ^ (original[a] * original[b] < 0);
      }
    }
    return isVoid;
  }

  /** The smallest of the larger shells that {@code a} lies wholly inside; -1 if none. */
  private static int container(Nesting nesting, int a, List<Integer> larger) {
    for (int i = larger.size() - 1; i >= 0; i--) {
      int b = larger.get(i);
      if (nesting.boxesMeet(a, b) && nesting.inside(a, b) && !nesting.cross(a, b)) {
        return b;
      }
    }
    return -1;
  }

  private static void checkWinding(Shells shells, int a, int b) {
    if (shells.shuffled(a) || shells.shuffled(b)) {
      throw new MeshException(
          "shell "
              + (a + 1)
              + " lies inside shell "
              + (b + 1)
              + " and their winding does not tell whether it is a void");
    }
  }
}

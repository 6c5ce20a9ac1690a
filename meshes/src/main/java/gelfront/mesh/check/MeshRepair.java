package gelfront.mesh.check;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

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
    TriangleMesh clean = drop(mesh, repairs);
    if (!MeshCheck.inspect(clean).closed()) {
      clean = weld(clean, weld, repairs);
    }
    MeshReport after = MeshCheck.inspect(clean);
    if (after.verdict() == MeshReport.Verdict.REFUSED) {
      throw new MeshException(String.join("; ", after.reasons()));
    }
    return new PreparedMesh(orient(clean, repairs), report, repairs);
  }

  /** Without triangles that repeat a corner or another triangle. */
  private static TriangleMesh drop(TriangleMesh mesh, List<String> repairs) {
    int[] kept = new int[3 * mesh.triangleCount()];
    int n = 0;
    Set<Long> seen = new HashSet<>(2 * mesh.triangleCount());
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int a = mesh.corner(t, 0);
      int b = mesh.corner(t, 1);
      int c = mesh.corner(t, 2);
      if (a != b && b != c && c != a && seen.add(MeshCheck.key(mesh, t))) {
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
    boolean[] isVoid = voids(mesh, shells, original);
    int[] t = mesh.copyTriangles();
    int turned = 0;
    for (int i = 0; i < mesh.triangleCount(); i++) {
      int s = shells.of(i);
      if (volume[s] == 0) {
        throw new MeshException("shell " + (s + 1) + " encloses no volume");
      }
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

  /** A shell wholly inside another and wound against it is a void; wound alike it is swallowed. */
  private static boolean[] voids(TriangleMesh mesh, Shells shells, double[] original) {
    boolean[] isVoid = new boolean[shells.count()];
    if (shells.count() == 1 || shells.count() > 200) {
      return isVoid;
    }
    Nesting nesting = new Nesting(mesh, shells);
    for (int a = 0; a < isVoid.length; a++) {
      for (int b = 0; b < isVoid.length; b++) {
        if (a != b
            && Math.abs(original[a]) < Math.abs(original[b])
            && nesting.boxesMeet(a, b)
            && original[a] * original[b] < 0
            && !nesting.cross(a, b)
            && nesting.inside(a, b)) {
          if (shells.shuffled(a) || shells.shuffled(b)) {
            throw new MeshException(
                "shell "
                    + (a + 1)
                    + " lies inside shell "
                    + (b + 1)
                    + " and their winding does not tell whether it is a void");
          }
          isVoid[a] = true;
        }
      }
    }
    return isVoid;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SheetTest {
  private static final String FLAT =
      "a flat sheet without thickness: in CAD make it a solid, and export the solid, not a face of"
          + " it";
  private static final TriangleMesh BALL = Solids.sphere(Vec3.ZERO, 10e-3, 24);

  @Test
  void facesAreFlatHoweverTheyLie() {
    Vec3 out = new Vec3(0.3, -0.5, 0.8).unit();
    TriangleMesh disc = Solids.cylinder(Vec3.ZERO, out.times(20e-3), 15e-3, 15e-3, 60);
    TriangleMesh face = only(disc, c -> c.dot(out) < 1e-6);

    assertEquals(58, face.triangleCount(), "the cylinder's end");
    assertEquals(List.of(FLAT), MeshCheck.inspect(single(face)).reasons());
    assertEquals(List.of(FLAT), MeshCheck.inspect(turned(face)).reasons().subList(0, 1));
  }

  @Test
  void stripsAndTrianglesInOneLineAreFlat() {
    double[] strip = {0, 0, 0, 0.1, 0, 0, 0.1, 1e-5, 0, 0, 1e-5, 0};
    double[] line = {0, 0, 0, 0.01, 0.02, 0.03, 0.02, 0.04, 0.06};

    assertTrue(Sheet.flat(new TriangleMesh(strip, new int[] {0, 1, 2, 0, 2, 3})));
    assertTrue(Sheet.flat(new TriangleMesh(line, new int[] {0, 1, 2})));
  }

  @Test
  void thinnestPlateIsASolid() {
    // a film of 0.02 mm, 100 mm long: far under what is poured, far over rounding
    TriangleMesh film = Solids.box(Vec3.ZERO, new Vec3(100e-3, 50e-3, 0.02e-3));

    assertEquals(MeshReport.Verdict.OK, MeshCheck.inspect(film).verdict());
  }

  @Test
  void halfABallsSkinLacksASide() {
    TriangleMesh half = only(BALL, c -> c.z() > 0);
    String words = MeshCheck.inspect(half).reasons().get(0);

    assertTrue(
        words.matches(
            "a single skin, open over a whole side \\(\\d+ open edges, the first at \\(.*\\) mm\\):"
                + " in CAD close it or give it thickness, and export the solid, not a face of it"),
        words);
    assertEquals(words, MeshCheck.inspect(turned(half)).reasons().get(0), "however it is wound");
    assertEquals(1, MeshCheck.inspect(half).reasons().size());
  }

  @Test
  void holesStayHoles() {
    TriangleMesh rod = Solids.cylinder(Vec3.ZERO, new Vec3(60e-3, 0, 0), 5e-3, 5e-3, 30);

    assertHole(only(BALL, c -> c.z() < 9e-3), "a ball with a hole");
    assertHole(only(BALL, c -> c.z() < 4e-3), "a bowl that narrows to its mouth");
    assertHole(only(rod, c -> c.x() < 59.9e-3), "a rod without one of its ends");
  }

  @Test
  void patchesThatWeldingJoinsAreNoSheets() {
    // a box's six faces, each with corners of its own, as some CAD programs write them
    TriangleMesh box = Solids.box(Vec3.ZERO, new Vec3(20e-3, 10e-3, 5e-3));
    double[] corners =
        IntStream.range(0, 3 * box.triangleCount())
            .mapToObj(i -> box.vertex(box.corner(i / 3, i % 3)))
            .flatMapToDouble(p -> DoubleStream.of(p.x(), p.y(), p.z()))
            .toArray();
    TriangleMesh loose = new TriangleMesh(corners, IntStream.range(0, 36).toArray());

    assertHole(loose, "twelve triangles apart");
    assertEquals(1e-6, MeshRepair.prepare(loose, MeshRepair.WELD).mesh().volume(), 1e-15);
  }

  private static void assertHole(TriangleMesh mesh, String what) {
    String words = String.join("; ", MeshCheck.inspect(mesh).reasons());
    assertTrue(words.startsWith("not closed: "), what + ": " + words);
  }

  /** The triangles whose middle is as asked for. */
  private static TriangleMesh only(TriangleMesh m, Predicate<Vec3> middle) {
    int[] kept =
        IntStream.range(0, m.triangleCount())
            .filter(t -> middle.test(middle(m, t)))
            .flatMap(t -> IntStream.range(0, 3).map(c -> m.corner(t, c)))
            .toArray();
    return trimmed(m, kept);
  }

  private static Vec3 middle(TriangleMesh m, int t) {
    return m.vertex(m.corner(t, 0))
        .plus(m.vertex(m.corner(t, 1)))
        .plus(m.vertex(m.corner(t, 2)))
        .times(1 / 3.0);
  }

  /** With no corner that belongs to no triangle, as a file would give it. */
  private static TriangleMesh trimmed(TriangleMesh m, int[] corners) {
    int[] used = Arrays.stream(corners).distinct().sorted().toArray();
    double[] v = new double[3 * used.length];
    for (int i = 0; i < v.length; i++) {
      v[i] = m.coordinate(used[i / 3], i % 3);
    }
    int[] t = Arrays.stream(corners).map(c -> Arrays.binarySearch(used, c)).toArray();
    return new TriangleMesh(v, t);
  }

  /** Rounded to single precision of millimetres, as in an STL file. */
  private static TriangleMesh single(TriangleMesh m) {
    double[] v = Arrays.stream(m.copyVertices()).map(x -> 1e-3 * (float) (1e3 * x)).toArray();
    return new TriangleMesh(v, m.copyTriangles());
  }

  /** Half of its triangles turned round. */
  private static TriangleMesh turned(TriangleMesh m) {
    Random chance = new Random(5);
    int[] t = m.copyTriangles();
    for (int i = 0; i < t.length; i += 3) {
      if (chance.nextBoolean()) {
        int keep = t[i];
        t[i] = t[i + 1];
        t[i + 1] = keep;
      }
    }
    return new TriangleMesh(m.copyVertices(), t);
  }
}

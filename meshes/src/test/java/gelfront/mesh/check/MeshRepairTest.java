// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MeshRepairTest {
  private static final double BALL = Solids.sphere(Vec3.ZERO, 10e-3, 24).volume();

  @Test
  void soundMeshIsLeftAlone() {
    TriangleMesh ball = ball(10);

    PreparedMesh p = prepare(ball);

    assertEquals(MeshReport.Verdict.OK, p.report().verdict());
    assertTrue(p.repairs().isEmpty());
    assertEquals(BALL, p.mesh().volume());
  }

  @Test
  void shuffledWindingIsMadeToFaceOutwards() {
    TriangleMesh shuffled = turned(ball(10), new Random(7), 0.5);

    PreparedMesh p = prepare(shuffled);

    assertEquals(MeshReport.Winding.SHUFFLED, p.report().shells().get(0).winding());
    assertEquals(MeshReport.Verdict.WARNING, p.report().verdict());
    assertEquals(BALL, p.mesh().volume(), 1e-12 * BALL);
    assertEquals(1, p.repairs().size());
  }

  @Test
  void insideOutShellIsTurned() {
    TriangleMesh inverted = turned(ball(10), new Random(7), 1);

    PreparedMesh p = prepare(inverted);

    assertEquals(MeshReport.Winding.INWARD, p.report().shells().get(0).winding());
    assertEquals(BALL, p.mesh().volume(), 1e-12 * BALL);
  }

  @Test
  void shellWoundAgainstTheOneRoundItIsAVoid() {
    TriangleMesh hollow = ball(10).plus(turned(ball(5), new Random(7), 1));

    assertEquals(BALL * 7 / 8, prepare(hollow).mesh().volume(), 1e-9 * BALL);
    assertEquals(
        BALL * 7 / 8, prepare(turned(hollow, new Random(7), 1)).mesh().volume(), 1e-9 * BALL);
  }

  @Test
  void solidInAVoidStaysSolid() {
    TriangleMesh island = ball(2.5).plus(ball(10)).plus(turned(ball(5), new Random(7), 1));

    assertEquals(BALL * (1 - 1 / 8.0 + 1 / 64.0), prepare(island).mesh().volume(), 1e-9 * BALL);
  }

  @Test
  void shellWoundLikeTheOneRoundItIsSwallowed() {
    PreparedMesh p = prepare(ball(10).plus(ball(5)));

    assertEquals(BALL * 9 / 8, p.mesh().volume(), 1e-9 * BALL);
    assertEquals(1, p.report().overlaps().size());
  }

  @Test
  void ofMoreShellsThanAreExaminedTheReportSaysSo() {
    TriangleMesh many = Solids.sphere(Vec3.ZERO, 1e-3, 4);
    for (int i = 1; i < MeshCheck.MANY; i++) {
      many = many.plus(Solids.sphere(new Vec3(i * 3e-3, 0, 0), 1e-3, 4));
    }
    MeshReport examined = MeshCheck.inspect(many);
    MeshReport beyond = MeshCheck.inspect(many.plus(Solids.sphere(Vec3.ZERO, 2e-3, 4)));

    assertEquals(MeshReport.Verdict.OK, examined.verdict());
    assertEquals(MeshReport.Verdict.WARNING, beyond.verdict());
    assertTrue(beyond.overlapsUnknown() && beyond.overlaps().isEmpty());
    assertTrue(beyond.reasons().get(0).startsWith("201 shells: more than 200"), "told");
  }

  @Test
  void nestedShellsWithoutWindingAreRefused() {
    TriangleMesh unclear = ball(10).plus(turned(ball(5), new Random(7), 0.5));

    assertTrue(refusal(unclear).contains("does not tell whether it is a void"));
  }

  @Test
  void overlapIsToldOnlyWhereShellsMeet() {
    TriangleMesh near = ball(10).plus(at(Solids.sphere(Vec3.ZERO, 10e-3, 24), 19e-3, 0));
    // boxes meet, balls do not
    TriangleMesh aside = ball(10).plus(at(Solids.sphere(Vec3.ZERO, 10e-3, 24), 15e-3, 15e-3));

    assertEquals(1, MeshCheck.inspect(near).overlaps().size());
    assertEquals(0, MeshCheck.inspect(aside).overlaps().size());
  }

  @Test
  void smallOverlapOfFineMeshesIsSeen() {
    TriangleMesh fine = Solids.sphere(Vec3.ZERO, 10e-3, 96);
    TriangleMesh other = at(fine, 19.9e-3, 0);

    assertEquals(1, MeshCheck.inspect(fine.plus(other)).overlaps().size());
  }

  @Test
  void crackIsWeldedAndTold() {
    TriangleMesh cracked = cracked(ball(10), 4e-6);

    PreparedMesh p = prepare(cracked);

    assertTrue(p.report().openEdges() > 0);
    assertTrue(MeshCheck.inspect(p.mesh()).closed());
    assertTrue(p.repairs().get(0).startsWith("cracks of up to 0.010 mm welded"));
    assertEquals(BALL, p.mesh().volume(), 1e-3 * BALL);
  }

  @Test
  void wideCrackIsRefusedWithItsPlace() {
    String message = refusal(cracked(ball(10), 50e-6));

    assertTrue(message.matches("not closed: \\d+ open edges, the first at \\(.*\\) mm"), message);
  }

  @Test
  void missingTriangleIsAHoleOfThreeEdges() {
    TriangleMesh ball = ball(10);
    int[] t = ball.copyTriangles();
    TriangleMesh open = new TriangleMesh(ball.copyVertices(), Arrays.copyOf(t, t.length - 3));

    MeshReport r = MeshCheck.inspect(open);

    assertEquals(3, r.openEdges());
    assertEquals(1, r.holes());
    assertEquals(MeshReport.Verdict.REFUSED, r.verdict());
    assertTrue(refusal(open).startsWith("not closed: 3 open edges"));
  }

  @Test
  void repeatedAndEmptyTrianglesAreDropped() {
    TriangleMesh ball = ball(10);
    int[] t = ball.copyTriangles();
    int n = t.length;
    int[] more = Arrays.copyOf(t, n + 6);
    System.arraycopy(t, 30, more, n, 3);
    Arrays.fill(more, n + 3, n + 6, t[0]);

    PreparedMesh p = prepare(new TriangleMesh(ball.copyVertices(), more));

    assertEquals(1, p.report().duplicates());
    assertEquals(1, p.report().zeroArea());
    assertEquals(n / 3, p.mesh().triangleCount());
    assertEquals(1, p.repairs().size());
  }

  @Test
  void wallBetweenBodiesThatShareAFaceGoes() {
    TriangleMesh pair = twoBoxesWithASharedFace();

    PreparedMesh p = prepare(pair);

    assertEquals(2e-6, p.mesh().volume(), 1e-15);
    assertEquals(20, p.mesh().triangleCount());
  }

  @Test
  void flatAndEmptyMeshesAreRefused() {
    TriangleMesh flat = Solids.box(Vec3.ZERO, new Vec3(20e-3, 20e-3, 1e-12));
    double[] three = {0, 0, 0, 1, 0, 0, 0, 1, 0};

    assertTrue(refusal(flat).startsWith("a flat sheet without thickness"));
    assertEquals(
        "shell 2 encloses no volume, at (0.000, 0.000, 0.000) mm: in CAD give it thickness or leave"
            + " it out",
        refusal(at(ball(10), 40e-3, 0).plus(flat)));
    assertTrue(refusal(new TriangleMesh(three, new int[] {0, 0, 1})).contains("no volume"));
    assertTrue(refusal(new TriangleMesh(new double[0], new int[0])).contains("no triangles"));
  }

  @Test
  void oneSidedStripIsRefused() {
    // the six-vertex projective plane: closed, every edge twice, no inside
    int[] t = {
      0, 1, 2, 0, 2, 3, 0, 3, 4, 0, 4, 5, 0, 5, 1, 1, 2, 4, 2, 3, 5, 3, 4, 1, 4, 5, 2, 5, 1, 3
    };
    Random random = new Random(3);
    double[] v = random.doubles(18, 0, 0.02).toArray();

    MeshReport r = MeshCheck.inspect(new TriangleMesh(v, t));

    assertTrue(r.closed());
    assertTrue(r.reasons().contains("shell 1 has only one side: it encloses nothing"));
    assertEquals(MeshReport.Verdict.REFUSED, r.verdict());
  }

  @Test
  void fanOfManyTrianglesRoundOneCornerIsCounted() {
    TriangleMesh cone = Solids.cylinder(Vec3.ZERO, new Vec3(50e-3, 0, 0), 5e-3, 5e-3, 60_000);

    assertTrue(MeshCheck.inspect(cone).closed());
  }

  private static TriangleMesh ball(double radiusMm) {
    return Solids.sphere(Vec3.ZERO, radiusMm * 1e-3, 24);
  }

  private static PreparedMesh prepare(TriangleMesh mesh) {
    return MeshRepair.prepare(mesh, MeshRepair.WELD);
  }

  private static String refusal(TriangleMesh mesh) {
    return assertThrows(MeshException.class, () -> prepare(mesh)).getMessage();
  }

  /** Turns a share of the triangles round. */
  private static TriangleMesh turned(TriangleMesh m, Random random, double share) {
    int[] t = m.copyTriangles();
    for (int i = 0; i < t.length; i += 3) {
      if (random.nextDouble() < share) {
        int keep = t[i];
        t[i] = t[i + 1];
        t[i + 1] = keep;
      }
    }
    return new TriangleMesh(m.copyVertices(), t);
  }

  private static TriangleMesh at(TriangleMesh m, double x, double y) {
    double[] v = m.copyVertices();
    for (int i = 0; i < v.length; i += 3) {
      v[i] += x;
      v[i + 1] += y;
    }
    return new TriangleMesh(v, m.copyTriangles());
  }

  /** The second half of the triangles gets corners of its own, moved by {@code gap} along x. */
  private static TriangleMesh cracked(TriangleMesh m, double gap) {
    int n = m.vertexCount();
    double[] v = Arrays.copyOf(m.copyVertices(), 6 * n);
    for (int i = 0; i < 3 * n; i++) {
      v[3 * n + i] = v[i] + (i % 3 == 0 ? gap : 0);
    }
    int[] t = m.copyTriangles();
    for (int i = t.length / 6 * 3; i < t.length; i++) {
      t[i] += n;
    }
    return new TriangleMesh(v, t);
  }

  /** Two cubes of 10 mm along x, each whole, with the four corners between them in common. */
  private static TriangleMesh twoBoxesWithASharedFace() {
    TriangleMesh one = Solids.box(Vec3.ZERO, new Vec3(10e-3, 10e-3, 10e-3));
    double[] v = Arrays.copyOf(one.copyVertices(), 36);
    int[] t = Arrays.copyOf(one.copyTriangles(), 72);
    for (int i = 0; i < 12; i++) {
      v[24 + i] = v[12 + i] + (i % 3 == 0 ? 10e-3 : 0);
    }
    // mirrored in x = 10 mm: ring 0-3 becomes 8-11, ring 4-7 stays, winding turns
    for (int i = 0; i < 36; i += 3) {
      t[36 + i] = mirrored(t[i]);
      t[36 + i + 1] = mirrored(t[i + 2]);
      t[36 + i + 2] = mirrored(t[i + 1]);
    }
    return new TriangleMesh(v, t);
  }

  private static int mirrored(int vertex) {
    return vertex < 4 ? vertex + 8 : vertex;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshCheck;
import gelfront.mesh.shape.Solids;
import gelfront.result.Fields;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is made of a result before it is drawn. */
class ShownTest {
  private static final int N = 24;

  /** A ball of 20 mm that sets from its skin, 5 s, to its middle, 100 s; half of it pocket 1. */
  private static Fields ball() {
    int[] cells = new int[N * N * N];
    float[] set = new float[cells.length];
    short[] pocket = new short[cells.length];
    int n = 0;
    for (int c = 0; c < cells.length; c++) {
      double x = c % N - 11.5;
      double y = c / N % N - 11.5;
      int layer = c / N / N;
      double z = layer - 11.5;
      double r = Math.sqrt(x * x + y * y + z * z);
      if (r < 10) {
        cells[n] = c;
        pocket[n] = (short) (r < 5 ? 1 : 0);
        set[n++] = (float) (100 - 9.5 * r);
      }
    }
    float[] times = Arrays.copyOf(set, n);
    return new Fields(
        Vec3.ZERO,
        1e-3,
        N,
        N,
        N,
        Arrays.copyOf(cells, n),
        new byte[n],
        times,
        times.clone(),
        Arrays.copyOf(pocket, n),
        List.of());
  }

  @Test
  void texelsHoldTheCellsTimesAndReachTwoCellsOut() {
    CellGrid g = CellGrid.of(ball(), 100, 1_000_000, false, 3);
    VolumeTexels v = VolumeTexels.of(g, 100);

    int middle = g.index(g.nx() / 2, g.ny() / 2, g.nz() / 2);
    assertEquals(g.set()[middle] / 100, v.values()[4 * middle], 1e-6);
    assertEquals(1, v.values()[4 * middle + 2], 1e-6);
    assertEquals(26, g.nx());
    assertEquals(26, v.size().x(), 1e-9);
    int skin = g.index(3, g.ny() / 2, g.nz() / 2);
    int out = g.index(1, g.ny() / 2, g.nz() / 2);
    assertTrue(g.set()[skin] > 0 && g.set()[out] < 0);
    assertEquals(v.values()[4 * skin], v.values()[4 * out], 0.04, "near what lies beside it");
    assertTrue(v.values()[4 * out + 2] < 0.5, "and still no plastisol");
  }

  @Test
  void thickSpotsAreWhatIsMetOnTheWayIn() {
    Vec3 middle = new Vec3(12e-3, 12e-3, 12e-3);
    TriangleMesh ball = Solids.sphere(middle, 10e-3, 32);
    CellGrid g = CellGrid.of(ball(), 100, 1_000_000, false, 3);

    float[] share = ThickSpots.of(ball, g, 100);

    for (float s : share) {
      assertTrue(s > 0.85 && s <= 1, "all ways in meet the middle: " + s);
    }
  }

  @Test
  void aPocketsBodyIsClosedAndAsLargeAsItsCells() {
    TriangleMesh body = Blob.of(ball(), 1);

    assertTrue(MeshCheck.inspect(body).closed());
    double cells = 0;
    for (short p : ball().pocket()) {
      cells += p;
    }
    assertEquals(cells, body.volume() * 1e9, 0.12 * cells);
    assertEquals(0, Blob.of(ball(), 2).triangleCount());
  }

  @Test
  void edgesOfABoxStaySharpAndABallIsSmooth() {
    SkinMesh box = SkinMesh.of(Solids.box(Vec3.ZERO, new Vec3(1e-2, 1e-2, 1e-2)));
    for (int i = 0; i < box.normals().length; i += 3) {
      float[] n = box.normals();
      double most = Math.max(Math.abs(n[i]), Math.max(Math.abs(n[i + 1]), Math.abs(n[i + 2])));
      assertEquals(1, most, 1e-6, "square to a side");
    }
    SkinMesh ball = SkinMesh.of(Solids.sphere(Vec3.ZERO, 1e-2, 48));
    for (int i = 0; i < ball.normals().length; i += 3) {
      double along = 0;
      for (int a = 0; a < 3; a++) {
        along += ball.normals()[i + a] * ball.positions()[i + a] / 10;
      }
      assertEquals(1, along, 0.01);
    }
  }

  /** Corners where three faces meet, not diagonals of faces nor facets of a round. */
  @Test
  void aMouldIsDrawnByTheEdgesWhereItsFacesBend() {
    MouldShown box = MouldShown.of(Solids.box(Vec3.ZERO, new Vec3(10e-3, 20e-3, 30e-3)));
    assertEquals(12 * 6, box.edges().length);
    double sum = 0;
    for (int i = 0; i < box.edges().length; i += 6) {
      float[] e = box.edges();
      sum += new Vec3(e[i], e[i + 1], e[i + 2]).distance(new Vec3(e[i + 3], e[i + 4], e[i + 5]));
    }
    assertEquals(4 * (10 + 20 + 30), sum, 1e-3);
    assertEquals(new Vec3(10, 20, 30), box.extent().upper());

    Vec3 top = new Vec3(0, 0, 30e-3);
    MouldShown round = MouldShown.of(Solids.cylinder(Vec3.ZERO, top, 8e-3, 8e-3, 48));
    assertEquals(2 * 48 * 6, round.edges().length, "both rims");
  }

  @Test
  void faultsOfAMeshAreItsOpenAndItsFlippedEdges() {
    TriangleMesh box = Solids.box(Vec3.ZERO, new Vec3(1e-2, 1e-2, 1e-2));
    int[] t = box.copyTriangles();
    int[] open = Arrays.copyOf(t, t.length - 3);
    int[] flipped = t.clone();
    flipped[0] = t[1];
    flipped[1] = t[0];

    assertTrue(MeshFaults.of(box).none());
    MeshFaults hole = MeshFaults.of(new TriangleMesh(box.copyVertices(), open));
    assertEquals(3 * 6, hole.open().length);
    assertEquals(0, hole.flipped().length);
    MeshFaults wrong = MeshFaults.of(new TriangleMesh(box.copyVertices(), flipped));
    assertEquals(3 * 6, wrong.flipped().length);
    assertTrue(wrong.words().contains("inside out"));
  }
}

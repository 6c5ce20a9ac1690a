// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshRepair;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/** Halves as height fields: what the drawing takes away from the block is the cavity. */
class CavityFinderTest {
  private static final double R = 8e-3;
  private static final double SLIT = 0.2e-3;
  private static final double[] SIZE = {40e-3, 30e-3, 15e-3};
  private static final int CELLS = 120;

  /** A ball of 16 mm, a channel of 5 mm to the side +x, a vent of 2 mm to -x. */
  private static double depth(double x, double y) {
    double ball = Math.max(0, R * R - x * x - y * y);
    double channel = x > 0 ? Math.max(0, 2.5e-3 * 2.5e-3 - y * y) : 0;
    double vent = x < 0 ? Math.max(0, 1e-6 - y * y) : 0;
    return Math.sqrt(Math.max(ball, Math.max(channel, vent)));
  }

  @Test
  void ballWithChannelAndVentIsFound() {
    List<TriangleMesh> halves = halves(CavityFinderTest::depth, 0);

    MouldCavity c = CavityFinder.find(halves, 0.4e-3, SLIT, Optional.empty());

    Check.of("volume of a cavity found between two halves", "the block less its halves")
        .expected(volume(halves))
        .got(c.mesh().volume())
        .within(5e-3);
    assertEquals(20e-3, c.pour().centre().x(), 1e-12);
    assertEquals("+x", c.pour().side());
    assertEquals(5e-3, c.pour().diameter(), 0.3e-3);
    assertEquals(1, c.vents().size());
    assertEquals("-x", c.vents().get(0).side());
    assertEquals(List.of(), c.leftOut());
    assertTrue(MeshRepair.prepare(c.mesh(), 0).repairs().isEmpty(), "closed, wound outwards");
  }

  @Test
  void errorFallsWithTheSquareOfTheSpacing() {
    List<TriangleMesh> halves = halves(CavityFinderTest::depth, 0);
    double coarse = error(halves, 1.0e-3);
    double fine = error(halves, 0.5e-3);

    assertTrue(coarse < 0.03 && fine < 0.5 * coarse, coarse + ", " + fine);
  }

  private static double error(List<TriangleMesh> halves, double spacing) {
    double v = CavityFinder.find(halves, spacing, SLIT, Optional.empty()).mesh().volume();
    return Math.abs(v / volume(halves) - 1);
  }

  @Test
  void thinSlitsAtThePartingPlaneAreClosed() {
    List<TriangleMesh> apart = halves(CavityFinderTest::depth, 0.1e-3);

    MouldCavity c = CavityFinder.find(apart, 0.4e-3, SLIT, Optional.empty());

    assertEquals(volume(halves(CavityFinderTest::depth, 0)), c.mesh().volume(), 4e-8);
    assertEquals("+x", c.pour().side());
  }

  @Test
  void halvesThatStandApartAreRefused() {
    List<TriangleMesh> apart = halves(CavityFinderTest::depth, 1e-3);

    MeshException e =
        assertThrows(
            MeshException.class, () -> CavityFinder.find(apart, 0.4e-3, SLIT, Optional.empty()));

    assertTrue(e.getMessage().contains("do its parts stand apart"), e.getMessage());
  }

  @Test
  void dowelHolesAreLeftOutAndTheStatedOpeningCounts() {
    DoubleBinaryOperator both =
        (x, y) -> {
          double hole = 4e-6 - (x + 15e-3) * (x + 15e-3) - (y - 12e-3) * (y - 12e-3);
          return Math.max(depth(x, y), hole > 0 ? 3e-3 : 0);
        };
    List<TriangleMesh> halves = halves(both, 0);

    MouldCavity found = CavityFinder.find(halves, 0.4e-3, SLIT, Optional.empty());
    MouldCavity stated =
        CavityFinder.find(halves, 0.4e-3, SLIT, Optional.of(new Vec3(-20e-3, 0, 0)));

    assertEquals(1, found.leftOut().size());
    assertEquals("-x", stated.pour().side());
    assertEquals("+x", stated.vents().get(0).side());
  }

  @Test
  void aCavityWithoutAnOpeningIsRefused() {
    List<TriangleMesh> shut = halves((x, y) -> Math.sqrt(Math.max(0, R * R - x * x - y * y)), 0);

    MeshException e =
        assertThrows(
            MeshException.class, () -> CavityFinder.find(shut, 0.5e-3, SLIT, Optional.empty()));

    assertTrue(e.getMessage().contains("there is no pour opening"), e.getMessage());
  }

  @Test
  void spacingThatTakesTooManySamplesIsRefusedBeforeAnyIsMade() {
    List<TriangleMesh> halves = halves(CavityFinderTest::depth, 0);

    assertThrows(
        IllegalArgumentException.class,
        () -> CavityFinder.find(halves, 1e-9, SLIT, Optional.empty()));
  }

  /** What the block's box holds besides metal. */
  private static double volume(List<TriangleMesh> halves) {
    double metal = halves.stream().mapToDouble(TriangleMesh::volume).sum();
    return SIZE[0] * SIZE[1] * 2 * SIZE[2] - metal;
  }

  /** Two blocks of which the depth is taken away on both sides of z = 0, moved apart by a gap. */
  private static List<TriangleMesh> halves(DoubleBinaryOperator depth, double gap) {
    return List.of(half(depth, -1, -gap / 2), half(depth, 1, gap / 2));
  }

  private static TriangleMesh half(DoubleBinaryOperator depth, int side, double shift) {
    int n = CELLS + 1;
    double[] v = new double[2 * 3 * n * n];
    for (int i = 0; i < n * n; i++) {
      double x = SIZE[0] * ((double) (i % n) / CELLS - 0.5);
      int row = i / n;
      double y = SIZE[1] * ((double) row / CELLS - 0.5);
      double z = depth.applyAsDouble(x, y);
      put(v, i, x, y, side * z + shift);
      put(v, n * n + i, x, y, side * SIZE[2] + shift);
    }
    int[] t = new int[3 * 2 * (2 * CELLS * CELLS + 4 * CELLS)];
    int at = 0;
    for (int j = 0; j < CELLS; j++) {
      for (int i = 0; i < CELLS; i++) {
        int a = i + n * j;
        at = quad(t, at, side, a, a + n, a + n + 1, a + 1);
        at = quad(t, at, side, n * n + a, n * n + a + 1, n * n + a + n + 1, n * n + a + n);
      }
      at = wall(t, at, side, j, j + 1);
      at = wall(t, at, side, n * CELLS + j + 1, n * CELLS + j);
      at = wall(t, at, side, n * (j + 1), n * j);
      at = wall(t, at, side, n * j + CELLS, n * (j + 1) + CELLS);
    }
    return new TriangleMesh(v, t);
  }

  private static int wall(int[] t, int at, int side, int a, int b) {
    int n = (CELLS + 1) * (CELLS + 1);
    return quad(t, at, side, a, b, n + b, n + a);
  }

  private static int quad(int[] t, int at, int side, int a, int b, int c, int d) {
    int[] corners = side > 0 ? new int[] {a, b, c, a, c, d} : new int[] {a, c, b, a, d, c};
    System.arraycopy(corners, 0, t, at, 6);
    return at + 6;
  }

  private static void put(double[] v, int i, double x, double y, double z) {
    v[3 * i] = x;
    v[3 * i + 1] = y;
    v[3 * i + 2] = z;
  }
}

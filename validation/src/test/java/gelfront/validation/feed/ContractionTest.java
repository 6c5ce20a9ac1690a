// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.evidence.Check;
import gelfront.mesh.Vec3;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

/**
 * Resistance of a short round land between wider tubes, over Poiseuille's of the land alone,
 * against axisymmetric Stokes flow: FreeFem++ 4.11, P2-P1, short_contraction.edp; meshes n = 1 and
 * 2 agree within 0.1 %. Sampson's orifice (1891, from memory), 1 + 3 pi R / (8 L), gives 0 to 5 %
 * more where the tubes are three times as wide. Every cell is a block of its own, but where told.
 */
final class ContractionTest {
  private static final String STOKES = "axisymmetric Stokes flow by FreeFem++, feeding-rod.json";
  private static final Vec3 ALONG_X = new Vec3(1, 0, 0);
  private static final Vec3 INCLINED = new Vec3(0.8, 0.48, 0.36);

  /** Where the flow's course is settled to a per cent. */
  private static final int ROUNDS = 4;

  private static final double TENTH = 0.1;

  /** Bore, land, tubes' width and voxel, mm. */
  private static final double[][] LANDS = {
    {3, 3, 10, 0.35},
    {4, 3, 10, 0.4},
    {6, 6, 10, 0.7},
    {3, 6, 10, 0.4},
    {4, 1.5, 8, 0.45},
    {6, 3, 20, 0.6},
    {3, 1, 10, 0.35},
    {5, 2, 10, 0.55}
  };

  private static Contraction of(double bore, double land, double wide, double dx, Vec3 along) {
    return new Contraction(1e-3 * bore, 1e-3 * land, 1e-3 * wide, 1e-3 * dx, along, false);
  }

  /** Of the finest mesh. */
  private static double stokes(double bore, double land, double wide) throws IOException {
    try (InputStream in =
        ContractionTest.class.getResourceAsStream("/gelfront/validation/feeding-rod.json")) {
      double ratio = Double.NaN;
      for (JsonNode c : new ObjectMapper().readTree(in).get("short_contraction")) {
        if (c.get("far_side").asText().equals("tubes")
            && c.get("gate_mm").asDouble() == bore
            && c.get("land_mm").asDouble() == land
            && c.get("sprue_mm").asDouble() == wide) {
          ratio = c.get("resistance_over_poiseuille").asDouble();
        }
      }
      return ratio;
    }
  }

  private static Check check(double[] d, Vec3 along, String cells) {
    String aslant = along.equals(ALONG_X) ? "" : ", aslant";
    String land = "land " + d[0] + " x " + d[1] + " between " + d[2] + aslant + ", ";
    return Check.of(land + cells + ": resistance over Poiseuille's", STOKES);
  }

  private static void holds(
      double bore, double land, double wide, double dx, Vec3 along, double tolerance)
      throws IOException {
    Contraction c = of(bore, land, wide, dx, along);
    double want = stokes(bore, land, wide);
    String what =
        "land " + bore + " x " + land + " between " + wide + (along.y() == 0 ? "" : ", aslant");
    Check.of(what + ": resistance over Poiseuille's", STOKES)
        .expected(want)
        .got(c.resistance(ROUNDS))
        .within(tolerance);
    assertTrue(c.mostIterations() <= 8, "iterations " + c.mostIterations());
  }

  @Test
  void aLandAsLongAsItsBore() throws IOException {
    holds(3, 3, 10, 0.35, ALONG_X, TENTH);
    holds(4, 3, 10, 0.4, ALONG_X, TENTH);
    holds(6, 6, 10, 0.7, ALONG_X, TENTH);
  }

  @Test
  void aLongLand() throws IOException {
    holds(3, 6, 10, 0.4, ALONG_X, TENTH);
    holds(4, 6, 12, 0.5, ALONG_X, TENTH);
  }

  @Test
  void aShortLand() throws IOException {
    holds(4, 1.5, 8, 0.45, ALONG_X, TENTH);
    holds(6, 3, 20, 0.6, ALONG_X, TENTH);
    holds(3, 1, 10, 0.35, ALONG_X, TENTH);
  }

  /** No axis of the grid is the land's. */
  @Test
  void aslant() throws IOException {
    holds(3, 3, 10, 0.4, INCLINED, TENTH);
    holds(3, 1, 10, 0.35, INCLINED, TENTH);
    holds(5, 2, 10, 0.55, INCLINED, TENTH);
    holds(4, 6, 12, 0.5, INCLINED, TENTH);
  }

  /** Known miss: 3.6 cells of land, of which three middles lie in it, are 15 % too easy. */
  @Test
  void aLandOfThreeCellsAlongTheGridIsWithinAFifth() throws IOException {
    holds(5, 2, 10, 0.55, ALONG_X, 2 * TENTH);
  }

  /** The first round knows of no course: w is inflated by the wide ends. */
  @Test
  void withoutACourseResistanceIsHalfOfStokes() throws IOException {
    double alone = of(3, 3, 10, 0.4, ALONG_X).resistance(1);
    assertTrue(alone < 0.55 * stokes(3, 3, 10), "first round " + alone);
  }

  /** As the tool calculates them: in cubes of up to eight cells, fine ones in and near the land. */
  @Test
  void onBlocks() throws IOException {
    for (Vec3 along : new Vec3[] {ALONG_X, INCLINED}) {
      for (double[] d : LANDS) {
        boolean threeCells = d[0] == 5 && along.equals(ALONG_X);
        Contraction c =
            new Contraction(1e-3 * d[0], 1e-3 * d[1], 1e-3 * d[2], 1e-3 * d[3], along, true);
        double want = stokes(d[0], d[1], d[2]);
        double tolerance = threeCells ? 1.2 * TENTH : TENTH;
        check(d, along, "on blocks").expected(want).got(c.resistance(ROUNDS)).within(tolerance);
      }
    }
  }

  /** As the tool calculates gates: small cells in and about the land, voxels of twice the edge. */
  @Test
  void inCellsOfTwoSizes() throws IOException {
    for (Vec3 along : new Vec3[] {ALONG_X, INCLINED}) {
      for (double[] d : LANDS) {
        Contraction c =
            new Contraction(1e-3 * d[0], 1e-3 * d[1], 1e-3 * d[2], 1e-3 * d[3], 2, along, true);
        double want = stokes(d[0], d[1], d[2]);
        check(d, along, "two sizes").expected(want).got(c.resistance(ROUNDS)).within(TENTH);
      }
    }
  }

  /** Nothing narrows or turns in a straight tube: it keeps the resistance that it had. */
  @Test
  void aStraightTubeStaysPoiseuilles() {
    Contraction tube = of(6, 30, 6, 0.5, INCLINED);
    double first = tube.resistance(1);
    assertEquals(1, first, 0.05);
    assertEquals(first, tube.resistance(ROUNDS), 0.02);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import gelfront.grid.Cavity;
import gelfront.linear.Graph;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class SuctionTest {
  private static final int LENGTH = 40;
  private static final int ACROSS = 6;
  private static final double W = 1e-9;

  private final Cavity cavity = Tube.of(LENGTH, ACROSS);
  private final int n = cavity.count();
  private final Suction suction = new Suction(cavity);
  private final boolean[] flowing = new boolean[n];
  private final Liquid liquid = new Liquid(cavity, false);
  private final double[] w = filled(W);

  @BeforeEach
  void allFlows() {
    Arrays.fill(flowing, true);
    liquid.update(flowing);
  }

  private double[] filled(double value) {
    double[] a = new double[n];
    Arrays.fill(a, value);
    return a;
  }

  private double entered() {
    double sum = 0;
    for (int c = 0; c < n; c++) {
      sum += suction.entering(c);
    }
    return sum;
  }

  /** Even draw s per volume in a bar of length L, closed at its end: q = s / w (L x - x^2 / 2). */
  @Test
  void aStiffSkinLeavesTheParabolaOfAnEvenDraw() {
    double perVolume = 1e-4;
    suction.solve(
        liquid, flowing, w, filled(perVolume * cavity.cubeVolume(0)), new Suction.Skin(1e9, 2e9));
    double length = LENGTH * Tube.DX;
    double most = perVolume / W * 0.5 * length * length;
    Check parabola = Check.of("suction along an evenly drawn bar", "closed form, a parabola");
    for (int c = 0; c < n; c++) {
      double x = cavity.grid().centre(0, cavity.grid().position(c, 0));
      double exact = perVolume / W * (length * x - 0.5 * x * x);
      parabola.at(x).expected(exact).got(suction.suction()[c]);
    }
    parabola.within(2e-3, most);
    assertEquals(perVolume * cavity.volume(), entered(), 1e-4 * perVolume * cavity.volume());
  }

  @Test
  void volumesAddUpTheLawHoldsAndSuctionStaysBelowWhereTheSkinGivesAll() {
    Suction.Skin skin = Suction.Skin.of(500, 0);
    for (double perVolume : new double[] {1e-5, 1e-3, 1e-2, 1e-4}) {
      double[] draw = filled(perVolume * cavity.cubeVolume(0));
      draw[n - 1] = 0;
      suction.solve(liquid, flowing, w, draw, skin);
      double all = Arrays.stream(draw).sum();
      double given = Arrays.stream(suction.given()).sum();
      assertEquals(all, given + entered(), 1e-4 * all);
      assertTrue(suction.passes() <= 8, "passes " + suction.passes());
      for (int c = 0; c < n; c++) {
        double q = suction.suction()[c];
        assertTrue(q <= skin.to() * 1.001, "suction " + q);
        double law = draw[c] * Math.max(0, (q - skin.from()) / (skin.to() - skin.from()));
        assertEquals(law, suction.given()[c], 1e-3 * all);
      }
    }
  }

  /** The skin feels the plunger; the balance is as tight with it as without. */
  @Test
  void aPlungerFeedsWhatSuctionAloneDoesNot() {
    double[] draw = filled(1e-3 * cavity.cubeVolume(0));
    double all = Arrays.stream(draw).sum();
    suction.solve(liquid, flowing, w, draw, Suction.Skin.of(500, 0));
    double alone = entered();
    suction.solve(liquid, flowing, w, draw, Suction.Skin.of(500, 50e3));
    assertTrue(alone < 0.9 * all, "alone " + alone / all);
    assertEquals(all, entered(), 1e-4 * all);
    draw = filled(1 * cavity.cubeVolume(0));
    all = Arrays.stream(draw).sum();
    suction.solve(liquid, flowing, w, draw, Suction.Skin.of(500, 50e3));
    double given = Arrays.stream(suction.given()).sum();
    assertTrue(given > 0.1 * all, "given " + given / all);
    assertEquals(all, given + entered(), 1e-4 * all);
  }

  @Test
  void whatFlowsOutOfACellFlowsIntoTheNext() {
    suction.solve(liquid, flowing, w, filled(1e-10), Suction.Skin.of(500, 0));
    Graph graph = liquid.blocks().graph;
    double[] along = new double[graph.edges()];
    for (int b = 0; b < n; b++) {
      for (int k = graph.start()[b]; k < graph.start()[b + 1]; k++) {
        along[graph.edge()[k]] += suction.through(b, k);
      }
    }
    assertArrayEquals(new double[along.length], along, 0);
  }

  /** Two of three cells empty: the surface stands there, and what is above takes no part. */
  @Test
  void belowASunkenSurfaceTheWayIsShorter() {
    boolean[] empty = new boolean[n];
    for (int c = 0; c < n; c++) {
      empty[c] = cavity.grid().position(c, 0) < 20;
      flowing[c] = !empty[c];
    }
    liquid.update(flowing);
    double[] draw = new double[liquid.count()];
    double[] mobility = new double[liquid.count()];
    Arrays.fill(draw, 1e-4 * cavity.cubeVolume(0));
    Arrays.fill(mobility, W);
    double[] head = new double[draw.length];
    suction.solve(liquid, flowing, empty, mobility, draw, head, new Suction.Skin(1e9, 2e9));
    double length = 20 * Tube.DX;
    double most = 1e-4 / W * 0.5 * length * length;
    double deepest = Arrays.stream(suction.suction()).max().orElseThrow();
    Check.of("suction at the end of a bar half empty", "closed form, a parabola")
        .expected(most)
        .got(deepest)
        .within(3e-3);
  }

  /** What weighs on the liquid must be overcome as well before the skin gives. */
  @Test
  void headHelpsTheSkin() {
    double[] draw = filled(1e-3 * cavity.cubeVolume(0));
    double all = Arrays.stream(draw).sum();
    boolean[] none = new boolean[n];
    suction.solve(liquid, flowing, none, w, draw, filled(0), Suction.Skin.of(500, 0));
    double alone = entered();
    suction.solve(liquid, flowing, none, w, draw, filled(50e3), Suction.Skin.of(500, 0));
    assertTrue(alone < 0.9 * all);
    assertEquals(all, entered(), 1e-4 * all);
  }
}

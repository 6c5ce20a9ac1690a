// SPDX-License-Identifier: Apache-2.0
package gelfront.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class HeatCurvesTest {
  private static final double[] LEVEL = {0.15};
  private static final double[] ANY = {25};

  /** A random rising curve. */
  private static HeatCurves random(int nodes, Random r) {
    double[] t = new double[nodes];
    double[] h = new double[nodes];
    for (int i = 0; i < nodes; i++) {
      t[i] = i == 0 ? -40 + 20 * r.nextDouble() : t[i - 1] + 0.1 + 30 * r.nextDouble();
      h[i] = i == 0 ? -1e8 : h[i - 1] + 1e3 + 1e8 * r.nextDouble();
    }
    return new HeatCurves(t, h, ANY, LEVEL);
  }

  /** Both ways of searching: few nodes are walked through, many are halved. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 8, 9, 40})
  void temperatureAndEnthalpyAreInversesInsideAndBeyondTheEnds(int nodes) {
    Random r = new Random(nodes);
    HeatCurves c = random(nodes, r);
    double last = Double.NEGATIVE_INFINITY;
    for (double t = -300; t < 1500; t += 0.37) {
      double h = c.enthalpy(t);

      assertTrue(h > last, "rises");
      assertEquals(t, c.temperature(h), 1e-9);
      last = h;
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 12})
  void slopeIsThatOfTheSegmentAndOfTheOneBelowAtACorner(int nodes) {
    double[] t = new double[nodes];
    double[] h = new double[nodes];
    for (int i = 0; i < nodes; i++) {
      t[i] = 10 * i;
      h[i] = 5.0 * i * (i + 1); // slopes 1, 2, 3, ...
    }
    HeatCurves c = new HeatCurves(t, h, ANY, LEVEL);

    for (int i = 1; i < nodes; i++) {
      assertEquals(i, c.slope(10 * i - 5), 1e-12);
      assertEquals(i, c.slope(10 * i), 1e-12);
      assertEquals(h[i], c.enthalpy(t[i]), 1e-9);
      assertEquals(t[i], c.temperature(h[i]), 1e-12);
    }
    assertEquals(1, c.slope(-50));
    assertEquals(nodes - 1, c.slope(1e4), 1e-12);
  }

  /** Between any two temperatures across the gel range the curve gives off rho (c dT + L). */
  @ParameterizedTest
  @ValueSource(strings = {"soft", "medium", "firm"})
  void latentHeatIsSetFreeOverTheGelRangeAndNowhereElse(String grade) {
    Plastisol p = MaterialTable.builtIn().plastisol(grade);
    HeatCurves c = HeatCurves.of(p);
    double rho = (p.densityCold() + p.densityHot()) / 2;
    double sensible = rho * p.specificHeat();

    double whole = c.enthalpy(165) - c.enthalpy(25);
    double half = c.enthalpy(p.noFlow()) - c.enthalpy(p.gelEnd());

    assertEquals(rho * (p.specificHeat() * 140 + p.latentHeat()), whole, 1e-12 * whole);
    assertEquals(sensible * 10 + rho * p.latentHeat() / 2, half, 1e-12 * whole);
    assertEquals(sensible, c.slope(p.gelEnd() - 1), 1e-9 * sensible);
    assertEquals(sensible, c.slope(p.gelStart() + 1), 1e-9 * sensible);
    assertEquals(sensible, c.slope(-200), 1e-9 * sensible);
    assertEquals(sensible, c.slope(500), 1e-9 * sensible);
    assertTrue(c.constantConductivity());
    assertEquals(p.conductivity(), c.conductivity(100));
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 12})
  void conductivityIsInterpolatedAndLevelBeyondItsEnds(int nodes) {
    double[] t = new double[nodes];
    double[] k = new double[nodes];
    Arrays.setAll(t, i -> 10.0 * i);
    Arrays.setAll(k, i -> 0.1 + 0.02 * i);
    HeatCurves c = new HeatCurves(new double[] {0, 1}, new double[] {0, 1}, t, k);

    assertFalse(c.constantConductivity());
    for (double x = 0; x <= t[nodes - 1]; x += 0.7) {
      assertEquals(0.1 + 0.002 * x, c.conductivity(x), 1e-14);
    }
    assertEquals(0.1, c.conductivity(-100));
    assertEquals(k[nodes - 1], c.conductivity(1e3));
  }

  @Test
  void callersArraysStayTheirOwn() {
    double[] h = {0, 1};
    HeatCurves c = new HeatCurves(new double[] {0, 1}, h, ANY, LEVEL);
    h[1] = 7;

    assertEquals(1, c.enthalpy(1));
  }

  @Test
  void curvesThatCantBeInvertedAreRefused() {
    double[] two = {0, 1};
    double inf = Double.POSITIVE_INFINITY;
    refused(new double[] {1, 0}, two, ANY, LEVEL);
    refused(two, new double[] {0, 0}, ANY, LEVEL);
    refused(two, new double[] {Double.NaN, 1}, ANY, LEVEL);
    refused(two, new double[] {0, inf}, ANY, LEVEL);
    refused(two, new double[] {0, 1, 2}, ANY, LEVEL);
    refused(new double[] {0}, new double[] {0}, ANY, LEVEL);
    refused(two, two, new double[] {}, new double[] {});
    refused(two, two, two, LEVEL);
    refused(two, two, ANY, new double[] {0});
    refused(two, two, ANY, new double[] {Double.NaN});
  }

  private static void refused(double[] t, double[] h, double[] kt, double[] k) {
    assertThrows(IllegalArgumentException.class, () -> new HeatCurves(t, h, kt, k));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.heat;

import gelfront.evidence.Check;
import gelfront.material.HeatCurves;
import gelfront.mesh.Vec3;
import gelfront.validation.exact.FreezingRange;
import gelfront.validation.exact.Neumann;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Setting from a wall held cold: sharp fronts (Neumann; Carslaw and Jaeger ch. XI, Crank pp.
 * 102-103) and latent heat over a range (Carslaw and Jaeger ch. XI, Tien and Geiger).
 */
class FreezingTest {
  private static final String NEUMANN = "Neumann; Carslaw and Jaeger ch. XI, Crank pp. 102-103";
  private static final double WALL = 40;
  private static final double START = 165;
  private static final double TIME = 60;

  /** Latent heat between two temperatures. */
  private static HeatCurves curves(double latent, double set, double liquid) {
    double c = Bodies.C;
    return new HeatCurves(
        new double[] {0, set, liquid, 200},
        new double[] {0, set * c, liquid * c + latent, 200 * c + latent},
        new double[] {25},
        new double[] {Bodies.K});
  }

  private static double worst(HeatCurves curves, double dx, Exact exact) {
    int n = (int) Math.round(24e-3 / dx);
    Bodies.Run run = Bodies.run(Column.held(n, dx, WALL), new Vec3(dx, 0, 0), curves, TIME);
    double most = 0;
    for (int i = 0; i < n; i++) {
      double x = (i + 0.5) * dx;
      double miss = run.state().temperature[i] - exact.at(x, run.state().time);
      most = Math.max(most, Math.abs(miss));
    }
    return most;
  }

  @FunctionalInterface
  private interface Exact {
    double at(double x, double t);
  }

  @ParameterizedTest
  @ValueSource(doubles = {5e6, 2e7})
  void settingOverARange(double latent) {
    FreezingRange exact = new FreezingRange(Bodies.K, Bodies.C, latent, WALL, 80, 120, START);
    HeatCurves curves = curves(latent, 80, 120);

    double coarse = worst(curves, 0.4e-3, exact::temperature);
    double fine = worst(curves, 0.1e-3, exact::temperature);

    String name = "setting over a range, latent " + latent + " J/m3, worst K, ";
    String source = "Carslaw and Jaeger ch. XI, Tien and Geiger";
    Check.of(name + "0.4 mm", source).expected(0).got(coarse).within(4e-4, START - WALL);
    Check.of(name + "0.1 mm", source).expected(0).got(fine).within(6e-5, START - WALL);
  }

  @ParameterizedTest
  @CsvSource({"0, 0.003", "5e6, 0.005", "2e7, 0.01"})
  void sharpFront(double latent, double share) {
    Neumann exact = new Neumann(Bodies.K, Bodies.C, Bodies.K, Bodies.C, latent, WALL, 110, START);

    double fine = worst(curves(latent, 109.5, 110.5), 0.1e-3, exact::temperature);

    Check.of("sharp front, latent " + latent + " J/m3, worst K", NEUMANN)
        .expected(0)
        .got(fine)
        .within(share, START - WALL);
  }

  /** Heat drawn out of the liquid by time t: k (Tm - Tw) / (erf lambda sqrt(pi alpha t)) summed. */
  @Test
  void heatThatASharpFrontGivesOff() {
    Neumann exact = new Neumann(Bodies.K, Bodies.C, Bodies.K, Bodies.C, 2e7, WALL, 110, START);
    double dx = 0.1e-3;
    Bodies.Run run =
        Bodies.run(Column.held(240, dx, WALL), new Vec3(dx, 0, 0), curves(2e7, 109.5, 110.5), TIME);
    double t = run.state().time;
    double x = 1e-9;
    double slope = (exact.temperature(x, t) - WALL) / x;

    double heat = -run.state().ledger.plastisolGain() / (dx * dx);

    Check.of("heat that a sharp front gives off, J/m2", NEUMANN)
        .expected(2 * Bodies.K * slope * t)
        .got(heat)
        .within(0.005);
  }

  /** Ice on water: conductivity and heat capacity differ by phase; melting over 0.2 K. */
  @Test
  void iceOnWater() {
    double half = 0.1;
    HeatCurves h =
        new HeatCurves(
            new double[] {-30, -half, half, 30},
            new double[] {-(30 - half) * 2.1e6, 0, 3.33e8, 3.33e8 + (30 - half) * 4.2e6},
            new double[] {-half, half},
            new double[] {2.22, 0.56});
    Neumann exact = new Neumann(2.22, 2.1e6, 0.56, 4.2e6, 3.33e8, -10, 0, 5);

    Bodies.Run run = Bodies.run(Column.held(160, 0.5e-3, -10), new Vec3(5.25e-3, 0, 0), h, 5, 3600);

    double t = run.state().time;
    Check check = Check.of("ice growing into water, degC", NEUMANN);
    for (int i : new int[] {5, 10, 20, 30}) {
      double x = (i + 0.5) * 0.5e-3;
      check.at(1e3 * x).expected(exact.temperature(x, t)).got(run.state().temperature[i]);
    }
    check.plot("mm", "°C").within(0.01, 15);
    int front = 0;
    while (run.state().temperature[front] < 0) {
      front++;
    }
    Check.of("ice growing into water, front, mm, to one cell", NEUMANN)
        .expected(1e3 * exact.front(t))
        .got(front * 0.5)
        .within(1, 0.5);
  }
}

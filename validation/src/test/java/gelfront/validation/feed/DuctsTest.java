// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.feed;

import gelfront.evidence.Check;
import gelfront.grid.Cavity;
import gelfront.material.ViscosityCurve;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * Flow through straight ducts against Poiseuille numbers that agree with Shah and London, Laminar
 * Flow Forced Convection in Ducts (1978), as remembered; circle and triangle are closed forms.
 */
final class DuctsTest {
  /** Smaller dimension of each section, m. */
  private static final double D = 8e-3;

  /** Off the grid's planes, so that walls lie anywhere in a cell. */
  private static final double ODD = 0.3;

  private static final double PER_CENT = 0.01;

  private static final String SHAH = "Shah and London 1978, as remembered";

  @Test
  void circle() {
    holds("circle", 0.0245436926 * Math.pow(D, 4), PER_CENT, dx -> Ducts.round(D / 2, dx));
  }

  @Test
  void square() {
    holds("square", 0.03514425 * Math.pow(D, 4), PER_CENT, dx -> Ducts.cavity(rectangle(D), dx));
  }

  @Test
  void rectangles() {
    double d4 = Math.pow(D, 4);
    holds(
        "rectangle 2 : 1", 2 * 0.05717042 * d4, PER_CENT, dx -> Ducts.cavity(rectangle(2 * D), dx));
    holds(
        "rectangle 3 : 1", 3 * 0.06582923 * d4, PER_CENT, dx -> Ducts.cavity(rectangle(3 * D), dx));
    holds(
        "rectangle 4 : 1", 4 * 0.07020324 * d4, PER_CENT, dx -> Ducts.cavity(rectangle(4 * D), dx));
  }

  @Test
  void equilateralTriangle() {
    double side = 2 * D / Math.sqrt(3);
    List<double[]> corners =
        List.of(
            new double[] {-side / 2, -D / 3},
            new double[] {side / 2, -D / 3},
            new double[] {0, 2 * D / 3});
    holds(
        "equilateral triangle",
        0.0054126588 * Math.pow(side, 4),
        PER_CENT,
        dx -> Ducts.cavity(corners, dx));
  }

  /** 16 cells across its diameter are 8 across its height. */
  @Test
  void semicircle() {
    List<double[]> corners = new ArrayList<>();
    for (int i = 0; i <= 256; i++) {
      double a = Math.PI * i / 256;
      corners.add(new double[] {D / 2 * Math.cos(a), D / 2 * Math.sin(a)});
    }
    holds(
        "semicircle",
        0.07438920 * Math.pow(D / 2, 4),
        2 * PER_CENT,
        dx -> Ducts.cavity(corners, dx));
  }

  private static List<double[]> rectangle(double wide) {
    return List.of(
        new double[] {-wide / 2, -D / 2},
        new double[] {wide / 2, -D / 2},
        new double[] {wide / 2, D / 2},
        new double[] {-wide / 2, D / 2});
  }

  private static void holds(
      String shape, double exact, double tolerance, DoubleFunction<Cavity> duct) {
    Check check = Check.of("flow through a duct: " + shape + ", 16 across", SHAH);
    for (double shift : new double[] {0, ODD}) {
      check.expected(exact).got(Ducts.flow(duct.apply(D / (16 + shift))));
    }
    check.within(tolerance);
  }

  /** The mean over several placings: how a wall falls among the cells is noise of its own. */
  @Test
  void errorsFallWithTheSquareOfTheSpacing() {
    double exact = 0.03514425 * Math.pow(D, 4);
    double coarse = error(exact, 10);
    double fine = error(exact, 30);
    double order = Math.log(coarse / fine) / Math.log(3);
    Check.of("square duct, order of the error in the spacing", SHAH)
        .expected(2)
        .got(order)
        .within(0.125);
  }

  private static double error(double exact, int across) {
    double sum = 0;
    for (double shift = 0.05; shift < 1; shift += 0.1) {
      double dx = D / (across + shift);
      sum += Math.abs(Ducts.flow(Ducts.cavity(rectangle(D), dx)) / exact - 1);
    }
    return sum / 10;
  }

  /** A round tube left open in a set shell: the wall is the no-flow isotherm, 0 °C here. */
  @Test
  void whatHasSetIsAWallAtItsIsotherm() {
    double open = 4e-3;
    double exact = Math.PI * Math.pow(open, 4) / 8;
    ViscosityCurve one = new ViscosityCurve(new double[] {100}, new double[] {0});
    Cavity tube = Ducts.round(1.5 * open, 2 * open / 16);
    double q = Ducts.flow(tube, one, (y, z) -> 100 * (1 - Math.hypot(y, z) / open));
    Check.of("tube left open in a set shell", "Hagen and Poiseuille")
        .expected(exact)
        .got(q)
        .within(PER_CENT);
  }

  /**
   * Round tube, eta = exp(k r^2 / R^2) Pa s: Q / G = pi / 2 integral of r^3 / eta dr = pi R^4 / (4
   * k^2) (1 - (1 + k) exp(-k)).
   */
  @Test
  void viscosityRisingFiveDecadesToTheWall() {
    double decades = 5;
    double k = decades * Math.log(10);
    double radius = D / 2;
    double exact = Math.PI * Math.pow(radius, 4) / (4 * k * k) * (1 - (1 + k) * Math.exp(-k));
    ViscosityCurve curve = new ViscosityCurve(new double[] {100, 200}, new double[] {decades, 0});
    String name = "tube, viscosity rising five decades to the wall, ";
    String source = "closed integral in the test";
    double at8 = tube(radius, curve, 8);
    Check.of(name + "8 across", source).expected(exact).got(at8).within(0.005);
    double at16 = tube(radius, curve, 16);
    Check.of(name + "16 across", source).expected(exact).got(at16).within(0.001);
  }

  private static double tube(double radius, ViscosityCurve curve, int across) {
    return Ducts.flow(
        Ducts.round(radius, 2 * radius / across),
        curve,
        (y, z) -> 200 - 100 * Math.min(1, (y * y + z * z) / (radius * radius)));
  }
}

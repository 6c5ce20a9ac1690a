package gelfront.validation.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

  @Test
  void circle() {
    holds(0.0245436926 * Math.pow(D, 4), PER_CENT, dx -> Ducts.round(D / 2, dx));
  }

  @Test
  void square() {
    holds(0.03514425 * Math.pow(D, 4), PER_CENT, dx -> Ducts.cavity(rectangle(D), dx));
  }

  @Test
  void rectangles() {
    double d4 = Math.pow(D, 4);
    holds(2 * 0.05717042 * d4, PER_CENT, dx -> Ducts.cavity(rectangle(2 * D), dx));
    holds(3 * 0.06582923 * d4, PER_CENT, dx -> Ducts.cavity(rectangle(3 * D), dx));
    holds(4 * 0.07020324 * d4, PER_CENT, dx -> Ducts.cavity(rectangle(4 * D), dx));
  }

  @Test
  void equilateralTriangle() {
    double side = 2 * D / Math.sqrt(3);
    List<double[]> corners =
        List.of(
            new double[] {-side / 2, -D / 3},
            new double[] {side / 2, -D / 3},
            new double[] {0, 2 * D / 3});
    holds(0.0054126588 * Math.pow(side, 4), PER_CENT, dx -> Ducts.cavity(corners, dx));
  }

  /** 16 cells across its diameter are 8 across its height. */
  @Test
  void semicircle() {
    List<double[]> corners = new ArrayList<>();
    for (int i = 0; i <= 256; i++) {
      double a = Math.PI * i / 256;
      corners.add(new double[] {D / 2 * Math.cos(a), D / 2 * Math.sin(a)});
    }
    holds(0.07438920 * Math.pow(D / 2, 4), 2 * PER_CENT, dx -> Ducts.cavity(corners, dx));
  }

  private static List<double[]> rectangle(double wide) {
    return List.of(
        new double[] {-wide / 2, -D / 2},
        new double[] {wide / 2, -D / 2},
        new double[] {wide / 2, D / 2},
        new double[] {-wide / 2, D / 2});
  }

  private static void holds(double exact, double tolerance, DoubleFunction<Cavity> duct) {
    for (double shift : new double[] {0, ODD}) {
      double q = Ducts.flow(duct.apply(D / (16 + shift)));
      assertEquals(exact, q, tolerance * exact);
    }
  }

  /** The mean over several placings: how a wall falls among the cells is noise of its own. */
  @Test
  void errorsFallWithTheSquareOfTheSpacing() {
    double exact = 0.03514425 * Math.pow(D, 4);
    double coarse = error(exact, 10);
    double fine = error(exact, 30);
    double order = Math.log(coarse / fine) / Math.log(3);
    assertEquals(2, order, 0.25, coarse + " and " + fine);
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
    assertEquals(exact, q, PER_CENT * exact);
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
    double at8 = tube(radius, curve, 8) / exact - 1;
    double at16 = tube(radius, curve, 16) / exact - 1;
    assertTrue(Math.abs(at8) < 0.005, "8: " + at8);
    assertTrue(Math.abs(at16) < 0.001, "16: " + at16);
  }

  private static double tube(double radius, ViscosityCurve curve, int across) {
    return Ducts.flow(
        Ducts.round(radius, 2 * radius / across),
        curve,
        (y, z) -> 200 - 100 * Math.min(1, (y * y + z * z) / (radius * radius)));
  }
}

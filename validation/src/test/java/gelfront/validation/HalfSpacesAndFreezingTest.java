package gelfront.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.material.HeatCurves;
import gelfront.state.ThermalState;
import gelfront.validation.exact.FreezingRange;
import gelfront.validation.exact.HalfSpaces;
import gelfront.validation.exact.Neumann;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contact of two half-spaces (Carslaw and Jaeger ch. II), Neumann's two-phase solution (Crank, Free
 * and Moving Boundary Problems, pp. 102-103) and freezing over a range (Carslaw and Jaeger ch. XI;
 * textbook homes from memory), each evaluated from its closed form.
 */
class HalfSpacesAndFreezingTest {
  @ParameterizedTest
  @CsvSource({"2000", "1e9"})
  void plastisolAgainstAluminiumAndAgainstResin(double conductance) {
    double c = 1.9e6;
    HeatCurves h =
        new HeatCurves(
            new double[] {0, 200},
            new double[] {0, 200 * c},
            new double[] {25},
            new double[] {0.15});
    double[][] moulds = {{167, 2700 * 896, 1e-3}, {0.2, 1170 * 1350, 0.05e-3}};
    for (double[] m : moulds) {
      HalfSpaces exact =
          new HalfSpaces(
              new HalfSpaces.Body(0.15, c, 165), new HalfSpaces.Body(m[0], m[1], 30), conductance);
      Column column = Column.against(30, conductance, 200, 0.05e-3, 300, m[2], m[0], m[1]);
      ThermalState s = column.start(h, 165);

      Column.run(s, column.stepper(h), 5, 1e-3, 0.02);

      for (int cell = 0; cell < 60; cell += 6) {
        assertEquals(exact.inFirst(column.place(cell), 5), s.temperature[cell], 0.4, "plastisol");
      }
      assertEquals(exact.inSecond(0.5 * m[2], 5), s.mould[0], 0.4, "mould");
    }
  }

  /** Ice and water: k and c differ by phase; the melting range is narrowed to 0.2 K. */
  @Test
  void neumannsIceFront() {
    double cs = 2.1e6;
    double cl = 4.2e6;
    double latent = 3.33e8;
    double half = 0.1;
    HeatCurves h =
        new HeatCurves(
            new double[] {-30, -half, half, 30},
            new double[] {-(30 - half) * cs, 0, latent, latent + (30 - half) * cl},
            new double[] {-half, half},
            new double[] {2.22, 0.56});
    Neumann exact = new Neumann(2.22, cs, 0.56, cl, latent, -10, 0, 5);
    Column column = Column.against(-10, 1e9, 160, 0.5e-3);
    ThermalState s = column.start(h, 5);

    Column.run(s, column.stepper(h), 3600, 0.5, 0.002);

    assertEquals(0.02051006, exact.front(3600), 1e-7);
    assertEquals(exact.temperature(5e-3, 3600), column.at(s, 5e-3), 0.15);
    assertEquals(exact.temperature(10e-3, 3600), column.at(s, 10e-3), 0.15);
    double front = 0;
    for (int i = 0; i + 1 < s.temperature.length; i++) {
      if (s.temperature[i] < 0 && s.temperature[i + 1] >= 0) {
        front =
            column.place(i)
                + 0.5e-3 * -s.temperature[i] / (s.temperature[i + 1] - s.temperature[i]);
      }
    }
    assertEquals(exact.front(3600), front, 0.5e-3);
  }

  @ParameterizedTest
  @CsvSource({"5e6", "2e7"})
  void plastisolGellingBetween80And120(double latent) {
    double c = 1.9e6;
    HeatCurves h =
        new HeatCurves(
            new double[] {0, 80, 120, 200},
            new double[] {0, 80 * c, 120 * c + latent, 200 * c + latent},
            new double[] {25},
            new double[] {0.15});
    FreezingRange exact = new FreezingRange(0.15, c, latent, 40, 80, 120, 165);
    Column column = Column.against(40, 1e9, 240, 0.08e-3);
    ThermalState s = column.start(h, 165);

    Column.run(s, column.stepper(h), 60, 2e-3, 0.01);

    for (double x : new double[] {1e-3, 2e-3, 3e-3, 4e-3, 6e-3}) {
      assertEquals(exact.temperature(x, 60), column.at(s, x), 0.1, "at " + x);
    }
  }
}

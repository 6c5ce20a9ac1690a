// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.validation.exact.HalfSpaces.Body;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contact of plastisol with mould materials: Carslaw and Jaeger ch. II (from memory); digits
 * computed from the same forms by another program.
 */
class HalfSpacesTest {
  private static final Body PLASTISOL = new Body(0.15, 1000 * 1900, 165);
  private static final Body ALUMINIUM = new Body(167, 2700 * 896, 30);

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          167, 2700, 896, 33.49283
          115, 8500, 380, 33.63865
          51.9, 7870, 486, 34.92851
          0.43, 1100, 1000, 88.99644
          0.25, 1150, 1300, 92.93221
          0.2, 1150, 1200, 98.04148
          """)
  void contactTemperatureByMouldMaterial(double k, double rho, double c, double expected) {
    HalfSpaces both = new HalfSpaces(PLASTISOL, new Body(k, rho * c, 30), Double.POSITIVE_INFINITY);

    assertEquals(expected, both.contactTemperature(), 6e-6);
    assertEquals(expected, both.inFirst(0, 3), 6e-6);
    assertEquals(expected, both.inSecond(0, 7), 6e-6);
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          0.001, 236.60369e3, 148.73387, 30.432029
          0.01, 183.60378e3, 122.91955, 31.117657
          0.1, 101.25351e3, 82.809729, 32.182975
          1, 38.387325e3, 52.1899, 32.996238
          10, 12.483632e3, 39.573155, 33.331339
          """)
  void fluxAndFacesThroughAContactConductance(double t, double q, double hot, double cold) {
    HalfSpaces both = new HalfSpaces(PLASTISOL, ALUMINIUM, 2000);

    assertEquals(q, both.flux(t), 6e-3);
    assertEquals(hot, both.inFirst(0, t), 6e-6);
    assertEquals(cold, both.inSecond(0, t), 6e-7);
  }

  @Test
  void etaAndEffusivities() {
    HalfSpaces both = new HalfSpaces(PLASTISOL, ALUMINIUM, 2000);

    assertEquals(533.853913, PLASTISOL.effusivity(), 6e-7);
    assertEquals(20099.9104, ALUMINIUM.effusivity(), 6e-5);
    assertEquals(3.84584618, both.eta(), 6e-9);
  }

  /** Both forms meet where the conductance is huge, and the tail's two forms where they change. */
  @Test
  void goodContactTendsToPerfectContact() {
    HalfSpaces good = new HalfSpaces(PLASTISOL, ALUMINIUM, 1e8);
    HalfSpaces perfect = new HalfSpaces(PLASTISOL, ALUMINIUM, Double.POSITIVE_INFINITY);

    assertEquals(perfect.flux(5), good.flux(5), 1e-6 * perfect.flux(5));
    assertEquals(perfect.inFirst(1e-3, 5), good.inFirst(1e-3, 5), 1e-3);
  }
}

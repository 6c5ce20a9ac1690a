// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.evidence.Check;
import gelfront.validation.exact.HalfSpaces.Body;
import org.junit.jupiter.api.Test;

/**
 * Contact of plastisol with mould materials: Carslaw and Jaeger ch. II (from memory); digits
 * computed from the same forms by another program.
 */
class HalfSpacesTest {
  private static final Body PLASTISOL = new Body(0.15, 1000 * 1900, 165);
  private static final Body ALUMINIUM = new Body(167, 2700 * 896, 30);

  private static Check check(String what) {
    return Check.of(what, "Carslaw and Jaeger ch. II, digits by another program");
  }

  @Test
  void contactTemperatureByMouldMaterial() {
    Check check = check("contact temperature on six mould materials, °C");
    for (double[] r :
        Rows.of(
            """
            167, 2700, 896, 33.49283
            115, 8500, 380, 33.63865
            51.9, 7870, 486, 34.92851
            0.43, 1100, 1000, 88.99644
            0.25, 1150, 1300, 92.93221
            0.2, 1150, 1200, 98.04148
            """)) {
      Body mould = new Body(r[0], r[1] * r[2], 30);
      HalfSpaces both = new HalfSpaces(PLASTISOL, mould, Double.POSITIVE_INFINITY);
      check.expected(r[3]).got(both.contactTemperature());
      check.expected(r[3]).got(both.inFirst(0, 3)).expected(r[3]).got(both.inSecond(0, 7));
    }
    check.within(6e-6, 1);
  }

  @Test
  void fluxAndFacesThroughAContactConductance() {
    HalfSpaces both = new HalfSpaces(PLASTISOL, ALUMINIUM, 2000);
    Check flux = check("flux through a contact, W/m2");
    Check hot = check("plastisol's face at a contact, °C");
    Check cold = check("aluminium's face at a contact, °C");
    for (double[] r :
        Rows.of(
            """
            0.001, 236.60369e3, 148.73387, 30.432029
            0.01, 183.60378e3, 122.91955, 31.117657
            0.1, 101.25351e3, 82.809729, 32.182975
            1, 38.387325e3, 52.1899, 32.996238
            10, 12.483632e3, 39.573155, 33.331339
            """)) {
      flux.expected(r[1]).got(both.flux(r[0]));
      hot.expected(r[2]).got(both.inFirst(0, r[0]));
      cold.expected(r[3]).got(both.inSecond(0, r[0]));
    }
    flux.within(6e-3, 1);
    hot.within(6e-6, 1);
    cold.within(6e-7, 1);
  }

  @Test
  void etaAndEffusivities() {
    HalfSpaces both = new HalfSpaces(PLASTISOL, ALUMINIUM, 2000);

    check("effusivities, W s^1/2 / m2 K")
        .expected(533.853913)
        .got(PLASTISOL.effusivity())
        .expected(20099.9104)
        .got(ALUMINIUM.effusivity())
        .within(3e-9);
    check("eta, 1/s^1/2").expected(3.84584618).got(both.eta()).within(6e-9, 1);
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

// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.evidence.Check;
import gelfront.validation.exact.LayeredPlate.Layer;
import gelfront.validation.exact.LayeredPlate.Outside;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Layered plates against what is known of them otherwise. */
class LayeredPlateTest {
  private static final double K = 0.16;
  private static final double C = 2e6;
  private static final double HALF = 3e-3;

  /** A plate with a film on one side, insulated on the other, is half a plate with both. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 1, 80})
  void filmOnOneSideIsHalfTheSlabOfTheSeries(double biot) {
    CoolingSeries series = new CoolingSeries(CoolingSeries.Shape.SLAB, biot);
    Outside film = new Outside(biot * K / HALF, 20);
    LayeredPlate plate =
        new LayeredPlate(List.of(new Layer(HALF, K, C, 160)), 1e9, new Outside(0, 0), film);

    Check check =
        Check.of("plate with a film, Bi " + biot + ", °C", "series of Carslaw and Jaeger");
    for (double fourier : new double[] {0.02, 0.1, 0.5, 2}) {
      double time = fourier * HALF * HALF * C / K;
      for (double r : new double[] {0, 0.5, 1}) {
        check.expected(20 + 140 * series.at(r, fourier)).got(plate.at(0, r * HALF, time));
      }
    }
    check.within(1e-4, 1);
  }

  /** Cut in two with perfect contact, nothing changes; nor when left and right are exchanged. */
  @Test
  void cutsAndSidesDoNotMatter() {
    Outside water = new Outside(500, 15);
    Outside air = new Outside(9, 23);
    Layer thin = new Layer(1e-3, 0.2, 1.6e6, 30);
    Layer soft = new Layer(6e-3, K, C, 165);
    Layer part = new Layer(2e-3, K, C, 165);
    Layer rest = new Layer(4e-3, K, C, 165);
    LayeredPlate whole = new LayeredPlate(List.of(thin, soft), 1e12, water, air);
    LayeredPlate cut = new LayeredPlate(List.of(thin, part, rest), 1e12, water, air);
    LayeredPlate turned = new LayeredPlate(List.of(soft, thin), 1e12, air, water);

    for (double time : new double[] {1, 20, 300}) {
      assertEquals(whole.at(1, 3e-3, time), cut.at(2, 1e-3, time), 1e-6);
      assertEquals(whole.at(1, 3e-3, time), turned.at(0, 3e-3, time), 1e-6);
      assertEquals(whole.at(0, 0, time), turned.at(1, 1e-3, time), 1e-6);
    }
  }

  /** Two thick layers that touch know nothing of their outsides at first: half-spaces. */
  @Test
  void atFirstTwoHalfSpaces() {
    HalfSpaces exact =
        new HalfSpaces(new HalfSpaces.Body(K, C, 165), new HalfSpaces.Body(0.2, 1.6e6, 30), 1500);
    LayeredPlate plate =
        new LayeredPlate(
            List.of(new Layer(20e-3, 0.2, 1.6e6, 30), new Layer(20e-3, K, C, 165)),
            1500,
            new Outside(9, 23),
            new Outside(0, 0));

    Check check = Check.of("two thick layers in contact, °C", "Carslaw and Jaeger ch. II");
    for (double time : new double[] {2, 10, 40}) {
      for (double x : new double[] {0, 0.5e-3, 3e-3}) {
        check.expected(exact.inFirst(x, time)).got(plate.at(1, x, time));
      }
    }
    check.within(2e-3, 1);
  }

  /** At last the flow that the resistances allow. */
  @Test
  void atLastTheSteadyFlow() {
    LayeredPlate plate =
        new LayeredPlate(
            List.of(new Layer(4e-3, 0.2, 1e6, 100), new Layer(2e-3, 0.4, 1e6, 100)),
            1000,
            new Outside(500, 10),
            new Outside(10, 60));

    double flow = 50 / (1 / 500.0 + 4e-3 / 0.2 + 1e-3 + 2e-3 / 0.4 + 1 / 10.0);
    Check.of("steady faces of two layers with films, °C", "resistances in series")
        .expected(10 + flow / 500)
        .got(plate.at(0, 0, 1e5))
        .expected(60 - flow / 10)
        .got(plate.at(1, 2e-3, 1e5))
        .within(1e-6, 1);
  }
}

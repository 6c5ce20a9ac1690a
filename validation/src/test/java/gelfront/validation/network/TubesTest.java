// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Check;
import gelfront.validation.exact.Graetz;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The network's pieces against closed forms. */
final class TubesTest {
  private static final double K = 0.144;
  private static final double CAPACITY = 1.8e6;
  private static final double RADIUS = 4e-3;
  private static final Melt WATERY = new Melt(K, CAPACITY, 7e-4, 165, 30, 1e9, 31, 500, t -> 0);

  private static Rings rings(Melt melt) {
    return new Rings(new FeedDesign.Slice(FeedDesign.Kind.GATE, 1e-3, RADIUS, 1), melt);
  }

  @Test
  void oneViscosityGivesHagenAndPoiseuille() {
    Rings rings = rings(WATERY);
    Stream stream = new Stream(rings, WATERY, RADIUS);
    double exact = Math.PI * Math.pow(RADIUS, 4) / 8;
    Check.of("network's tube, mobility", "Hagen and Poiseuille")
        .expected(exact)
        .got(stream.mobility)
        .within(1e-3);
    double half = Arrays.stream(stream.share).limit(Rings.COUNT / 2).sum();
    assertEquals(1 - 0.75 * 0.75, half, 1e-3, "within half the radius");
  }

  /** eta = exp(k r^2 / R^2) by a temperature that falls with r^2; closed integral. */
  @Test
  void viscosityRisingFiveDecadesToTheWall() {
    double k = 5 * Math.log(10);
    Melt melt = new Melt(K, CAPACITY, 7e-4, 200, 50, 1e9, 60, 500, t -> k * (200 - t) / 100);
    Rings rings = rings(melt);
    for (int i = 0; i < Rings.COUNT; i++) {
      rings.t[i] = 200 - 100 * Math.pow((i + 0.5) / Rings.COUNT, 2);
    }
    double exact = Math.PI * Math.pow(RADIUS, 4) / (4 * k * k) * (1 - (1 + k) * Math.exp(-k));
    Check.of("network's tube, viscosity rising five decades", "closed integral in the test")
        .expected(exact)
        .got(new Stream(rings, melt, RADIUS).mobility)
        .within(0.01);
  }

  /** 80 slices of a tube at a fixed rate until nothing changes, to x* = 0.08. */
  @Test
  void aTubeCoolsByGraetz() {
    int n = 80;
    double rate = Math.PI * K / CAPACITY * n * 1e-3 / (4 * 0.08);
    Rings[] tube = new Rings[n];
    Arrays.setAll(tube, i -> rings(WATERY));
    double[] none = new double[Rings.COUNT];
    for (int step = 0; step < 400; step++) {
      for (int i = 0; i < n; i++) {
        tube[i].conduct(0.3, none);
        Stream stream = new Stream(tube[i], WATERY, RADIUS);
        Carry carry =
            i == 0
                ? Carry.fromMouth(stream, rate, 165)
                : Carry.fromSlice(tube[i - 1], stream, stream, rate);
        carry.into(tube[i], stream, rate, none, 0.3);
      }
    }
    Check cooled = Check.of("network's tube cooling, bulk", "Graetz's series");
    Check middle = Check.of("network's tube cooling, centre", "Graetz's series");
    for (int i : new int[] {19, 39, 59, 79}) {
      double x = 0.08 * (i + 0.5) / n;
      Stream stream = new Stream(tube[i], WATERY, RADIUS);
      double bulk = 0;
      for (int k = 0; k < Rings.COUNT; k++) {
        bulk += stream.share[k] * (tube[i].t[k] - 30) / 135;
      }
      cooled.at(x).expected(Graetz.bulk(x)).got(bulk);
      middle.at(x).expected(Graetz.centre(x)).got((tube[i].t[0] - 30) / 135);
    }
    cooled.plot("x*", "theta").within(0.02, 1);
    middle.plot("x*", "theta").within(0.02, 1);
  }

  @Test
  void whatIsDrawnComesOrIsGiven() {
    double[] conducts = {1e-9, 1e-10, 1e-11};
    double[] draws = {1e-9, 2e-9, 3e-8};
    Pull pull = new Pull(conducts, draws, 500);
    double given = 0;
    for (int i = 0; i < 3; i++) {
      given += pull.given[i] * draws[i];
    }
    assertEquals(3.3e-8, pull.rate[0] + given, 1e-14);
    assertTrue(pull.given[2] > 0.8, "behind the narrowest");
    assertEquals(0, pull.given[0]);
  }
}

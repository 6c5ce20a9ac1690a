// SPDX-License-Identifier: Apache-2.0
package gelfront.dent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The law's suctions against what is known of rings without it. */
final class SkinLawTest {
  private static final double RADIUS = 7e-3;
  private static final double E = 50e3;

  private final SkinLaw law = new SkinLaw(935);

  /**
   * A free ring in plane strain buckles at E / (1 - nu^2) t^3 / (4 R^3) (Bresse, Levy), which is
   * the all-round suction at a loss of (t / R)^2 / 2 while it is thin.
   */
  @Test
  void allRoundSuctionAtAFreeRingsOnsetIsItsBucklingPressure() {
    for (double tau : new double[] {0.01, 0.02, 0.04}) {
      double onset = tau * tau / 2;
      double buckles = E / 0.75 * Math.pow(tau, 3) / 4;
      assertEquals(
          buckles, law.allRound(RADIUS, tau * RADIUS, E, onset), 1.6 * tau * buckles, "" + tau);
    }
  }

  /** Radial balance integrated over layers, each sheared by what its own radius gets. */
  @Test
  void allRoundSuctionIsTheSumOverThinLayers() {
    double e = 0.01;
    for (double tau : new double[] {0.1, 0.3, 0.6, 0.9}) {
      double sum = 0;
      int layers = 20_000;
      for (int i = 0; i < layers; i++) {
        double dr = tau * RADIUS / layers;
        double r = RADIUS * (1 - tau) + (i + 0.5) * dr;
        double shift = e * RADIUS * RADIUS / (2 * r);
        double difference = 4 * (E / 3) * shift / r;
        sum += difference / r * dr;
      }
      assertEquals(sum, law.allRound(RADIUS, tau * RADIUS, E, e), 1e-4 * sum, "" + tau);
    }
  }

  /** A wall that only pushes holds a thin ring up to a multiple of what a free one bears. */
  @Test
  void aTightRingBearsMoreThanAFreeOneTheMoreTheThinnerItIs() {
    double before = Double.POSITIVE_INFINITY;
    for (double tau : new double[] {0.02, 0.05, 0.1, 0.2}) {
      double free = E / 0.75 * Math.pow(tau, 3) / 4;
      double ratio = law.confinedPeak(RADIUS, tau * RADIUS, E) / free;
      // Glock's power: 0.969 2^-2.2 4 tau^-0.8.
      assertEquals(0.8436 * Math.pow(tau, -0.8), ratio, 1e-3 * ratio);
      assertTrue(ratio > 1 && ratio < before);
      before = ratio;
    }
  }

  @Test
  void aSectionWithoutACoreGivesNextToNothing() {
    double solid = law.allRound(RADIUS, RADIUS, E, 1e-3);
    assertTrue(solid > 100 * law.allRound(RADIUS, 0.5 * RADIUS, E, 1e-3));
    assertEquals(solid, law.allRound(RADIUS, 2 * RADIUS, E, 1e-3));
  }

  @Test
  void aWarmSkinIsSofterAndDentsDeeperWhereItLies() {
    GelModulus gel = new GelModulus(E, 135);
    assertEquals(E, gel.at(25));
    assertEquals(E, gel.at(5));
    assertEquals(E / 2, gel.at(80), 1e-9);
    assertEquals(E / 100, gel.at(140), 1e-9);
    double cold = law.lying(RADIUS, 1e-3, gel.at(25), 0.01);
    assertTrue(law.lying(RADIUS, 1e-3, gel.at(100), 0.01) > 1.1 * cold);
  }
}

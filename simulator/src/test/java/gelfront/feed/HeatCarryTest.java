// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.linear.Graph;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class HeatCarryTest {
  private static final int N = 400;

  private final Random random = new Random(11);
  private final Graph graph = web();
  private final double[] flux = new double[graph.other().length];
  private final double[] entering = new double[N];
  private final double[] leaving = new double[N];
  private final double[] mass = new double[N];

  /** A chain with random links across. */
  private Graph web() {
    int[] a = new int[3 * (N - 1)];
    int[] b = new int[a.length];
    for (int e = 0; e < a.length; e++) {
      a[e] = e < N - 1 ? e : random.nextInt(N - 1);
      b[e] = e < N - 1 ? e + 1 : a[e] + 1 + random.nextInt(N - 1 - a[e]);
    }
    return Graph.of(N, a, b);
  }

  /** Down a random potential, whatever its sources and sinks. */
  private void downhill() {
    double[] p = random.doubles(N).toArray();
    for (int n = 0; n < N; n++) {
      for (int k = graph.start()[n]; k < graph.start()[n + 1]; k++) {
        flux[k] = 1e-7 * (p[n] - p[graph.other()[k]]);
      }
      entering[n] = n < 36 ? 1e-7 * random.nextDouble() : 0;
      leaving[n] = n > 360 ? 1e-7 * random.nextDouble() : 0;
      mass[n] = 1e-9 * (1 + random.nextInt(64));
    }
  }

  private static double[] all(double value) {
    double[] a = new double[N];
    Arrays.fill(a, value);
    return a;
  }

  @Test
  void keepsHeatToRoundingAndMakesNoExtremaHoweverLongTheStep() {
    downhill();
    for (double dt : new double[] {1e-4, 1e-2, 10}) {
      double[] h = new Random(12).doubles(N, 1e8, 3e8).toArray();
      double[] old = h.clone();
      HeatCarry carry = new HeatCarry(graph);
      carry.carry(flux, entering, all(3e8), leaving, dt, mass, h);
      double before = 0;
      double after = 0;
      double in = 0;
      for (int n = 0; n < N; n++) {
        before += mass[n] * old[n];
        after += mass[n] * carry.grows(n) * h[n];
        in += dt * (entering[n] * 3e8 - leaving[n] * h[n]);
        assertEquals(h[n], carry.mixed(n, old[n]), 1e-6 * h[n]);
      }
      assertEquals(before + in, after, 1e-9 * Math.max(before, Math.abs(in)));
      assertTrue(Arrays.stream(h).min().getAsDouble() >= 1e8 * (1 - 1e-14));
      assertTrue(Arrays.stream(h).max().getAsDouble() <= 3e8 * (1 + 1e-14));
    }
  }

  /** Cells of a block keep their order and their mean is the block's. */
  @Test
  void cellsFollowTheirBlock() {
    downhill();
    double[] h = all(2e8);
    HeatCarry carry = new HeatCarry(graph);
    carry.carry(flux, entering, all(3e8), leaving, 1e-2, mass, h);
    for (int n = 0; n < N; n++) {
      double cold = carry.mixed(n, 1.5e8);
      double hot = carry.mixed(n, 2.5e8);
      assertTrue(cold <= hot);
      assertEquals(h[n], 0.5 * (cold + hot), 1e-6 * h[n]);
    }
  }

  @Test
  void oneHeatStaysOneHeat() {
    downhill();
    double[] h = all(2e8);
    new HeatCarry(graph).carry(flux, entering, all(2e8), leaving, 0.01, mass, h);
    for (double v : h) {
      assertEquals(2e8, v, 2e8 * 1e-14);
    }
  }

  @Test
  void aLongStepFillsAThroughflowWithWhatEnters() {
    Arrays.fill(mass, 1e-9);
    for (int n = 0; n < N; n++) {
      for (int k = graph.start()[n]; k < graph.start()[n + 1]; k++) {
        int along = graph.other()[k] - n;
        boolean chain = graph.edge()[k] < N - 1;
        flux[k] = chain ? along * 1e-6 : 0;
      }
    }
    entering[0] = 1e-6;
    leaving[N - 1] = 1e-6;
    double[] h = all(0);
    HeatCarry carry = new HeatCarry(graph);
    carry.carry(flux, entering, all(3e8), leaving, 1e5, mass, h);
    for (int n = 0; n < N; n++) {
      assertEquals(3e8, h[n], 3e8 * 1e-5);
      assertEquals(1, carry.grows(n), 1e-6);
    }
  }

  @Test
  void aCircleIsRefused() {
    Graph ring = Graph.of(3, new int[] {0, 1, 2}, new int[] {1, 2, 0});
    double[] round = new double[6];
    for (int n = 0; n < 3; n++) {
      for (int k = ring.start()[n]; k < ring.start()[n + 1]; k++) {
        round[k] = ring.other()[k] == (n + 1) % 3 ? 1e-7 : -1e-7;
      }
    }
    double[] ones = {1, 1, 1};
    double[] zeros = new double[3];
    assertThrows(
        IllegalStateException.class,
        () -> new HeatCarry(ring).carry(round, zeros, zeros, zeros, 1, ones, new double[3]));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.grid.Cavity;
import gelfront.grid.VoxelModel;
import gelfront.material.HeatCurves;
import gelfront.material.MouldMaterial;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Block;
import gelfront.state.ThermalState;
import gelfront.voxelize.CavityBuilder;
import gelfront.voxelize.Labelled;
import gelfront.voxelize.MouldBuilder;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

class SplitStepperTest {
  private static final MouldMaterial ALUMINIUM = new MouldMaterial("al", 167, 2700, 896);

  /** Neither warms nor holds heat back. */
  private static final MouldMaterial FIXED = new MouldMaterial("fixed", 1e6, 1e6, 1e6);

  private static final MouldMaterial RESIN = new MouldMaterial("resin", 0.2, 1170, 1350);

  private static HeatCurves curves(double latent) {
    double c = 1000 * 1900;
    double l = 1000 * latent;
    return new HeatCurves(
        new double[] {0, 110, 130, 200},
        new double[] {0, 110 * c, 130 * c + l, 200 * c + l},
        new double[] {25},
        new double[] {0.15});
  }

  private static VoxelModel ball(MouldMaterial material, double spacing) {
    return ball(material, spacing, 2000);
  }

  private static VoxelModel ball(MouldMaterial material, double spacing, double contact) {
    Cavity cavity =
        CavityBuilder.build(
            List.of(new Labelled(Cavity.Region.PART, Solids.sphere(Vec3.ZERO, 4e-3, 48))),
            spacing,
            Optional.empty(),
            Progress.NONE);
    Block block =
        new Block(material, 10e-3, Optional.empty(), 30, 20, 10, contact, List.of(), List.of());
    return MouldBuilder.build(cavity, block, Solids.sphere(Vec3.ZERO, 4e-3, 48).box().grown(10e-3));
  }

  private static ThermalState cool(
      VoxelModel model, HeatCurves curves, Workers workers, int steps) {
    ThermalState s = new ThermalState(model, curves, 165);
    SplitStepper stepper = new SplitStepper(model, curves, workers);
    for (int i = 0; i < steps; i++) {
      stepper.step(s, 0.1 + 0.05 * s.time, MouthFilm.INSULATED);
    }
    return s;
  }

  @Test
  void heatIsConservedToRoundingInMetalAndResin() {
    for (MouldMaterial m : List.of(ALUMINIUM, RESIN)) {
      ThermalState s = cool(ball(m, 0.5e-3), curves(20e3), Workers.SERIAL, 40);

      assertTrue(s.ledger.imbalance() < 1e-11, m.name() + " " + s.ledger.imbalance());
      assertTrue(s.ledger.plastisolGain() < 0);
      assertTrue(s.ledger.mouldGain() > 0);
    }
  }

  @Test
  void lostContactLiesInSeriesWithWhatWasThere() {
    HeatCurves curves = curves(20e3);
    VoxelModel pressed = ball(ALUMINIUM, 0.5e-3, 2000);
    ThermalState poorer = new ThermalState(pressed, curves, 165);
    Arrays.fill(poorer.lostContact, (float) (1 / 400.0 - 1 / 2000.0));
    SplitStepper stepper = new SplitStepper(pressed, curves, Workers.SERIAL);
    for (int i = 0; i < 20; i++) {
      stepper.step(poorer, 0.1 + 0.05 * poorer.time, MouthFilm.INSULATED);
    }
    ThermalState same = cool(ball(ALUMINIUM, 0.5e-3, 400), curves, Workers.SERIAL, 20);
    assertArrayEquals(same.temperature, poorer.temperature, 1e-4);
    ThermalState better = cool(pressed, curves, Workers.SERIAL, 20);
    assertTrue(poorer.temperature[0] > better.temperature[0] + 1);
    assertTrue(poorer.ledger.imbalance() < 1e-11);
  }

  @Test
  void theLedgerIsTheChangeOfEnthalpy() {
    VoxelModel model = ball(ALUMINIUM, 0.5e-3);
    HeatCurves curves = curves(20e3);

    ThermalState s = cool(model, curves, Workers.SERIAL, 30);

    double gain = 0;
    double[] volume = model.cavity().volumes();
    for (int i = 0; i < s.enthalpy.length; i++) {
      gain += volume[i] * (s.enthalpy[i] - curves.enthalpy(165));
      assertEquals(s.temperature[i], curves.temperature(s.enthalpy[i]), 1e-9);
    }
    assertEquals(gain, s.ledger.plastisolGain(), 1e-9 * Math.abs(gain));
  }

  @Test
  void noNewExtremaAndSymmetryIsKept() {
    VoxelModel model = ball(FIXED, 0.5e-3);

    ThermalState s = cool(model, curves(20e3), Workers.SERIAL, 30);

    for (double t : s.temperature) {
      assertTrue(t <= 165 + 1e-9 && t >= 30 - 1e-6, "temperature " + t);
    }
    int n = s.temperature.length;
    for (int i = 0; i < n; i++) { // a ball on a symmetric grid: mirrored cells are alike
      assertEquals(s.temperature[i], s.temperature[n - 1 - i], 1e-4);
    }
  }

  @Test
  void anyNumberOfThreadsGivesTheSameBits() {
    VoxelModel model = ball(ALUMINIUM, 0.2e-3);
    ExecutorService pool = Executors.newFixedThreadPool(3);
    try {
      ThermalState one = cool(model, curves(20e3), Workers.SERIAL, 8);
      ThermalState three = cool(model, curves(20e3), new Workers(pool, 3), 8);

      assertTrue(model.cavity().count() > 7 * Workers.CHUNK, "a second thread is worth waking");
      assertArrayEquals(one.temperature, three.temperature);
      assertArrayEquals(one.mould, three.mould);
    } finally {
      pool.shutdown();
    }
  }

  /** One array over the cells would be 260 kB; lambdas and loop records are a few kB. */
  @Test
  void aStepAllocatesNothingThatGrowsWithTheCells() {
    VoxelModel model = ball(ALUMINIUM, 0.2e-3);
    ThermalState s = new ThermalState(model, curves(20e3), 165);
    SplitStepper stepper = new SplitStepper(model, curves(20e3), Workers.SERIAL);
    var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    long self = Thread.currentThread().getId();
    for (int i = 0; i < 10; i++) {
      stepper.step(s, 0.1 + 0.05 * s.time, MouthFilm.INSULATED);
    }

    long before = threads.getThreadAllocatedBytes(self);
    for (int i = 0; i < 10; i++) {
      stepper.step(s, 0.1 + 0.05 * s.time, MouthFilm.INSULATED);
    }
    long perStep = (threads.getThreadAllocatedBytes(self) - before) / 10;

    assertTrue(8L * model.cavity().count() > 200_000, "an array would show");
    assertTrue(perStep < 50_000, perStep + " bytes a step");
  }

  /**
   * Steps of 0.4 s throughout, against a mould that stays as it is: right to 3e-5 of the fall. The
   * chill's first moments, with walls that no parabola fits, leave that and are of first order.
   */
  @Test
  void halvingLongStepsMovesThousandthsOfADegree() {
    VoxelModel model = ball(FIXED, 0.5e-3);
    double[][] end = new double[3][];
    for (int level = 0; level < 3; level++) {
      ThermalState s = new ThermalState(model, curves(0), 165);
      SplitStepper stepper = new SplitStepper(model, curves(0), Workers.SERIAL);
      for (int i = 0; i < 48 << level; i++) {
        stepper.step(s, 0.4 / (1 << level), MouthFilm.INSULATED);
      }
      end[level] = s.temperature;
    }

    double coarse = apart(end[0], end[1]);
    double fine = apart(end[1], end[2]);
    assertTrue(coarse < 4e-3 && fine < 0.65 * coarse, coarse + " K, then " + fine);
  }

  /** Root mean square, K. */
  private static double apart(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += (a[i] - b[i]) * (a[i] - b[i]);
    }
    return Math.sqrt(sum / a.length);
  }
}

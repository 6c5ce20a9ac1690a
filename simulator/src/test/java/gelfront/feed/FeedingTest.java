// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.CancelledException;
import gelfront.grid.Cavity;
import gelfront.grid.MouldCells;
import gelfront.grid.RectilinearGrid;
import gelfront.grid.VoxelModel;
import gelfront.material.HeatCurves;
import gelfront.material.ViscosityCurve;
import gelfront.mesh.Vec3;
import gelfront.state.ThermalState;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

final class FeedingTest {
  private static final double C = 1.8e6;
  private static final double NO_FLOW = 100;
  private static final double BETA = 7e-4;
  private static final double SHOT = 160;

  private final Cavity cavity = Tube.of(20, 6);
  private final int n = cavity.count();
  private final HeatCurves curves =
      new HeatCurves(
          new double[] {0, 200}, new double[] {0, 200 * C}, new double[] {25}, new double[] {0.15});
  private final ThermalState state = new ThermalState(model(), curves, SHOT);

  private VoxelModel model() {
    double[] unit = {0, 1};
    MouldCells mould =
        new MouldCells(
            new RectilinearGrid(unit, unit, unit),
            new int[] {0},
            new int[] {0},
            new double[] {1},
            new double[] {30},
            new int[] {-1, -1, -1},
            new double[3],
            new double[3],
            new double[1],
            new double[] {30});
    int walls = cavity.walls().count();
    return new VoxelModel(cavity, mould, new int[walls], new double[walls]);
  }

  private Feeding feeding(boolean carriesHeat, double bears) {
    ViscosityCurve curve = new ViscosityCurve(new double[] {100, 160}, new double[] {5, 1});
    FeedLaw law = new FeedLaw(curve, NO_FLOW, BETA, bears, SHOT, carriesHeat, Vec3.ZERO);
    Reservoir none = new Reservoir(cavity, new Vec3(-1, 0, 0), 1);
    return new Feeding(cavity, curves, law, none, new Liquid(cavity, false));
  }

  /** A step of conduction as the stepper leaves it. */
  private void coolTo(IntToDoubleFunction temperature, double dt) {
    state.previous = state.temperature.clone();
    for (int c = 0; c < n; c++) {
      double t = temperature.applyAsDouble(cavity.grid().position(c, 0));
      state.temperature[c] = t;
      state.enthalpy[c] = curves.enthalpy(t);
    }
    state.time += dt;
  }

  @Test
  void demandIsFedOrUnfedAndVolumesAddUp() {
    Feeding feeding = feeding(true, 500);
    for (double t : new double[] {150, 140, 130, 120, 110, 104}) {
      double from = state.time;
      coolTo(i -> t, 1);
      feeding.step(state, from, Feeding.Supply.FROM_OUTSIDE, 0);
    }
    double demand = Arrays.stream(feeding.demand()).sum();
    double unfed = Arrays.stream(feeding.unfed()).sum();
    FeedSums sums = feeding.sums();
    assertTrue(sums.worstImbalance() <= 1e-4, "imbalance " + sums.worstImbalance());
    assertEquals(demand, sums.entered() + unfed, 1e-4 * demand);
    assertTrue(unfed > 0.01 * demand && unfed < 0.9 * demand, "unfed " + unfed / demand);
  }

  @Test
  void withoutMassTakenUpDemandIsBetaTimesTheFall() {
    Feeding feeding = feeding(false, 500);
    coolTo(i -> 150, 1);
    feeding.step(state, 0, Feeding.Supply.FROM_OUTSIDE, 0);
    coolTo(i -> 90, 1);
    feeding.step(state, 1, Feeding.Supply.FROM_OUTSIDE, 0);
    double exact = BETA * (SHOT - NO_FLOW) * cavity.volume();
    assertEquals(exact, Arrays.stream(feeding.demand()).sum(), 1e-12 * exact);
  }

  @Test
  void asksBeforeEverySolveAndLeavesWhereNobodyWaits() {
    Feeding feeding = feeding(true, 500);
    coolTo(i -> 150, 1);
    for (int answered = 0; answered < 7; answered++) {
      int[] left = {answered};
      Runnable ask =
          () -> {
            if (left[0]-- == 0) {
              throw new CancelledException("feeding");
            }
          };
      assertThrows(
          CancelledException.class,
          () -> feeding(true, 500).step(state, 0, Feeding.Supply.FROM_OUTSIDE, 0, ask));
    }
    feeding.step(state, 0, Feeding.Supply.FROM_OUTSIDE, 0);
    assertTrue(feeding.sums().entered() > 0);
  }

  @Test
  void aSetPlugEndsFeedingAndAllBehindIsUnfed() {
    Feeding feeding = feeding(true, 1e6);
    coolTo(i -> 150, 1);
    feeding.step(state, 0, Feeding.Supply.FROM_OUTSIDE, 0);
    assertEquals(Double.POSITIVE_INFINITY, feeding.ended());
    coolTo(i -> i < 2 ? 40 : 140, 1); // set before the step's middle
    feeding.step(state, 1, Feeding.Supply.FROM_OUTSIDE, 0);
    assertEquals(2, feeding.ended());
    double second = Arrays.stream(feeding.demand()).sum() - feeding.sums().drawn();
    assertEquals(second, Arrays.stream(feeding.unfed()).sum(), 1e-4 * second);
    assertEquals(0, feeding.sums().fedShare(), 1e-12);
  }

  @Test
  void cellsThatSetInAStepAreFedThroughTheirNeighbours() {
    Feeding feeding = feeding(true, 1e6);
    coolTo(i -> i == 19 ? 25 : 150, 1); // set before the step's middle
    feeding.step(state, 0, Feeding.Supply.FROM_OUTSIDE, 0);
    double demand = Arrays.stream(feeding.demand()).sum();
    assertEquals(demand, feeding.sums().entered(), 1e-4 * demand);
    double share = BETA * (SHOT - NO_FLOW);
    assertTrue(state.temperature[19] > (25 + share * 150) / (1 + share), "what it drew warms it");
    assertTrue(state.temperature[19] < (25 + share * SHOT) / (1 + share));
  }

  /**
   * A plug that is liquid in the middle of the step flows on, though the step ends below no-flow.
   */
  @Test
  void whatFlowsIsToldByTheStepsMiddle() {
    Feeding feeding = feeding(true, 1e6);
    coolTo(i -> i < 2 ? 90 : 140, 1);
    feeding.step(state, 0, Feeding.Supply.FROM_OUTSIDE, 0);
    double demand = Arrays.stream(feeding.demand()).sum();
    assertEquals(demand, feeding.sums().entered(), 1e-4 * demand);
    assertEquals(Double.POSITIVE_INFINITY, feeding.ended());
  }

  @Test
  void theLedgerBalancesAndTheFlowOnlyWarms() {
    Feeding feeding = feeding(true, 500);
    coolTo(i -> 130 - i, 1);
    double[] before = state.temperature.clone();
    feeding.step(state, 0, Feeding.Supply.FROM_OUTSIDE, 0);
    assertTrue(state.ledger.imbalance() < 1e-12);
    assertTrue(state.ledger.throughMouth() < 0);
    for (int c = 0; c < n; c++) {
      assertTrue(state.temperature[c] >= before[c] - 1e-9);
      assertTrue(state.temperature[c] <= SHOT + 1e-9);
      assertEquals(curves.enthalpy(state.temperature[c]), state.enthalpy[c], 1);
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.fill.FillRecord;
import gelfront.finding.Findings;
import gelfront.material.HeatCurves;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Case;
import gelfront.setup.Fill;
import gelfront.setup.Numerics;
import gelfront.setup.PlainCase;
import gelfront.setup.Rhythm;
import gelfront.state.ThermalState;
import gelfront.timing.StandardCase;
import gelfront.verdict.FlowRecord;
import gelfront.voxelize.CaseVoxels;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One side of a plane of symmetry stands for both: the same equations without what cancels. What is
 * left between the two is where blocks of liquid lie, the order of sums, and stop rules.
 */
final class FoldedShotTest {
  private static final TriangleMesh BODY =
      Solids.revolution(
          new double[] {0, 3e-3, 16e-3, 20e-3, 32e-3},
          new double[] {2e-3, 5e-3, 5e-3, 2e-3, 3e-3},
          48);

  private static Case setup(Vec3 up) {
    return PlainCase.fedAtTheNose(3e-3, 8e-3, 15e-3)
        .withWall(10e-3)
        .withShot(PlainCase.shot(165, 1, 5))
        .withUp(up)
        .withVoxel(0.6e-3)
        .make();
  }

  private static CaseRunner.Outcome run(Case c) {
    return CaseRunner.run(c, BODY, Workers.SERIAL, Progress.NONE);
  }

  private static CaseRunner.Outcome whole(Case c) {
    return run(c.with(c.numerics().wholly()));
  }

  @Test
  void aQuarterOfABodyOfRevolutionStandsForAllOfIt() {
    CaseRunner.Outcome whole = whole(setup(PlainCase.BACK));
    CaseRunner.Outcome folded = run(setup(PlainCase.BACK));
    FlowRecord all = whole.shot().flow().orElseThrow();
    FlowRecord quarter = folded.shot().flow().orElseThrow();

    assertEquals(1, whole.times());
    assertEquals(4, folded.times());
    assertEquals(all.demand(), quarter.demand(), 1e-3 * all.demand());
    assertEquals(all.partUnfed(), quarter.partUnfed(), 5e-3 * all.partUnfed());
    assertEquals(all.half(), quarter.half(), 5e-3 * all.half());
    assertEquals(all.dryAt(), quarter.dryAt());
    assertTrue(quarter.worstImbalance() < 1e-4);
    assertTrue(folded.end().ledger.imbalance() < 1e-9, "heat is booked for all of it");
    assertEquals(
        whole.end().ledger.plastisolGain(),
        folded.end().ledger.plastisolGain(),
        2e-3 * Math.abs(whole.end().ledger.plastisolGain()));
    Findings f = whole.judgement().findings();
    Findings g = folded.judgement().findings();
    assertEquals(f.pockets().size(), g.pockets().size());
    assertEquals(
        f.pockets().get(0).dents().get(0).depthHigh(),
        g.pockets().get(0).dents().get(0).depthHigh(),
        0.005e-3);
  }

  @Test
  void setTimesAreThoseOfTheWhole() {
    Case c = setup(PlainCase.BACK);
    c = c.with(c.numerics().withoutFlow());
    float[] whole = whole(c).shot().set();
    float[] folded = run(c).shot().set();

    for (int i = 0; i < whole.length; i++) {
      assertEquals(whole[i], folded[i], 2e-3 * whole[i] + 2e-3);
    }
  }

  /** The third shot's mould is still alike on both sides: it opens at a plane of symmetry. */
  @Test
  void aRowOfShotsIsFolded() {
    Case c = setup(PlainCase.BACK).with(new Rhythm(3, 90, OptionalDouble.empty(), 60));

    assertEquals(4, run(c).times());
  }

  /** Liquid weighs across a plane that isn't upright. */
  @Test
  void aMouldThatLiesIsFoldedOnce() {
    Case lies = setup(new Vec3(0, 0, 1));

    assertEquals(2, run(lies).times());
    assertEquals(4, run(lies.with(lies.numerics().withoutFlow())).times());
  }

  /** Cooling folds a mould that lies once, for liquid weighs; the shot does not weigh. */
  @ParameterizedTest
  @CsvSource({"0, 0", "0, 25e-6", "1, 0", "1, 25e-6"})
  void aShotIsFoldedToo(double upwards, double gap) {
    Case c =
        setup(upwards == 0 ? PlainCase.BACK : new Vec3(0, 0, upwards))
            .with(new Fill(true, OptionalDouble.empty(), Fill.BY_HAND, gap, List.of()));
    FillRecord whole = filled(c.with(c.numerics().wholly()), 1);
    FillRecord folded = filled(c, 4);

    assertEquals(whole.end(), folded.end());
    assertEquals(whole.room(), folded.room(), 1e-9 * whole.room());
    assertEquals(whole.held(), folded.held(), 2e-3 * whole.held());
    assertEquals(whole.time(), folded.time(), 0.03 * whole.time());
    List<FillRecord.AirBody> all = trapped(whole);
    List<FillRecord.AirBody> unfolded = trapped(folded);
    assertEquals(all.size(), unfolded.size());
    for (int i = 0; i < all.size(); i++) {
      FillRecord.AirBody a = all.get(i);
      FillRecord.AirBody b = unfolded.get(i);
      assertEquals(a.volume(), b.volume(), 0.1 * a.volume());
      assertEquals(a.pressure(), b.pressure(), 0.05 * a.pressure());
    }
    assertEquals(0, warmer(whole.arrival(), folded.arrival()), 0.1);
  }

  /** Without corners whose last air leaves with the last liquid. */
  private static List<FillRecord.AirBody> trapped(FillRecord r) {
    return r.bodies().stream().filter(b -> b.volume() > 1e-3 * r.room()).toList();
  }

  /** K in the mean over what is reached in both. */
  private static double warmer(float[] one, float[] other) {
    return IntStream.range(0, one.length)
        .mapToDouble(i -> other[i] - one[i])
        .filter(d -> !Double.isNaN(d))
        .average()
        .orElseThrow();
  }

  /** A vent at one side leaves the other plane. */
  @Test
  void aVentUnfoldsTheShotAcrossItsOwnPlaneOnly() {
    Fill.Vent beside = new Fill.Vent(new Vec3(10e-3, 5e-3, 0), 3e-3, 40e-6, 10e-3);
    Case c =
        setup(PlainCase.BACK)
            .with(new Fill(true, OptionalDouble.empty(), Fill.BY_HAND, 0, List.of(beside)));

    assertEquals(2, fill(c).times());
  }

  private static ShotFill fill(Case c) {
    CaseVoxels voxels = CaseVoxels.of(c, BODY, Progress.NONE);
    double[] mould = voxels.model().mould().startTemperature();
    return new ShotFill(c, voxels, mould, Workers.SERIAL);
  }

  private static FillRecord filled(Case c, int times) {
    CaseVoxels voxels = CaseVoxels.of(c, BODY, Progress.NONE);
    HeatCurves curves = HeatCurves.of(c.plastisol());
    ThermalState state = new ThermalState(voxels.model(), curves, c.shot().temperature());
    ShotFill fill = new ShotFill(c, voxels, state.mould, Workers.SERIAL);
    assertEquals(times, fill.times());
    return fill.fill(state, Progress.NONE);
  }

  /** The standard case's own axis and the places half way to its wall. */
  @Test
  void theStandardCaseIsFoldedTwice() {
    var model = StandardCase.model(Numerics.Level.QUICK);
    float[] whole = StandardCase.whole(model, Workers.SERIAL, 0.8).set();
    float[] folded = StandardCase.run(model, Workers.SERIAL, 0.8).set();

    double sum = 0;
    for (int i = 0; i < whole.length; i++) {
      sum += Math.abs(folded[i] - whole[i]) / whole[i];
    }
    assertTrue(sum / whole.length < 1e-3, "off by " + sum / whole.length);
  }
}

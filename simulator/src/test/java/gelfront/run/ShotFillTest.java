// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.fill.FillRecord;
import gelfront.finding.Filled;
import gelfront.material.HeatCurves;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Case;
import gelfront.setup.Fill;
import gelfront.setup.PlainCase;
import gelfront.setup.Shot;
import gelfront.state.ThermalState;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.PartingPlane;
import gelfront.voxelize.VoxelException;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The shot itself, from case to findings. Common practice, no source, where so said. */
final class ShotFillTest {
  /** A body of 8 mm with a tail of 2.4 mm behind it. */
  private static final TriangleMesh TAILED =
      Solids.revolution(
          new double[] {0, 2e-3, 14e-3, 17e-3, 35e-3},
          new double[] {2e-3, 4e-3, 4e-3, 1.2e-3, 1.2e-3},
          32);

  /** s to fill, °C of shot and mould, metres between the halves. */
  private static Case setup(double time, double shot, double mould, double gap) {
    return PlainCase.fedAtTheNose(3e-3, 7e-3, 12e-3)
        .withWall(10e-3)
        .withMouldAt(mould)
        .withShot(PlainCase.shot(shot, time, 5))
        .withVoxel(0.7e-3)
        .make()
        .with(new Fill(true, OptionalDouble.empty(), Fill.BY_HAND, gap, List.of()));
  }

  private static Filled filled(Case c) {
    return filled(c, TAILED);
  }

  private static Filled filled(Case c, TriangleMesh part) {
    CaseVoxels voxels = CaseVoxels.of(c, part, Progress.NONE);
    return new RecipeFloor(c, voxels, Workers.SERIAL, Progress.NONE).filled(c.shot().temperature());
  }

  /** Common practice, no source. */
  @Test
  void aMouldWithoutAnyGapTrapsAirAndAVentAtTheTailCuresIt() {
    Case blind = setup(1, 165, 40, 0);
    Filled trapped = filled(blind);
    Filled cured =
        filled(
            blind.with(
                blind.fill().with(new Fill.Vent(new Vec3(35e-3, 0, 0), 6e-3, 0.06e-3, 10e-3))));

    assertFalse(trapped.air().isEmpty());
    Filled.TrappedAir air = trapped.air().get(0);
    assertTrue(air.place().x() > 10e-3, "towards the tail: " + air.place());
    assertTrue(air.pressure() > 0.9 * Fill.BY_HAND, "pressed as far as a hand can");
    assertTrue(air.proposal().startsWith("Scratch a vent"), air.proposal());
    assertTrue(cured.air().isEmpty(), "still trapped: " + cured.air());
  }

  /** A plate in the parting face with a rib that stands up from it, blind at its top. */
  @Test
  void whereNoScratchReachesItSaysSo() {
    TriangleMesh ribbed =
        Solids.box(new Vec3(0, -9e-3, -2e-3), new Vec3(24e-3, 9e-3, 2e-3))
            .plus(Solids.box(new Vec3(16e-3, -9e-3, 1e-3), new Vec3(20e-3, 9e-3, 14e-3)));
    Filled f = filled(setup(1, 165, 60, 60e-6), ribbed);

    assertFalse(f.air().isEmpty(), f.sentence());
    Filled.TrappedAir top = f.air().get(0);
    assertTrue(top.place().z() > 8e-3, "in the rib: " + top.place());
    assertTrue(top.offFace() > 5e-3, "off by " + top.offFace());
    assertTrue(top.proposal().contains("where no scratch reaches it"), top.proposal());
    assertFalse(top.proposal().contains("Scratch a vent"), top.proposal());
  }

  /** Common practice, no source. */
  @Test
  void aColdMouldAndASlowShotLeaveTheTailShort() {
    Filled brisk = filled(setup(1, 165, 60, 40e-6));
    Filled slow = filled(setup(5, 150, 20, 40e-6));

    assertFalse(brisk.mayNotFill(), brisk.sentence());
    assertTrue(slow.mayNotFill(), slow.sentence());
    assertTrue(slow.cold().get(0).place().x() > 14e-3, slow.sentence());
    assertTrue(slow.margin() < brisk.margin());
  }

  @Test
  void theFloorIsTheCoolestShotThatFills() {
    Case c = setup(6, 175, 30, 40e-6);
    CaseVoxels voxels = CaseVoxels.of(c, TAILED, Progress.NONE);
    RecipeFloor floor = new RecipeFloor(c, voxels, Workers.SERIAL, Progress.NONE);
    double t = floor.coolest().orElseThrow();

    assertFalse(floor.filled(t).mayNotFill());
    // Some kelvin lower: near the floor whether one last cell is reached goes by chance.
    assertTrue(floor.filled(t - 5 * RecipeFloor.WITHIN).mayNotFill(), "at " + t);
  }

  @Test
  void coolingStartsFromWhereTheShotEnded() {
    Case c = setup(2, 165, 30, 40e-6);
    CaseVoxels voxels = CaseVoxels.of(c, TAILED, Progress.NONE);
    HeatCurves curves = HeatCurves.of(c.plastisol());
    ThermalState state = new ThermalState(voxels.model(), curves, 165);
    new ShotFill(c, voxels, state.mould, Workers.SERIAL).fill(state, Progress.NONE);

    double coldest = Arrays.stream(state.temperature).min().orElseThrow();
    double hottest = Arrays.stream(state.temperature).max().orElseThrow();
    assertTrue(hottest - coldest > 5, coldest + " to " + hottest);
    assertEquals(0, state.time);
    assertTrue(state.ledger.mouldGain() > 0);
    assertEquals(0, state.ledger.imbalance(), 1e-9);
    for (int i = 0; i < state.temperature.length; i++) {
      assertEquals(curves.temperature(state.enthalpy[i]), state.temperature[i], 1e-6);
    }
  }

  /**
   * Where trapped air holds it, liquid and air come to rest: one pressure on all of the shadow, but
   * for what the air's still rises by in the last step.
   */
  @Test
  void theHalvesArePushedApartByThePressureOnTheirShadow() {
    Case c = setup(1, 165, 40, 0);
    CaseVoxels voxels = CaseVoxels.of(c, TAILED, Progress.NONE);
    ThermalState state = new ThermalState(voxels.model(), HeatCurves.of(c.plastisol()), 165);
    FillRecord.Trace t =
        new ShotFill(c, voxels, state.mould, Workers.SERIAL).fill(state, Progress.NONE).trace();
    double shadow = PartingPlane.of(voxels).shadow();
    int last = t.push().length - 1;

    assertEquals(Fill.BY_HAND * shadow, t.push()[last], 0.02 * Fill.BY_HAND * shadow);
    assertEquals(0, t.push()[0]);
    for (int i = 1; i < last; i++) {
      assertTrue(t.push()[i] <= 1.001 * Math.max(t.pressure()[i], t.pressure()[i - 1]) * shadow);
    }
    assertTrue(t.most(t.push()) <= t.push()[last]);
  }

  @Test
  void withItOffNothingChanges() {
    Case on = setup(2, 165, 30, 40e-6);
    Case off = on.with(new Fill(false, OptionalDouble.empty(), 1e5, 1e-5, List.of()));
    Case without = on.with(Fill.OFF);
    float[] one = CaseRunner.run(off, TAILED, Workers.SERIAL, Progress.NONE).shot().set();
    float[] other = CaseRunner.run(without, TAILED, Workers.SERIAL, Progress.NONE).shot().set();
    float[] filled = CaseRunner.run(on, TAILED, Workers.SERIAL, Progress.NONE).shot().set();

    assertArrayEquals(other, one);
    assertEquals(one.length, filled.length);
    for (float t : filled) {
      assertTrue(t < 1e6, "every place has set");
    }
  }

  /** Volume as the fill time gives it, pressure first in the sprue, the front ever farther away. */
  @Test
  void itsCourseIsTold() {
    Filled f = filled(setup(1, 165, 60, 60e-6));
    List<Filled.Moment> course = f.course();
    Filled.Moment first = course.get(0);
    Filled.Moment last = course.get(course.size() - 1);

    assertTrue(course.size() > 10 && course.size() < 40, "moments: " + course.size());
    assertEquals(0, first.volume());
    assertEquals(f.time(), last.time());
    Filled.Moment half = course.get(course.size() / 2);
    assertEquals(half.time() / last.time(), half.volume() / last.volume(), 0.05);
    for (int i = 1; i < course.size(); i++) {
      assertTrue(course.get(i).time() > course.get(i - 1).time());
      assertTrue(course.get(i).volume() > course.get(i - 1).volume());
      assertTrue(course.get(i).gate() <= course.get(i).mouth() * 1.001);
    }
    assertTrue(course.get(1).front().x() < 0, "in the sprue at first");
    assertEquals(0, course.get(1).gate());
    assertTrue(half.gate() > 0);
    assertEquals(35e-3, last.front().x(), 1e-3);
  }

  @Test
  void saysInWordsWhatCantBe() {
    Case c = setup(2, 165, 30, 25e-6);
    Fill.Vent onGate = new Fill.Vent(new Vec3(-1e-3, 0, 0), 2e-3, 30e-6, 10e-3);
    Fill.Vent astray = new Fill.Vent(new Vec3(0, 0.1, 0), 2e-3, 30e-6, 10e-3);
    Shot small =
        new Shot(165, 2, 5, 20e3, List.of(), OptionalDouble.of(0.5e-6), OptionalDouble.empty());

    assertTrue(refused(c.with(c.fill().with(onGate))).contains("on the gate"));
    assertTrue(refused(c.with(c.fill().with(astray))).contains("doesn't meet the cavity"));
    assertTrue(refused(c.with(small)).contains("it can't fill them"));
  }

  private static String refused(Case c) {
    return assertThrows(VoxelException.class, () -> filled(c)).getMessage();
  }
}

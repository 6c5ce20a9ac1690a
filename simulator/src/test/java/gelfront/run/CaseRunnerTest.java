// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.CancelledException;
import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Constriction;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.finding.Severity;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.example.Examples;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import gelfront.setup.FeedSystem;
import gelfront.setup.PartLoader;
import gelfront.setup.PlainCase;
import gelfront.setup.Section;
import gelfront.setup.Shot;
import gelfront.voxelize.VoxelException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CaseRunnerTest {
  private static Case setup(FeedSystem feed) {
    return plain(feed).make();
  }

  private static Case setup(FeedSystem feed, double voxel) {
    return plain(feed).withVoxel(voxel).make();
  }

  private static Case opened(FeedSystem feed, double at) {
    return setup(feed).with(shot(OptionalDouble.of(at)));
  }

  private static PlainCase plain(FeedSystem feed) {
    return PlainCase.fedBy(feed).withShot(shot(OptionalDouble.empty()));
  }

  /** From an injector of 50 ml. */
  private static Shot shot(OptionalDouble openAt) {
    return new Shot(165, 2, 5, 20e3, List.of(), OptionalDouble.of(50e-6), openAt);
  }

  private static FeedSystem.Declared feed(Vec3 at, Vec3 direction, double gate) {
    return PlainCase.feed(
        new FeedSystem.Gate(at, direction, Section.round(gate), 3e-3),
        new FeedSystem.Sprue(10e-3, 10e-3, 28e-3, direction));
  }

  private static Findings run(TriangleMesh part, FeedSystem feed) {
    return findings(setup(feed), part);
  }

  private static Findings findings(Case c, TriangleMesh part) {
    return CaseRunner.run(c, part, Workers.SERIAL, Progress.NONE).judgement().findings();
  }

  private static double deepest(Findings f) {
    return f.pockets().stream().mapToDouble(p -> p.dents().get(0).depthHigh()).max().orElse(0);
  }

  private static final Vec3 NOSE = Vec3.ZERO;
  private static final Vec3 BACK = PlainCase.BACK;

  /** Common practice, no source. */
  @Test
  void depthOfADentHardlyDependsOnTheVoxelSize() {
    TriangleMesh cone =
        Solids.revolution(
            new double[] {0, 4e-3, 74e-3, 80e-3}, new double[] {1e-3, 2e-3, 7.5e-3, 4e-3}, 64);
    FeedSystem thin = feed(Vec3.ZERO, new Vec3(-1, 0, 0), 4e-3);

    double coarse = deepest(findings(setup(thin, 0.7e-3), cone));
    double fine = deepest(findings(setup(thin, 0.45e-3), cone));

    assertTrue(fine > 0.1e-3);
    assertEquals(fine, coarse, 0.3 * fine);
  }

  @Test
  void anEvenStickHasNoLocalDent() {
    Findings f = run(Examples.all().get("straight-stick"), feed(NOSE, BACK, 3e-3));

    assertEquals(Severity.CLEAN, f.severity());
    assertEquals(1, f.pockets().size());
  }

  /**
   * Common practice, no source: opened hot, a thick part goes out of shape. Its dents are those of
   * a part that stays in the mould, whenever that is opened.
   */
  @Test
  void openedWithALiquidCoreItGoesOvalAndOpenedFirmItDoesNot() {
    TriangleMesh cone = Examples.all().get("cone-body");
    FeedSystem thick = feed(new Vec3(80e-3, 0, 0), new Vec3(1, 0, 0), 5e-3);
    Findings firm = findings(setup(thick), cone);
    Findings early = findings(opened(thick, 8), cone);
    Findings late = findings(opened(thick, 1 + firm.firmAt()), cone);

    assertFalse(firm.opening().byClock());
    assertTrue(early.opening().oval() > early.visibleDepth(), "" + early.opening());
    assertEquals(Severity.WILL_DENT, early.severity());
    assertTrue(early.verdict().startsWith("Opened after 8 s this part goes oval"), early.verdict());
    assertTrue(early.advice().get(0).startsWith("Leave the mould shut until"));
    // Where the clock puts steps moves dents, 0.314 to 0.329 mm over openings after 5 to 12 s.
    assertEquals(deepest(firm), deepest(early), 0.03 * deepest(firm));
    assertEquals(0, late.opening().oval());
    assertEquals("", late.opening().sentence());
    assertEquals(firm.severity(), late.severity());
  }

  /**
   * Common practice, no source. Told apart only where the thin end, not the gate, closes first:
   * with a gate narrower than the cone's thin end conduction alone sees the same gate on both
   * sides.
   */
  @Test
  void aConeFedAtItsThickEndDentsLess() {
    TriangleMesh cone = Examples.all().get("cone-body");

    Findings thin = run(cone, feed(NOSE, BACK, 5e-3));
    Findings thick = run(cone, feed(new Vec3(80e-3, 0, 0), new Vec3(1, 0, 0), 5e-3));

    assertTrue(deepest(thick) < deepest(thin), deepest(thick) + " " + deepest(thin));
  }

  @Test
  void aThinEndThatClosesBeforeItsWideGateIsBlamedInItsStead() {
    Findings f = run(Examples.all().get("cone-body"), feed(NOSE, BACK, 6e-3));

    Constriction c = f.pockets().get(0).constriction();
    assertEquals(Constriction.Kind.NECK, c.kind());
    assertTrue(c.closedAt() < 0.9 * f.gateSets(), c.closedAt() + " and " + f.gateSets());
    assertTrue(c.place().x() > 0 && c.width() < 6e-3, c.toString());
  }

  /** A long stick poured through a hole as wide as itself: no feed at its end could be wider. */
  @Test
  void whereNothingIsNarrowerThanThePocketThePartIsTooThick() {
    TriangleMesh stick =
        Solids.revolution(new double[] {0, 60e-3, 62e-3}, new double[] {5e-3, 5e-3, 2e-3}, 64);

    FeedSystem.Declared usual = feed(NOSE, BACK, 9.6e-3);
    FeedSystem huge = PlainCase.feed(usual.gate(), new FeedSystem.Sprue(20e-3, 20e-3, 30e-3, BACK));

    Findings wide = run(stick, huge);
    Findings narrow = run(stick, feed(NOSE, BACK, 3e-3));

    assertEquals(Constriction.Kind.TOO_THICK, wide.pockets().get(0).constriction().kind());
    assertEquals(Constriction.Kind.GATE, narrow.pockets().get(0).constriction().kind());
  }

  @Test
  void aWiderGateFallsShortByLessAndSaysSo() {
    TriangleMesh body = Examples.all().get("bulb-thin-nose");
    Vec3 bulb = new Vec3(65e-3, 0, 8e-3);

    double voxel = 0.6e-3;
    Vec3 side = new Vec3(0, 0, 1);

    Pocket small = findings(setup(feed(bulb, side, 3e-3), voxel), body).pockets().get(0);
    Pocket large = findings(setup(feed(bulb, side, 4.5e-3), voxel), body).pockets().get(0);

    assertTrue(small.margin() > 5, small.toString());
    assertTrue(large.margin() < small.margin(), large.margin() + " and " + small.margin());
    String said = String.format(java.util.Locale.ROOT, "%.0f s longer", small.margin());
    assertTrue(small.sentence().contains(said), small.sentence());
    assertTrue(small.sign().contains("the gate closed first"), small.sign());
  }

  /**
   * All of the sprue closes at once then, beside the gate too. Its width is told to a voxel's
   * diagonal: no cell's middle lies on the axis.
   */
  @Test
  void aSprueThinnerThanTheGateIsBlamedInItsStead() {
    FeedSystem feed =
        PlainCase.feed(
            new FeedSystem.Gate(NOSE, BACK, Section.round(6e-3), 3e-3),
            new FeedSystem.Sprue(4e-3, 4e-3, 30e-3, BACK));

    Findings f = findings(setup(feed, 0.5e-3), Examples.all().get("cone-body"));

    Constriction c = f.pockets().get(0).constriction();
    assertEquals(Constriction.Kind.SPRUE, c.kind());
    assertEquals(4e-3, c.width(), 0.71e-3);
  }

  /** Though most suction is spent in the sprue: where it narrows to the gate. */
  @Test
  void aWideSprueIsNotBlamedForItsGate() {
    String text =
        """
        part.caliper = [
          { distance = "0 mm", width = "5 mm", height = "5 mm" },
          { distance = "6 mm", width = "12 mm", height = "12 mm" },
          { distance = "46 mm", width = "12 mm", height = "12 mm" },
          { distance = "56 mm", width = "5 mm", height = "5 mm" }]
        gate = { at = ["0 mm", "0 mm", "0 mm"], direction = [-1, 0, 0], size = "3 mm", land = "3 mm" }
        sprue = { diameter = "10 mm", length = "30 mm" }
        block = { material = "aluminium-6061", wall = "12 mm" }
        plastisol = { grade = "soft", no_flow = "100 degC" }
        shot = { temperature = "165.6 degC", hold_time = "0 s" }
        numerics = { level = "quick", voxel = "0.5 mm" }
        """;
    Case loose = CaseFile.parse("rod", text, Path.of("")).setup();

    Findings f = findings(loose, PartLoader.load(loose.part()).mesh());

    assertEquals(Constriction.Kind.GATE, f.pockets().get(0).constriction().kind());
  }

  /** Common practice, no source. */
  @Test
  void aWiderGateNeverMakesItWorse() {
    TriangleMesh body = Examples.all().get("bulb-thin-nose");
    Vec3 side = new Vec3(0, 0, 1);
    Vec3 bulb = new Vec3(65e-3, 0, 8e-3);
    double last = Double.POSITIVE_INFINITY;
    double lastUnfed = Double.POSITIVE_INFINITY;
    for (double gate : new double[] {3e-3, 4e-3, 6e-3}) {
      Findings f = run(body, feed(bulb, side, gate));

      double unfed = f.pockets().stream().mapToDouble(Pocket::unfedLow).sum();
      assertTrue(deepest(f) <= last * 1.02, gate + ": " + deepest(f) + " after " + last);
      assertTrue(unfed < lastUnfed, gate + ": " + unfed + " after " + lastUnfed);
      last = deepest(f);
      lastUnfed = unfed;
    }
  }

  @Test
  void theNeckPartsTheSecondBulbAndIsNamed() {
    Findings f = run(Examples.all().get("two-bulbs-neck"), feed(NOSE, BACK, 4e-3));

    Pocket p = f.pockets().get(0);
    assertEquals(Constriction.Kind.GATE, p.constriction().kind());
    assertEquals(0, p.constriction().place().distance(new Vec3(-1.5e-3, 0, 0)), 2e-3);
    assertEquals(34e-3, p.centre().x(), 3e-3);
    assertEquals(2, p.spots().size());
    assertEquals(60e-3, p.spots().get(1).neck().place().x(), 2e-3);
    assertEquals(5e-3, p.spots().get(1).neck().width(), 0.8e-3);
    assertEquals(80e-3, p.spots().get(1).place().x(), 3e-3);
  }

  @Test
  void aFeedInTheMeshIsFoundAndAgreesWithTheSameOneDeclared() {
    TriangleMesh whole = Examples.all().get("two-bulbs-with-feed");

    double voxel = 0.5e-3;
    Findings found =
        findings(setup(new FeedSystem.InMesh(Optional.empty(), Optional.empty()), voxel), whole);
    Findings declared =
        findings(setup(feed(NOSE, BACK, 3e-3), voxel), Examples.all().get("two-bulbs-neck"));

    assertEquals(declared.gateSets(), found.gateSets(), 0.15 * declared.gateSets());
    assertEquals(declared.partSets(), found.partSets(), 0.02 * declared.partSets());
    double part = declared.amounts().partVolume();
    assertEquals(part, found.amounts().partVolume(), 0.02 * part);
  }

  @Test
  void amountsAndShrinkageAreWhatTheFormulasSay() {
    TriangleMesh stick = Examples.all().get("straight-stick");

    Findings f = run(stick, feed(NOSE, BACK, 3e-3));

    assertEquals(stick.volume(), f.amounts().partVolume(), 0.03 * stick.volume());
    assertEquals(935 * f.amounts().partVolume(), f.amounts().partMass(), 1e-9);
    double sprue = Math.PI * 25e-6 * 28e-3;
    assertEquals(sprue, f.amounts().feedVolume(), 0.05 * sprue);
    assertTrue(f.amounts().injectorHoldsIt());
    // Gelled contraction alone, 125 to 25 °C at 7e-4 / K, is 2.3 % of length; the hot share adds.
    assertTrue(f.linearShrinkage() > 0.023 && f.linearShrinkage() < 0.035);
    assertTrue(f.gateSets() < f.partSets() && f.partSets() < f.firmAt());
  }

  @Test
  void aGateBesideThePartIsRefusedWithItsPlace() {
    VoxelException e =
        assertThrows(
            VoxelException.class,
            () ->
                run(
                    Solids.sphere(Vec3.ZERO, 6e-3, 32),
                    feed(new Vec3(30e-3, 20e-3, 0), new Vec3(1, 0, 0), 3e-3)));

    assertTrue(e.getMessage().contains("(30.00, 20.00, 0.00) mm"), e.getMessage());
  }

  @Test
  void cancellingStopsTheRun() {
    Case c = setup(feed(NOSE, BACK, 3e-3));
    TriangleMesh part = Examples.all().get("straight-stick");

    assertThrows(
        CancelledException.class,
        () -> CaseRunner.run(c, part, Workers.SERIAL, (stage, f) -> !stage.equals("cooling")));
  }
}

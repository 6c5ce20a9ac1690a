// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Constriction;
import gelfront.finding.Dent;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.material.MaterialTable;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.Block;
import gelfront.setup.Case;
import gelfront.setup.FeedSystem;
import gelfront.setup.Numerics;
import gelfront.setup.PartShape;
import gelfront.setup.Placement;
import gelfront.setup.Section;
import gelfront.setup.Shot;
import gelfront.setup.Side;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.VoxelException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Bulbs side by side in one block, all fed from one sprue. */
class SeveralCavitiesTest {
  private static final MaterialTable MATERIALS = MaterialTable.builtIn();
  private static final Vec3 BACK = new Vec3(-1, 0, 0);

  /** A bulb of 5 mm radius behind a nose of 2 mm. */
  private static final TriangleMesh BULB =
      Solids.revolution(
          new double[] {0, 4e-3, 12e-3, 20e-3}, new double[] {2e-3, 4e-3, 5e-3, 1e-3}, 48);

  private static FeedSystem declared(boolean runner, Optional<Vec3> at) {
    return new FeedSystem.Declared(
        new FeedSystem.Gate(Vec3.ZERO, BACK, Section.round(2.8e-3), 3e-3),
        runner ? Optional.of(new FeedSystem.Runner(Section.round(5e-3), 5e-3)) : Optional.empty(),
        Optional.empty(),
        new FeedSystem.Sprue(8e-3, 8e-3, 15e-3, BACK, at));
  }

  private static Block block(List<Block.Face> faces, Optional<Box> outer) {
    return block(10e-3, faces, outer);
  }

  private static Block block(double wall, List<Block.Face> faces, Optional<Box> outer) {
    return new Block(
        MATERIALS.mould("aluminium-6061"),
        wall,
        outer,
        30,
        23,
        9,
        2500,
        List.of(),
        List.of(),
        faces,
        2500,
        Optional.empty(),
        List.of());
  }

  private static Case setup(FeedSystem feed, Block block, Placement... copies) {
    return new Case(
        "bulbs",
        new PartShape.Calipers(List.of()),
        List.of(copies),
        feed,
        List.of(),
        block,
        MATERIALS.plastisol("soft"),
        new Shot(165, 2, 5, 20e3, List.of(), OptionalDouble.empty(), OptionalDouble.empty()),
        Optional.of(new Vec3(0, 0, 1)),
        OptionalDouble.empty(),
        feed instanceof FeedSystem.InMesh m ? Math.max(1, m.gates().size()) : 1 + copies.length,
        new Numerics(Numerics.Level.QUICK, OptionalDouble.of(0.5e-3)),
        List.of());
  }

  private static Case setup(Placement... copies) {
    return setup(declared(true, Optional.empty()), block(List.of(), Optional.empty()), copies);
  }

  private static Placement beside(double yMm) {
    return Placement.shifted(new Vec3(0, yMm * 1e-3, 0));
  }

  private static Findings run(Case c, TriangleMesh part) {
    return CaseRunner.run(c, part, Workers.SERIAL, Progress.NONE).judgement().findings();
  }

  private static String refusal(Case c) {
    return assertThrows(VoxelException.class, () -> CaseVoxels.of(c, BULB, Progress.NONE))
        .getMessage();
  }

  @Test
  void fourOnOneRunnerSetAsOneDoesAndArePlacedInTheirCavity() {
    Findings one = run(setup(), BULB);

    Findings four = run(setup(beside(18), beside(36), beside(-18)), BULB);

    assertEquals(1, one.pockets().size());
    assertEquals(List.of(), one.pockets().get(0).cavities());
    assertEquals(4, four.pockets().size(), () -> four.pockets().toString());
    TreeSet<Integer> seen = new TreeSet<>();
    double[] middles = {0, 18e-3, 36e-3, -18e-3};
    for (Pocket p : four.pockets()) {
      int number = p.cavities().get(0);
      seen.add(number);
      assertEquals(1, p.cavities().size());
      assertEquals(middles[number - 1], p.centre().y(), 1e-3);
      assertEquals(Constriction.Kind.GATE, p.constriction().kind());
      assertEquals(one.gateSets(), p.cutOff(), 0.03 * one.gateSets());
      assertTrue(p.sentence().contains("mm in cavity " + number + ", "), p.sentence());
    }
    assertEquals(4, seen.size());
    assertTrue(four.partSets() > one.partSets() && four.partSets() < 1.1 * one.partSets());
    double volume = one.amounts().partVolume();
    assertEquals(volume, four.amounts().partVolume(), 0.01 * volume);
    assertEquals(4, four.amounts().cavities());
    assertEquals(4 * one.amounts().topUpVolume(), four.amounts().topUpVolume(), 0.5 * 4 * volume);
  }

  @Test
  void theOneAtTheEndOfALongThinRunnerIsCutOffByItAndEarlier() {
    FeedSystem.Declared usual = (FeedSystem.Declared) declared(true, Optional.empty());
    FeedSystem thin =
        new FeedSystem.Declared(
            new FeedSystem.Gate(Vec3.ZERO, BACK, Section.round(4e-3), 2e-3),
            Optional.of(new FeedSystem.Runner(Section.round(3.5e-3), 5e-3)),
            Optional.empty(),
            usual.sprue());

    List<Pocket> two =
        run(setup(thin, block(List.of(), Optional.empty()), beside(50)), BULB).pockets();

    assertEquals(2, two.size(), two::toString);
    Pocket near = two.stream().filter(p -> p.cavities().equals(List.of(1))).findFirst().get();
    Pocket far = two.stream().filter(p -> p.cavities().equals(List.of(2))).findFirst().get();
    assertEquals(Constriction.Kind.RUNNER, far.constriction().kind());
    assertEquals(3.5e-3, far.constriction().width(), 0.7e-3);
    assertTrue(far.cutOff() < 0.8 * near.cutOff(), far.cutOff() + " " + near.cutOff());
    assertTrue(deepest(far) > deepest(near), far + " " + near);
  }

  private static double deepest(Pocket p) {
    return p.dents().stream().mapToDouble(Dent::depthHigh).max().orElseThrow();
  }

  @Test
  void aHalfTurnAboutTheSprueNeedsNoMoreRunner() {
    Vec3 end = new Vec3(-8e-3, 0, 0);
    FeedSystem.Sprue up = new FeedSystem.Sprue(8e-3, 8e-3, 20e-3, new Vec3(0, 0, 1));
    FeedSystem.Declared flat = (FeedSystem.Declared) declared(true, Optional.empty());
    FeedSystem feed = new FeedSystem.Declared(flat.gate(), flat.runner(), Optional.empty(), up);
    Placement across = Placement.turned(Math.PI, new Vec3(0, 0, 1), end);

    Findings two = run(setup(feed, block(List.of(), Optional.empty()), across), BULB);

    Pocket p = two.pockets().get(0);
    Pocket q = two.pockets().get(1);
    assertEquals(2, two.pockets().size());
    assertEquals(-16e-3, p.centre().x() + q.centre().x(), 0.7e-3);
    assertEquals(p.cutOff(), q.cutOff(), 0.03 * p.cutOff());
    assertEquals(p.lastSet(), q.lastSet(), 0.01 * p.lastSet());
  }

  /** Thin aluminium warms until the part sheds its heat no more; water keeps it cold. */
  @Test
  void waterOnOneSideCoolsTheCavityThereFirst() {
    List<Block.Face> cooled = List.of(new Block.Face(new Side(1, true), 2000, 10));
    FeedSystem feed = declared(true, Optional.of(new Vec3(-8e-3, 9e-3, 0)));
    Block plain = block(3e-3, List.of(), Optional.empty());

    Findings even = run(setup(feed, plain, beside(18)), BULB);
    Findings cold = run(setup(feed, block(3e-3, cooled, Optional.empty()), beside(18)), BULB);

    assertEquals(lastSet(even, 1), lastSet(even, 2), 0.005 * lastSet(even, 1));
    double gap = lastSet(cold, 1) - lastSet(cold, 2);
    double evenGap = lastSet(even, 1) - lastSet(even, 2);
    assertTrue(gap > 3 * Math.abs(evenGap), gap + " s and " + evenGap + " s");
    assertTrue(lastSet(cold, 1) < lastSet(even, 1));
    assertTrue(cold.firmAt() < 0.9 * even.firmAt(), cold.firmAt() + " and " + even.firmAt());
  }

  private static double lastSet(Findings f, int cavity) {
    return f.pockets().stream()
        .filter(p -> p.cavities().equals(List.of(cavity)))
        .mapToDouble(Pocket::lastSet)
        .findFirst()
        .orElseThrow();
  }

  /** Drawn in the mesh as declared above, by the same solids. */
  @Test
  void twoInTheMeshWithMarkedGatesAgreeWithTheSameDeclared() {
    Case declared = setup(beside(18));
    TriangleMesh whole = CaseVoxels.of(declared, BULB, Progress.NONE).surface();
    FeedSystem marked =
        new FeedSystem.InMesh(
            List.of(new Vec3(-1.5e-3, 0, 0), new Vec3(-1.5e-3, 18e-3, 0)),
            Optional.of(new Vec3(-23e-3, 0, 0)));

    Findings drawn = run(setup(marked, block(List.of(), Optional.empty())), whole);
    Findings stated = run(declared, BULB);

    assertEquals(2, drawn.amounts().cavities());
    assertEquals(
        stated.amounts().partVolume(),
        drawn.amounts().partVolume(),
        0.03 * stated.amounts().partVolume());
    for (int k = 1; k <= 2; k++) {
      assertEquals(lastSet(stated, k), lastSet(drawn, k), 0.02 * lastSet(stated, k));
    }
  }

  @Test
  void copiesThatMeetAreRefused() {
    String told = refusal(setup(beside(18), beside(9)));

    assertTrue(told.startsWith("cavities 1 and 3 overlap"), told);
    assertTrue(refusal(setup(beside(10.2))).startsWith("cavities 1 and 2 overlap, or less"));
  }

  @Test
  void copiesOutsideTheBlockAreRefused() {
    Box box = new Box(new Vec3(-23e-3, -12e-3, -12e-3), new Vec3(30e-3, 22e-3, 12e-3));
    Block stated = block(List.of(), Optional.of(box));

    String told = refusal(setup(declared(true, Optional.empty()), stated, beside(18)));

    assertEquals("the cavity sticks out of the block by 1.00 mm on its face +y", told);
  }

  @Test
  void aWallUnderAVoxelIsRefused() {
    Box box = new Box(new Vec3(-23e-3, -5.3e-3, -12e-3), new Vec3(30e-3, 12e-3, 12e-3));

    String told =
        refusal(setup(declared(true, Optional.empty()), block(List.of(), Optional.of(box))));

    assertTrue(told.startsWith("only 0.30 mm of mould lie between the cavity and"), told);
    assertTrue(told.contains("face -y; a voxel, here 0.50 mm"), told);
  }

  /** Without marks the tool takes one cavity, and says what it took the other for. */
  @Test
  void aSecondCavityWithoutAMarkIsTold() {
    TriangleMesh whole = CaseVoxels.of(setup(beside(18)), BULB, Progress.NONE).surface();
    FeedSystem unmarked = new FeedSystem.InMesh(List.of(), Optional.of(new Vec3(-23e-3, 0, 0)));

    CaseVoxels v =
        CaseVoxels.of(setup(unmarked, block(List.of(), Optional.empty())), whole, Progress.NONE);

    String told = v.report().notes().toString();
    assertTrue(told.contains("as large as a part, but was taken for feed system"), told);
  }

  @Test
  void aRunnerThatIsMissingOrRunsThroughACavityIsRefused() {
    Block plain = block(List.of(), Optional.empty());

    String none = refusal(setup(declared(false, Optional.empty()), plain, beside(18)));
    String through =
        refusal(
            setup(
                declared(true, Optional.empty()),
                plain,
                Placement.turned(Math.PI, new Vec3(0, 0, 1), new Vec3(30e-3, 0, 0))));

    assertTrue(none.startsWith("the runner of cavity 2 must lead from (-3.00, 18.00"), none);
    assertTrue(through.contains("runs through cavity"), through);
  }
}

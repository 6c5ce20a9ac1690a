// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Findings;
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
import gelfront.setup.Section;
import gelfront.setup.Shot;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What warmer places and inserts of the block do to a short bar with its gate at x = 0. */
class BlockFeaturesTest {
  private static final MaterialTable MATERIALS = MaterialTable.builtIn();
  private static final Block.Region ROUND_THE_GATE =
      new Block.Region.Ball(new Vec3(-1.5e-3, 0, 0), 12e-3);

  private static final Block.Region BUSH = new Block.Region.Ball(new Vec3(-1.5e-3, 0, 0), 5e-3);

  private static Findings run(List<Block.WarmSpot> spots, List<Block.Insert> inserts) {
    TriangleMesh bar = Solids.cylinder(Vec3.ZERO, new Vec3(40e-3, 0, 0), 4e-3, 4e-3, 48);
    Vec3 back = new Vec3(-1, 0, 0);
    Block block =
        new Block(
            MATERIALS.mould("aluminium-6061"),
            12e-3,
            Optional.empty(),
            30,
            23,
            9,
            2500,
            spots,
            inserts);
    Case c =
        new Case(
            "block features",
            new PartShape.Calipers(List.of()),
            List.of(),
            new FeedSystem.Declared(
                new FeedSystem.Gate(Vec3.ZERO, back, Section.round(4e-3), 3e-3),
                Optional.empty(),
                Optional.empty(),
                new FeedSystem.Sprue(8e-3, 8e-3, 15e-3, back)),
            List.of(),
            block,
            MATERIALS.plastisol("soft"),
            new Shot(165, 2, 5, 20e3, List.of(), OptionalDouble.of(50e-6), OptionalDouble.empty()),
            Optional.of(new Vec3(0, 0, 1)),
            OptionalDouble.empty(),
            1,
            new Numerics(Numerics.Level.QUICK, OptionalDouble.of(0.6e-3), false, false),
            List.of());
    return CaseRunner.run(c, bar, Workers.SERIAL, Progress.NONE).judgement().findings();
  }

  @Test
  void aWarmSpotEvensOutInAluminiumBeforeTheGateSets() {
    Findings even = run(List.of(), List.of());
    Findings warm = run(List.of(new Block.WarmSpot(ROUND_THE_GATE, 70)), List.of());

    // 12 mm of aluminium even out within r^2 / alpha = 2 s, so a spot that hot helps a little only.
    assertTrue(warm.gateSets() > 1.02 * even.gateSets());
    assertTrue(warm.gateSets() < 1.4 * even.gateSets());
    assertTrue(warm.gateSets() - even.gateSets() > 3 * (warm.partSets() - even.partSets()) / 40);
  }

  @Test
  void anInsulatingInsertRoundTheGateKeepsItOpenLonger() {
    Findings even = run(List.of(), List.of());
    Findings bush =
        run(List.of(), List.of(new Block.Insert(BUSH, MATERIALS.mould("printed-resin"))));
    Findings same =
        run(
            List.of(),
            List.of(
                new Block.Insert(
                    new Block.Region.Cuboid(new Box(new Vec3(-1, -1, -1), new Vec3(1, 1, 1))),
                    MATERIALS.mould("aluminium-6061"))));

    assertTrue(bush.gateSets() > 1.5 * even.gateSets());
    assertEquals(even.gateSets(), same.gateSets(), 1e-9);
  }
}

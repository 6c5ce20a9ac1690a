// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Constriction;
import gelfront.finding.Findings;
import gelfront.finding.Pocket;
import gelfront.grid.Cavity;
import gelfront.grid.Refinement;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.verdict.Owners;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.FeedSolids;
import gelfront.voxelize.VoxelException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A body and a ball with a thin neck between them, fed at one end or at both from one sprue. */
final class TwoGatesTest {
  private static final double BALL = 45e-3;

  private static final String ONE =
      """
      name = "Dumbbell"
      [part]
      mesh = "dumbbell.stl"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "5 mm"
      land = "2 mm"
      [sprue]
      diameter = "10 mm"
      length = "20 mm"
      [block]
      wall = "8 mm"
      [plastisol]
      grade = "soft"
      [shot]
      temperature = "165 degC"
      [numerics]
      level = "quick"
      """;

  private static final String OTHER =
      """
      [[another_gate]]
      at = ["53 mm", "0 mm", "7 mm"]
      direction = [0, 0, 1]
      size = "4 mm"
      land = "2 mm"
      runner = "6 mm"
      way = [["53 mm", "0 mm", "15 mm"], ["-5 mm", "0 mm", "15 mm"]]
      """;

  @TempDir private Path folder;

  private static TriangleMesh part() {
    return Solids.revolution(
        new double[] {0, 3e-3, 22e-3, 26e-3, 42e-3, 46e-3, 58e-3, 61e-3},
        new double[] {4.5e-3, 7e-3, 7e-3, 1.5e-3, 1.5e-3, 7e-3, 7e-3, 2e-3},
        48);
  }

  private LoadedCase read(String text) throws IOException {
    Files.writeString(folder.resolve("dumbbell.stl"), "not read");
    return CaseFile.read(Files.writeString(folder.resolve("c.toml"), text));
  }

  private Findings findings(String text) throws IOException {
    LoadedCase c = read(text);
    return CaseRunner.run(
            c.with(c.setup().numerics().withoutFlow()).setup(),
            part(),
            Workers.SERIAL,
            Progress.NONE)
        .judgement()
        .findings();
  }

  private CaseVoxels voxels(String text) throws IOException {
    return CaseVoxels.of(read(text).setup(), part(), Progress.NONE);
  }

  @Test
  void onlyTheNarrowGateGetsSmallCells() throws IOException {
    String narrow = ONE.replace("size = \"5 mm\"", "size = \"3 mm\"");
    Cavity wide = voxels(narrow + OTHER).model().cavity();
    Cavity both =
        voxels(narrow + OTHER.replace("size = \"4 mm\"", "size = \"3 mm\"")).model().cavity();

    List<Refinement.Patch> small = wide.refinement().patches();
    assertEquals(1, small.size());
    assertTrue(small.get(0).grid().edge(0, 0) < 0, "at the nose");
    assertEquals(2, both.refinement().patches().size());
  }

  @Test
  void theBallThatTheNeckStarvesIsFedByItsOwnGate() throws IOException {
    Findings one = findings(ONE);
    Findings two = findings(ONE + OTHER);

    Pocket starved = ball(one);
    assertEquals(Constriction.Kind.NECK, starved.constriction().kind());
    Pocket fed = ball(two);
    assertEquals(Constriction.Kind.GATE, fed.constriction().kind());
    assertEquals(4e-3, fed.constriction().width(), 1e-9, "the second gate's own width");
    assertTrue(fed.constriction().place().x() > BALL, "beside the ball");
    assertTrue(fed.constriction().closedAt() > 1.5 * starved.constriction().closedAt());
  }

  private static Pocket ball(Findings f) {
    return f.pockets().stream().filter(p -> p.centre().x() > BALL).findFirst().orElseThrow();
  }

  @Test
  void theSecondGatesRunnerIsOneBodyWithTheFirstsSprue() throws IOException {
    CaseVoxels one = voxels(ONE);
    CaseVoxels two = voxels(ONE + OTHER);
    assertEquals(2, two.gates().size());
    assertEquals(4e-3, two.gates().get(1).width(), 1e-9);
    double more = volume(two, Cavity.Region.RUNNER) - volume(one, Cavity.Region.RUNNER);
    double length = 6e-3 + 58e-3 + 15e-3 - 10e-3 / 2; // less what lies in the sprue
    assertEquals(Math.PI * 9e-6 * length, more, 0.05 * more);
    assertTrue(
        FeedSolids.of(
                    read(ONE + OTHER).setup(),
                    (gelfront.setup.FeedSystem.Declared) read(ONE + OTHER).setup().feed(),
                    part())
                .box()
                .max()
                .z()
            > 17e-3);
  }

  private static double volume(CaseVoxels v, Cavity.Region r) {
    Cavity cavity = v.model().cavity();
    return IntStream.range(0, cavity.count())
        .filter(c -> cavity.region()[c] == r.ordinal())
        .mapToDouble(c -> cavity.volumes()[c])
        .sum();
  }

  @Test
  void aCopyHasItsOwnSecondGate() throws IOException {
    String copy =
        """
        [[part.copy]]
        shift = ["0 mm", "24 mm", "0 mm"]
        [runner]
        size = "6 mm"
        length = "6 mm"
        """;
    CaseVoxels v = voxels(ONE.replace("length = \"20 mm\"", "length = \"30 mm\"") + copy + OTHER);
    assertEquals(4, v.gates().size());
    short[] owner = Owners.of(v);
    Cavity cavity = v.model().cavity();
    int far = cavity.nearest(new Vec3(53e-3, 24e-3, 8e-3));
    assertEquals(Cavity.Region.GATE.ordinal(), cavity.region()[far]);
    assertEquals(2, owner[far]);
    assertEquals(1, owner[cavity.nearest(new Vec3(53e-3, 0, 8e-3))]);
  }

  @Test
  void aRunnerThatTouchesThePartIsRefused() throws IOException {
    String straight =
        OTHER.lines().filter(l -> !l.startsWith("way")).reduce("", (a, b) -> a + b + "\n");
    VoxelException through = assertThrows(VoxelException.class, () -> voxels(ONE + straight));
    assertTrue(through.getMessage().contains("gate 2"), through.getMessage());
    assertTrue(through.getMessage().contains("runs through the part"), through.getMessage());
    String grazes = OTHER.replace("\"15 mm\"", "\"9.5 mm\"");
    assertThrows(VoxelException.class, () -> voxels(ONE + grazes));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.live;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Findings;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.run.CaseRunner;
import gelfront.setup.Case;
import gelfront.setup.FeedSystem;
import gelfront.setup.PartShape;
import gelfront.setup.PlainCase;
import gelfront.setup.Section;
import gelfront.voxelize.VoxelException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.RejectedExecutionException;
import org.junit.jupiter.api.Test;

class LiveModelTest {
  private static final TriangleMesh PART =
      Solids.revolution(
          new double[] {0, 4e-3, 12e-3, 20e-3}, new double[] {2e-3, 4e-3, 3e-3, 1e-3}, 48);

  private final Queue<Runnable> todo = new ArrayDeque<>();
  private final LiveModel live = LiveModel.open(PlainCase.SHAPE, PART, Workers.SERIAL, todo::add);

  private static Case setup(double gate, double gateY, double sprue, double wall, double holdTime) {
    Vec3 back = PlainCase.BACK;
    return PlainCase.fedBy(
            PlainCase.feed(
                new FeedSystem.Gate(new Vec3(0, gateY, 0), back, Section.round(gate), 2e-3),
                new FeedSystem.Sprue(6e-3, 7e-3, sprue, back)))
        .withWall(wall)
        .withShot(PlainCase.shot(165, 2, holdTime))
        .withVoxel(0.5e-3)
        .make();
  }

  private static final Case FIRST = setup(3e-3, 0, 10e-3, 12e-3, 5);
  private static final Case WIDER = setup(3.4e-3, 0, 10e-3, 12e-3, 5);
  private static final Case ASIDE = setup(3e-3, 0.6e-3, 10e-3, 12e-3, 5);
  private static final Case LONGER = setup(3e-3, 0, 13.3e-3, 12e-3, 5);
  private static final Case BLOCK = setup(3e-3, 0, 10e-3, 15e-3, 5);
  private static final Case RECIPE = setup(3e-3, 0, 10e-3, 12e-3, 3);

  private void work() {
    while (!todo.isEmpty()) {
      todo.remove().run();
    }
  }

  private CaseRunner.Outcome outcome(Case c) {
    CompletableFuture<CaseRunner.Outcome> future = live.outcome(c, Progress.NONE);
    work();
    return future.join();
  }

  private static void assertSameBits(CaseRunner.Outcome fresh, CaseRunner.Outcome given) {
    assertEquals(fresh.voxels().report(), given.voxels().report());
    assertEquals(fresh.voxels().model().cavity().grid(), given.voxels().model().cavity().grid());
    assertArrayEquals(
        fresh.voxels().model().cavity().cells(), given.voxels().model().cavity().cells());
    assertArrayEquals(
        fresh.voxels().model().cavity().walls().distance(),
        given.voxels().model().cavity().walls().distance());
    assertArrayEquals(fresh.shot().set(), given.shot().set());
    assertArrayEquals(fresh.end().temperature, given.end().temperature);
    assertArrayEquals(fresh.end().mould, given.end().mould);
    assertArrayEquals(fresh.judgement().cutOff(), given.judgement().cutOff());
    assertEquals(fresh.steps(), given.steps());
    assertEquals(fresh.judgement().findings(), given.judgement().findings());
  }

  private static CaseRunner.Outcome fresh(Case c) {
    return CaseRunner.run(c, PART, Workers.SERIAL, Progress.NONE);
  }

  /** Each change after the last, so that what is kept comes from another case; the first again. */
  @Test
  void givesWhatAFreshRunGivesToTheLastBit() {
    for (Case c : List.of(FIRST, WIDER, ASIDE, LONGER, BLOCK, RECIPE, FIRST)) {
      assertSameBits(fresh(c), outcome(c));
    }
  }

  @Test
  void everyChangeCounts() {
    Set<Findings> all = new HashSet<>();
    for (Case c : List.of(FIRST, WIDER, ASIDE, LONGER, BLOCK, RECIPE)) {
      all.add(outcome(c).judgement().findings());
    }

    assertEquals(6, all.size());
  }

  @Test
  void aRecipeKeepsTheVoxelsAndABlockTheCavity() {
    CaseRunner.Outcome first = outcome(FIRST);
    CaseRunner.Outcome recipe = outcome(RECIPE);
    CaseRunner.Outcome block = outcome(BLOCK);

    assertSame(first.voxels(), recipe.voxels());
    assertNotSame(first.voxels(), block.voxels());
    assertSame(first.voxels().model().cavity(), block.voxels().model().cavity());
  }

  @Test
  void theNewestRequestWins() {
    CompletableFuture<Findings> a = live.request(FIRST);
    CompletableFuture<Findings> b = live.request(WIDER);
    CompletableFuture<Findings> c = live.request(RECIPE);

    assertEquals(1, todo.size());
    work();

    assertThrows(CancellationException.class, a::get);
    assertThrows(CancellationException.class, b::get);
    assertEquals(fresh(RECIPE).judgement().findings(), c.join());
  }

  /** The request comes in the midst of a stage, from the running request's own watcher. */
  private List<String> checksUntilStopped(String stage, int times) {
    List<String> checks = new ArrayList<>();
    List<CompletableFuture<Findings>> newer = new ArrayList<>();
    CompletableFuture<Findings> older =
        live.request(
            FIRST,
            (name, f) -> {
              checks.add(name);
              if (checks.stream().filter(stage::equals).count() == times && newer.isEmpty()) {
                checks.clear();
                newer.add(live.request(WIDER));
              }
              return true;
            });
    work();
    assertTrue(older.isCancelled());
    assertEquals(fresh(WIDER).judgement().findings(), newer.get(0).join());
    return checks;
  }

  /** One more check may be under way; a run has more than a hundred. */
  @Test
  void aRunningRequestStopsAtTheNextCheck() {
    assertTrue(checksUntilStopped("finding the cavity's cells", 4).size() <= 1);
    assertTrue(checksUntilStopped("cooling", 10).size() <= 1);
    assertTrue(checksUntilStopped("judging", 5).size() <= 1);
  }

  @Test
  void checksAreManySoThatNoneIsFar() {
    List<String> checks = new ArrayList<>();
    CompletableFuture<Findings> done = live.request(FIRST, (stage, f) -> checks.add(stage));
    work();

    assertFalse(done.isCompletedExceptionally());
    assertTrue(checks.stream().filter("finding the cavity's cells"::equals).count() >= 9);
    assertTrue(checks.stream().filter("judging"::equals).count() >= 10);
    long inEachStep = 2;
    assertTrue(
        checks.stream().filter("cooling"::equals).count() >= inEachStep * outcome(FIRST).steps());
  }

  @Test
  void aCallerMayCancelAndAskAgain() {
    CompletableFuture<Findings> a = live.request(FIRST, (stage, f) -> !stage.equals("cooling"));
    work();
    CompletableFuture<Findings> b = live.request(FIRST);
    b.cancel(false);
    work();

    assertTrue(a.isCancelled());
    assertTrue(b.isCancelled());
    assertSameBits(fresh(FIRST), outcome(FIRST));
  }

  @Test
  void anImpossibleGateFailsAloneAndTheNextRequestWorks() {
    CompletableFuture<Findings> off = live.request(setup(3e-3, 50e-3, 10e-3, 12e-3, 5));
    work();

    ExecutionException e = assertThrows(ExecutionException.class, off::get);
    assertTrue(e.getCause() instanceof VoxelException);
    assertSameBits(fresh(FIRST), outcome(FIRST));
  }

  @Test
  void nothingRunsWhileNothingIsAsked() {
    CompletableFuture<Findings> a = live.request(FIRST);
    todo.remove().run();

    assertTrue(a.isDone());
    assertTrue(todo.isEmpty());
    assertFalse(a.isCompletedExceptionally());
  }

  @Test
  void aClosedExecutorIsToldAndOtherPartsAreRefused() {
    LiveModel closed =
        LiveModel.open(
            PlainCase.SHAPE,
            PART,
            Workers.SERIAL,
            r -> {
              throw new RejectedExecutionException();
            });

    assertThrows(RejectedExecutionException.class, () -> closed.request(FIRST));
    assertThrows(RejectedExecutionException.class, () -> closed.request(FIRST));
    LiveModel other =
        LiveModel.open(
            new PartShape.Meshes(List.of(), Optional.empty()), PART, Workers.SERIAL, todo::add);
    assertThrows(IllegalArgumentException.class, () -> other.request(FIRST));
  }
}

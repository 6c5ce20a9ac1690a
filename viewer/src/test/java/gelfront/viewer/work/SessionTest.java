// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.VoxelDoubt;
import gelfront.base.Told;
import gelfront.base.Units;
import gelfront.setup.CaseFile;
import gelfront.setup.Change;
import gelfront.viewer.Cases;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** All that can be done in the window, without one. This test's thread is the window's. */
@Timeout(120)
class SessionTest {
  @TempDir Path folder;

  private final LinkedBlockingQueue<Runnable> events = new LinkedBlockingQueue<>();
  private final Backgrounds threads = new Backgrounds(1);
  private final Session session = new Session(threads, events::add);

  @AfterEach
  void end() {
    threads.close();
  }

  private void until(BooleanSupplier there) throws InterruptedException {
    while (!there.getAsBoolean()) {
      Runnable next = events.poll(60, TimeUnit.SECONDS);
      assertTrue(next != null, "waited in vain");
      next.run();
    }
  }

  private void openBar() throws IOException, InterruptedException {
    session.open(Cases.barCase(folder));
    until(() -> session.project().isPresent());
  }

  private static List<Change> gate(double mm) {
    return List.of(Change.mm("gate.size", mm * 1e-3));
  }

  private double gate() {
    return session
        .project()
        .orElseThrow()
        .now()
        .stated("gate.size", gelfront.base.Dimension.LENGTH)
        .orElseThrow();
  }

  @Test
  void aVerdictComesByItselfAndSaysThatItIsQuick() throws Exception {
    openBar();

    assertTrue(session.busy());
    until(() -> !session.busy());

    assertTrue(session.verdict().lines(Units.METRIC).get(0).startsWith("quick: "));
    assertTrue(session.verdict().findings().isPresent(), session.verdict().error());
  }

  @Test
  void ofManyChangesTheLastOneIsAnswered() throws Exception {
    openBar();
    for (double mm = 3; mm < 5; mm += 0.1) {
      session.change(gate(mm));
    }
    session.change(gate(6.5));
    until(() -> !session.busy());

    double wide = session.verdict().findings().orElseThrow().gateSets();
    session.change(gate(2));
    until(() -> !session.busy());
    double narrow = session.verdict().findings().orElseThrow().gateSets();

    assertTrue(wide > 2 * narrow, wide + " s, " + narrow + " s");
  }

  @Test
  void whatCanNotBeCalculatedIsSaidAndTheNextChangeIsAnsweredAgain() throws Exception {
    openBar();
    session.change(List.of(new Change.Set("gate.at", "[\"0 mm\", \"40 mm\", \"0 mm\"]")));
    until(() -> !session.busy());
    assertFalse(session.verdict().error().isEmpty());
    List<String> beside = session.verdict().lines(Units.METRIC);
    assertTrue(beside.size() > 1 && beside.size() <= 5, beside.toString());
    assertTrue(beside.stream().allMatch(l -> l.length() <= 60), beside.toString());

    session.undo();
    until(() -> !session.busy());

    assertTrue(session.verdict().findings().isPresent());
  }

  @Test
  void aMistakeIsSaidAndChangesNothing() throws Exception {
    openBar();

    Optional<String> wrong = session.change(List.of(Change.degC("shot.temperature", 500)));

    assertTrue(wrong.orElseThrow().contains("500"), wrong.get());
    assertFalse(session.project().orElseThrow().unsaved());
  }

  @Test
  void changesAreUndoneAndADragIsOneStep() throws Exception {
    openBar();
    session.change(gate(4));
    session.change(gate(4.5));
    session.goOn(gate(5));
    session.goOn(gate(5.5));

    session.undo();
    assertEquals(4e-3, gate(), 1e-9);
    session.undo();
    assertEquals(3e-3, gate(), 1e-9);
    session.redo();
    session.redo();
    assertEquals(5.5e-3, gate(), 1e-9);
  }

  @Test
  void theSavedCaseIsTheCommandLinesOwnWithTheUsersComments() throws Exception {
    openBar();
    Path file = session.project().orElseThrow().file().orElseThrow();
    session.change(gate(4));
    assertTrue(session.project().get().unsaved());

    session.save(file);

    assertFalse(session.project().get().unsaved());
    assertTrue(Files.readString(file).contains("size = \"4 mm\"   " + Cases.COMMENT));
    Path elsewhere = Files.createDirectory(folder.resolve("other")).resolve("copy.toml");
    session.save(elsewhere);
    assertEquals(
        folder.resolve("bar.stl").toRealPath(),
        ((gelfront.setup.PartShape.Meshes) CaseFile.read(elsewhere).setup().part())
            .files()
            .get(0)
            .toRealPath());
  }

  @Test
  void aCheckGivesAResultThatAChangeMakesStale() throws Exception {
    openBar();
    session.check();
    assertTrue(session.checking().isPresent());
    until(() -> session.result().isPresent());

    assertTrue(session.checking().isEmpty());
    assertFalse(session.stale());
    assertEquals("bar", session.result().get().name());
    session.change(gate(4));
    assertTrue(session.stale());
    session.undo();
    assertFalse(session.stale());
  }

  @Test
  void aCheckedVerdictIsHeldAgainstCoarserVoxelsOnceAndKeptWhenTheCaseChanges() throws Exception {
    openBar();
    session.check(); // at level quick: there is nothing coarser
    until(() -> session.result().isPresent());
    assertFalse(session.comparing());
    assertTrue(session.voxels().isEmpty());

    session.change(List.of(Change.word("numerics.level", "normal")));
    session.check(); // before its quick verdict has come
    until(() -> session.result().isPresent() && !session.stale());
    until(() -> !session.busy());

    VoxelDoubt v = session.voxels().orElseThrow();
    assertEquals("normal", v.finer().level());
    assertEquals(session.result().get().findings().severity(), v.finer().severity());
    assertEquals(
        session.verdict().findings().orElseThrow().severity(), v.coarser().get().severity());
    assertEquals(0.7e-3, v.coarser().get().voxel());
    session.change(gate(4));
    until(() -> !session.busy());
    assertEquals(v, session.voxels().orElseThrow(), "of the result, not of the changed case");
  }

  @Test
  void aCheckShowsTheFreezingAsItGoesAndAtItsEndTheResult() throws Exception {
    openBar();
    until(() -> !session.busy());
    boolean[] seen = {false};
    session.watch(
        w -> {
          if (w == What.FREEZING) {
            LiveFreezing f = session.freezing().orElseThrow();
            int liquid = 0;
            for (float t : f.run().fields().setTime()) {
              liquid += Float.isInfinite(t) ? 1 : 0;
              assertTrue(
                  Float.isInfinite(t) || t <= f.time() * (1 + 1e-6), "none sets in the future");
            }
            seen[0] |= liquid > 0;
            assertTrue(f.scale() >= f.time());
          }
        });
    session.change(
        List.of(Change.word("numerics.level", "normal"), Change.mm("numerics.voxel", 0.3e-3)));
    session.check();
    until(() -> session.result().isPresent());

    assertTrue(seen[0], "liquid was seen on the way");
    assertTrue(session.freezing().isEmpty());
  }

  @Test
  void anAnswerIsShownAndOneThatCanNotBeIsSaid() throws Exception {
    openBar();
    session.ask(
        (l, p, t, pr) -> {
          throw new IllegalArgumentException("there is no gate to size");
        });
    assertTrue(session.checking().isPresent());
    until(() -> session.checking().isEmpty());
    assertEquals("there is no gate to size", session.message());
    assertTrue(session.bad() && session.help().isEmpty());

    gelfront.answer.Sizing none =
        new gelfront.answer.Sizing("bar", 2e-4, List.of(), -1, Told.of("No gate will do."), 0);
    session.ask((l, p, t, pr) -> new Help.OfSizes(none, List.of(l)));
    until(() -> session.help().isPresent());

    session.change(gate(4));
    session.become(((Help.OfSizes) session.help().get()).designs().get(0));
    assertEquals(3e-3, gate(), 1e-9);
    session.undo();
    assertEquals(4e-3, gate(), 1e-9);
  }

  @Test
  void aStoppedCheckIsOverAtOnceAndLeavesNoResult() throws Exception {
    openBar();
    session.change(List.of(Change.word("numerics.level", "fine")));
    session.check();

    session.stopCheck();

    assertTrue(session.checking().isEmpty());
    assertEquals("Stopped.", session.message());
    until(() -> !session.busy());
    assertTrue(session.result().isEmpty());
  }
}

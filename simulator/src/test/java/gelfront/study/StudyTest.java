// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.RunStore;
import gelfront.base.CancelledException;
import gelfront.base.Changed;
import gelfront.base.Progress;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.CaseFile;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.setup.Numerics;
import gelfront.setup.PartLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

final class StudyTest {
  private final ExecutorService pool = Executors.newFixedThreadPool(3);

  @AfterEach
  void end() {
    pool.shutdownNow();
  }

  private static final TriangleMesh PART = PartLoader.load(base().setup().part()).mesh();

  private static LoadedCase base() {
    LoadedCase read = CaseFile.parse("bean.toml", StudyCases.BEAN, Path.of("").toAbsolutePath());
    return read.with(read.setup().numerics().withoutFlow()); // a third of the time
  }

  private static Job gate(double mm) {
    return Job.of(mm + " mm", base(), List.of(Change.mm("gate.size", mm * 1e-3)));
  }

  private Study study(RunStore store, int threads) {
    return Study.of(base(), PART, "1", store, pool, threads);
  }

  private static RunOutcome timeless(Ran ran) {
    return Changed.of(ran.outcome().orElseThrow(), "seconds", 0.0);
  }

  @Test
  void outcomesDependNeitherOnThreadsNorOnCompany() {
    List<Job> jobs = List.of(gate(2), gate(4), gate(2));
    List<Ran> alone = new ArrayList<>();
    jobs.forEach(
        j -> alone.addAll(study(RunStore.inMemory(), 1).run("", List.of(j), Progress.NONE)));

    List<Ran> together = study(RunStore.inMemory(), 3).run("", jobs, Progress.NONE);

    for (int i = 0; i < jobs.size(); i++) {
      assertEquals(timeless(alone.get(i)), timeless(together.get(i)));
    }
    assertTrue(
        together.get(1).outcome().get().dentHigh() < together.get(0).outcome().get().dentHigh());
  }

  @Test
  void nothingIsCalculatedTwice() {
    RunStore store = RunStore.inMemory();
    Study first = study(store, 2);
    first.run("", List.of(gate(2), gate(2)), Progress.NONE);
    assertEquals(1, first.calculated());

    Study second = study(store, 2);
    second.run("", List.of(gate(2), gate(3)), Progress.NONE);
    assertEquals(1, second.calculated());
    assertEquals(1, second.reused());

    second.run("", List.of(gate(2), gate(3)), Progress.NONE);
    assertEquals(1, second.calculated());
    assertEquals(1, second.reused(), "what was asked for twice counts once");
  }

  @Test
  void oneBadRunLeavesItsReasonAndTheOthers() {
    Job bad =
        Job.of(
            "beside",
            base(),
            List.of(new Change.Set("gate.at", "[\"0 mm\", \"90 mm\", \"0 mm\"]")));

    List<Ran> ran = study(RunStore.inMemory(), 2).run("", List.of(gate(2), bad), Progress.NONE);

    assertTrue(ran.get(0).outcome().isPresent());
    assertTrue(ran.get(1).error().contains("gate"), ran.get(1).error());
  }

  @Test
  void stoppingKeepsWhatHasEnded() {
    RunStore store = RunStore.inMemory();
    AtomicInteger asked = new AtomicInteger();
    Study study = study(store, 1);
    List<Job> jobs = List.of(gate(2), gate(3));
    Progress stops = (stage, f) -> f < 0.55 || asked.incrementAndGet() < 2;

    assertThrows(CancelledException.class, () -> study.run("", jobs, stops));

    assertEquals(1, study.calculated());
    assertTrue(store.find(study.hash(jobs.get(0))).isPresent());
    assertTrue(store.find(study.hash(jobs.get(1))).isEmpty());
  }

  @Test
  void progressRisesToTheEnd() {
    List<Double> told = new ArrayList<>();
    Progress watch =
        (stage, f) -> {
          assertEquals("sizes: 2 runs", stage);
          return told.add(f);
        };

    study(RunStore.inMemory(), 1).run("sizes", List.of(gate(2), gate(3)), watch);

    for (int i = 1; i < told.size(); i++) {
      assertTrue(told.get(i) >= told.get(i - 1), told.subList(i - 1, i + 1).toString());
    }
    assertTrue(told.get(told.size() - 1) > 0.9, "" + told.get(told.size() - 1));
  }

  @Test
  void theHashKnowsAllThatMattersAndNothingElse() {
    Study study = study(RunStore.inMemory(), 1);
    String hash = study.hash(gate(2));

    assertEquals(hash, study.hash(gate(2)));
    assertEquals(hash, Study.of(base(), PART, "1", RunStore.inMemory(), pool, 2).hash(gate(2)));
    assertNotEquals(hash, study.hash(gate(2.001)));
    assertNotEquals(hash, study.hash(gate(2).normal()));
    assertNotEquals(hash, Study.of(base(), PART, "2", RunStore.inMemory(), pool, 1).hash(gate(2)));
    Job named = Job.of("", gate(2).loaded(), List.of(Change.word("name", "Other")));
    assertEquals(hash, study.hash(named));
    Numerics flowing = new Numerics(Numerics.Level.QUICK, OptionalDouble.empty());
    assertNotEquals(hash, study.hash(new Job("", gate(2).loaded().with(flowing))));
  }

  @Test
  void impossibleChangesAreSaidInWords() {
    String no = assertThrows(IllegalArgumentException.class, () -> gate(900)).getMessage();

    assertTrue(no.startsWith("900.0 mm: size = 900 mm is out of range"), no);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.answer.RunStore;
import gelfront.base.Progress;
import gelfront.mesh.TriangleMesh;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.study.Job;
import gelfront.study.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ExecutorService;

/**
 * A study on all cores beside one run at a time, with the same runs: none is in a store.
 *
 * @param runs of each
 * @param one s of all runs, one after another on one thread
 * @param all s of all runs on so many threads
 */
record StudyTiming(int runs, int threads, double one, double all) {
  private static final int RUNS_A_THREAD = 4;
  private static final int WARM_TURNS = 3;

  /**
   * Median of {@code turns}, each of a study one run at a time and one on all cores, after turns
   * that aren't counted: Java's compiler has threads of its own, which would cost only the study on
   * all cores.
   *
   * @param pool with so many free threads
   */
  static StudyTiming median(
      LoadedCase base, TriangleMesh part, int turns, ExecutorService pool, int threads) {
    List<Job> jobs = jobs(base, RUNS_A_THREAD * threads);
    List<StudyTiming> took = new ArrayList<>();
    for (int i = 0; i < WARM_TURNS + turns; i++) {
      double one = seconds(base, part, jobs, pool, 1);
      double all = seconds(base, part, jobs, pool, threads);
      took.add(new StudyTiming(jobs.size(), threads, one, all));
    }
    return took.stream()
        .skip(WARM_TURNS)
        .sorted(Comparator.comparingDouble(StudyTiming::efficiency))
        .toList()
        .get(turns / 2);
  }

  private static List<Job> jobs(LoadedCase base, int count) {
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String label = "shot " + i;
      List<Change> hotter =
          List.of(Change.degC("shot.temperature", base.setup().shot().temperature() + 0.1 * i));
      jobs.add(Job.of(label, base, hotter).quick());
    }
    return jobs;
  }

  private static double seconds(
      LoadedCase base, TriangleMesh part, List<Job> jobs, ExecutorService pool, int threads) {
    Study study = Study.of(base, part, "timing", RunStore.inMemory(), pool, threads);
    return Stopwatch.seconds(() -> study.run("timing", jobs, Progress.NONE));
  }

  /** Share of what so many cores could do: 1 where each run takes as long as alone. */
  double efficiency() {
    return one / (threads * all);
  }
}

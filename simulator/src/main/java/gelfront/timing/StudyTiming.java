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

  /**
   * After one run that warms up.
   *
   * @param pool with so many free threads
   */
  static StudyTiming of(LoadedCase base, TriangleMesh part, ExecutorService pool, int threads) {
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < RUNS_A_THREAD * threads; i++) {
      String label = "shot " + i;
      List<Change> hotter =
          List.of(Change.degC("shot.temperature", base.setup().shot().temperature() + 0.1 * i));
      jobs.add(Job.of(label, base, hotter).quick());
    }
    study(base, part, pool, 1).run("timing", jobs.subList(0, 1), Progress.NONE);
    Study alone = study(base, part, pool, 1);
    double one = Stopwatch.seconds(() -> alone.run("timing", jobs, Progress.NONE));
    Study together = study(base, part, pool, threads);
    double all = Stopwatch.seconds(() -> together.run("timing", jobs, Progress.NONE));
    return new StudyTiming(jobs.size(), threads, one, all);
  }

  private static Study study(
      LoadedCase base, TriangleMesh part, ExecutorService pool, int threads) {
    return Study.of(base, part, "timing", RunStore.inMemory(), pool, threads);
  }

  /** Share of what so many cores could do: 1 where each run takes as long as alone. */
  double efficiency() {
    return one / (threads * all);
  }
}

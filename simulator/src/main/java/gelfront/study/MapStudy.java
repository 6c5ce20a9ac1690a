// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.answer.DentMap;
import gelfront.answer.Ran;
import gelfront.base.Progress;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * A map over two inputs.
 *
 * @param x the first
 * @param y the second
 * @param level puts a job on the level that is calculated
 */
public record MapStudy(Range x, Range y, UnaryOperator<Job> level) {
  public MapStudy {
    if (x.input().equals(y.input())) {
      throw new IllegalArgumentException(
          "both inputs are " + x.input().words() + ": a map needs two");
    }
  }

  /**
   * Its runs, row by row, and the case as it is at the end.
   *
   * @throws IllegalArgumentException in words, if a value can't be had
   */
  public List<Job> jobs(LoadedCase base) {
    List<Job> jobs = new ArrayList<>();
    for (double v : y.values()) {
      for (double u : x.values()) {
        List<Change> changes = new ArrayList<>(x.changes(base, u));
        changes.addAll(y.changes(base, v));
        jobs.add(level.apply(Job.of(x.label(u) + ", " + y.label(v), base, changes)));
      }
    }
    jobs.add(level.apply(Job.of("as it is", base, List.of())));
    return jobs;
  }

  /**
   * @throws IllegalArgumentException in words, if a value can't be had
   */
  public DentMap run(Study study, Progress progress) {
    LoadedCase base = study.base();
    List<Job> jobs = jobs(base);
    List<Ran> ran = study.run("map", jobs, progress);
    List<List<Ran>> rows = new ArrayList<>();
    for (int r = 0; r < y.steps(); r++) {
      rows.add(ran.subList(r * x.steps(), (r + 1) * x.steps()));
    }
    return new DentMap(
        base.setup().name(),
        jobs.get(0).setup().numerics().level().name().toLowerCase(Locale.ROOT),
        base.setup().visibleDent(),
        axis(x, base),
        axis(y, base),
        rows,
        ran.get(ran.size() - 1));
  }

  private static DentMap.Axis axis(Range r, LoadedCase base) {
    return new DentMap.Axis(r.input().words(), r.unit(), r.values(), r.present(base));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.base.CancelledException;
import gelfront.result.StoredRun;
import gelfront.run.StoredRuns;
import gelfront.setup.LoadedCase;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.jspecify.annotations.Nullable;

/**
 * A check or a study that is going on: one at a time, stopped at once. What comes from one that was
 * stopped is dropped. For the window's thread.
 */
final class LongWork {
  private final Backgrounds threads;
  private final Executor ui;
  private final Ends ends;
  private @Nullable Progressing going;
  private Freezing.@Nullable Moment freezing;

  /** What comes of it; on the window's thread, once nothing is going on any more. */
  interface Ends {
    /** That has changed. */
    void tell(What what);

    /** A check is done. */
    void checked(LoadedCase loaded, StoredRun run);

    /** A question is answered. */
    void answered(Help help);

    /** It ended with nothing but words. */
    void over(String words, boolean wrong);
  }

  /** What is done off the window's thread; what it returns is done back on it. */
  private interface Work {
    Runnable on(Progressing p);
  }

  /**
   * @param ui runs things on the window's thread
   */
  LongWork(Backgrounds threads, Executor ui, Ends ends) {
    this.threads = threads;
    this.ui = ui;
    this.ends = ends;
  }

  Optional<Progressing> going() {
    return Optional.ofNullable(going);
  }

  /** How far the freezing has come in a check that is going on. */
  Optional<Freezing.Moment> freezing() {
    return going == null ? Optional.empty() : Optional.ofNullable(freezing);
  }

  /** Calculates a case at its own level. */
  void check(LoadedCase loaded) {
    start(
        loaded,
        p -> {
          StoredRun run = calculated(loaded, p);
          return () -> ends.checked(loaded, run);
        });
  }

  private StoredRun calculated(LoadedCase loaded, Progressing p) {
    double noFlow = loaded.setup().plastisol().noFlow();
    Freezing watch = new Freezing(noFlow, m -> ui.execute(() -> freezes(p, m)));
    return StoredRuns.run(loaded, threads.workers(), p, Runs.provenance(), watch);
  }

  private void freezes(Progressing p, Freezing.Moment m) {
    if (going == p) {
      freezing = m;
      ends.tell(What.FREEZING);
    }
  }

  /** Asks about a project's design. */
  void ask(Project project, Asking asking) {
    LoadedCase loaded = project.now();
    start(
        loaded,
        p -> {
          try {
            Help h = asking.answer(loaded, project.part(), threads, p.plain());
            return () -> ends.answered(h);
          } catch (IllegalArgumentException e) { // in words: there is nothing to size
            return () -> ends.over(String.valueOf(e.getMessage()), true);
          }
        });
  }

  private void start(LoadedCase loaded, Work work) {
    Progressing p = new Progressing(() -> ui.execute(() -> ends.tell(What.CHECK)));
    going = p;
    freezing = null;
    ends.tell(What.CHECK);
    threads
        .check()
        .execute(
            () -> {
              Runnable end = ended(loaded, work, p);
              ui.execute(() -> end(p, end));
            });
  }

  private Runnable ended(LoadedCase loaded, Work work, Progressing p) {
    try {
      return work.on(p);
    } catch (CancelledException e) {
      return () -> ends.over("Stopped.", false);
    } catch (RuntimeException | OutOfMemoryError e) {
      String words = Quick.words(e, loaded);
      return () -> ends.over(words, true);
    }
  }

  private void end(Progressing p, Runnable end) {
    if (going == p) {
      going = null;
      end.run();
      ends.tell(What.CHECK);
    }
  }

  /**
   * At once: what still runs is not waited for.
   *
   * @return whether anything was going on
   */
  boolean stop() {
    if (going == null) {
      return false;
    }
    going.stop();
    end(going, () -> ends.over("Stopped.", false));
    return true;
  }
}

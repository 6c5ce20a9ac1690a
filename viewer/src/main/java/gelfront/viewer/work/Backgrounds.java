// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.answer.RunStore;
import gelfront.base.Workers;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** The threads beside those of window and engine. */
public final class Backgrounds implements AutoCloseable {
  private final int threads;
  private final RunStore outcomes;
  private final ExecutorService pool;
  private final ExecutorService reading = one("gelfront reads");
  private final ExecutorService quick = one("gelfront quick");
  private final ExecutorService check = one("gelfront checks");
  private final ExecutorService drawing = one("gelfront draws");

  /**
   * @param threads that loops are split over
   */
  public Backgrounds(int threads) {
    this(threads, RunStore.inMemory());
  }

  /**
   * @param threads that loops are split over
   * @param outcomes of what studies ran, which none of them runs again
   */
  public Backgrounds(int threads, RunStore outcomes) {
    this.threads = threads;
    this.outcomes = outcomes;
    this.pool = Executors.newFixedThreadPool(2 * threads, named("gelfront counts"));
  }

  /** What comes while the window closes is dropped: nobody looks any more. */
  private static ExecutorService one(String name) {
    return new ThreadPoolExecutor(
        1,
        1,
        0,
        TimeUnit.SECONDS,
        new LinkedBlockingQueue<>(),
        named(name),
        new ThreadPoolExecutor.DiscardPolicy());
  }

  private static ThreadFactory named(String name) {
    return r -> {
      Thread t = new Thread(r, name);
      t.setDaemon(true);
      return t;
    };
  }

  public int threads() {
    return threads;
  }

  /** Of all studies so far. */
  RunStore outcomes() {
    return outcomes;
  }

  /** For loops, and for the runs of a study. */
  public ExecutorService pool() {
    return pool;
  }

  public Workers workers() {
    return new Workers(pool, threads);
  }

  /** Files. */
  public ExecutorService reading() {
    return reading;
  }

  /** Quick verdicts. */
  public ExecutorService quick() {
    return quick;
  }

  /** Checks and studies. */
  public ExecutorService check() {
    return check;
  }

  /** Meshes for the engine. */
  public ExecutorService drawing() {
    return drawing;
  }

  @Override
  public void close() {
    for (ExecutorService e : new ExecutorService[] {reading, quick, check, drawing, pool}) {
      e.shutdownNow();
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.function.IntSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Splits loops over a passed-in executor. Loops are cut into chunks of a fixed size, whatever the
 * number of threads; a body writes only its own range, so that number never changes a result. Free
 * threads take the next chunk, and the calling one never waits for a thread that has not begun.
 */
public final class Workers {
  /** Elements that a body gets at most; every range begins at a multiple of it. */
  public static final int CHUNK = 4096;

  /**
   * Chunks that a thread is woken for, at least: some 0.1 ms of work at 5 to 8 ns an element. For
   * less, two threads took 1.2 to 1.35 times as long as one on a busy machine, as measured.
   */
  static final int WORTH_WAKING = 4;

  /** Everything on the calling thread. */
  public static final Workers SERIAL = new Workers(Runnable::run, 1);

  private final Executor pool;
  private final IntSupplier threads;
  private final Runnable helper = this::help;

  /** Helpers handed to the pool that have not ended yet. */
  private final AtomicInteger helpers = new AtomicInteger();

  private volatile @Nullable Loop current;

  /**
   * @param pool with at least {@code threads - 1} free threads
   * @param threads that work on one loop, the calling one included
   */
  public Workers(Executor pool, int threads) {
    this(pool, () -> threads);
    if (threads < 1) {
      throw new IllegalArgumentException("a loop needs a thread: " + threads);
    }
  }

  /**
   * @param threads that may work on a loop which begins now, at least 1: they may change, and with
   *     them no result
   */
  public Workers(Executor pool, IntSupplier threads) {
    this.pool = pool;
    this.threads = threads;
  }

  /** That work on one loop, the calling one included. */
  public int threads() {
    return threads.getAsInt();
  }

  /** Chunks that a loop is cut into. */
  public static int chunks(int n) {
    return (n + CHUNK - 1) / CHUNK;
  }

  /** A loop body over {@code from <= i < to}. */
  @FunctionalInterface
  public interface Range {
    void run(int from, int to);
  }

  /** Runs the body over 0 to n-1 in chunks and returns when all of it is done. */
  public void over(int n, Range body) {
    Loop loop = new Loop(n, body);
    int wanted = Math.min(threads(), loop.chunks / WORTH_WAKING) - 1;
    if (wanted > 0) {
      current = loop;
      // Counted once: helpers that have already ended are not missing, they found nothing left.
      for (int missing = wanted - helpers.get(); missing > 0; missing--) {
        helpers.incrementAndGet();
        pool.execute(helper);
      }
    }
    loop.work();
    loop.await();
  }

  private void help() {
    try {
      Loop seen;
      do {
        seen = Objects.requireNonNull(current, "helpers begin after a loop");
        seen.work();
      } while (seen != current);
    } finally {
      helpers.decrementAndGet();
    }
  }

  private static final class Loop {
    private final Range body;
    private final int n;
    private final int chunks;
    private final Thread caller = Thread.currentThread();
    private final AtomicInteger next = new AtomicInteger();
    private final AtomicInteger done = new AtomicInteger();
    private volatile @Nullable Throwable failure;

    Loop(int n, Range body) {
      this.n = n;
      this.body = body;
      chunks = chunks(n);
    }

    void work() {
      for (int c = next.getAndIncrement(); c < chunks; c = next.getAndIncrement()) {
        try {
          if (failure == null) {
            body.run(c * CHUNK, Math.min(n, (c + 1) * CHUNK));
          }
        } catch (RuntimeException | Error e) {
          failure = e;
        }
        if (done.incrementAndGet() == chunks && Thread.currentThread() != caller) {
          LockSupport.unpark(caller);
        }
      }
    }

    void await() {
      while (done.get() < chunks) {
        LockSupport.park(this);
        if (Thread.interrupted()) {
          finishInterrupted();
        }
      }
      if (failure instanceof RuntimeException e) {
        throw e;
      }
      if (failure != null) {
        throw new IllegalStateException("a worker failed", failure);
      }
    }

    /** Others still write into the caller's arrays: it may not leave before they are done. */
    private void finishInterrupted() {
      while (done.get() < chunks) {
        LockSupport.parkNanos(this, 1_000_000);
        Thread.interrupted();
      }
      Thread.currentThread().interrupt();
      throw new CancelledException("waiting for a worker");
    }
  }
}

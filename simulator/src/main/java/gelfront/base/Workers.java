package gelfront.base;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;

/**
 * Splits loops over a passed-in executor. A body writes only its own range, so the number of
 * threads never changes a result.
 */
public final class Workers {
  /** Below this many elements a hand-over costs more than it saves. */
  private static final int WORTH_SPLITTING = 20_000;

  /** Everything on the calling thread. */
  public static final Workers SERIAL = new Workers(null, 1);

  private final ExecutorService pool;
  private final int threads;

  /**
   * @param pool with at least {@code threads - 1} free threads
   * @param threads that work on one loop, the calling one included
   */
  public Workers(ExecutorService pool, int threads) {
    if (threads < 1 || (threads > 1 && pool == null)) {
      throw new IllegalArgumentException("several threads need a pool");
    }
    this.pool = pool;
    this.threads = threads;
  }

  /** That work on one loop, the calling one included. */
  public int threads() {
    return threads;
  }

  /** A loop body over {@code from <= i < to}. */
  @FunctionalInterface
  public interface Range {
    void run(int from, int to);
  }

  /** Runs the body over 0 to n-1 and returns when all of it is done. */
  public void over(int n, Range body) {
    if (threads == 1 || n < WORTH_SPLITTING) {
      body.run(0, n);
      return;
    }
    List<Future<?>> rest = new ArrayList<>(threads - 1);
    for (int t = 1; t < threads; t++) {
      int from = (int) ((long) n * t / threads);
      int to = (int) ((long) n * (t + 1) / threads);
      rest.add(pool.submit(() -> body.run(from, to)));
    }
    body.run(0, n / threads);
    rest.forEach(Workers::await);
  }

  private static void await(Future<?> f) {
    try {
      f.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancelledException("waiting for a worker");
    } catch (ExecutionException e) {
      throw new IllegalStateException("a worker failed", e.getCause());
    }
  }
}

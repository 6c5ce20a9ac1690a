// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Runs work with an end to its time and to what it sets aside in memory. */
public final class Bounds implements AutoCloseable {
  private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          r -> {
            Thread t = new Thread(r, "bounded");
            t.setDaemon(true);
            return t;
          });
  private final long seconds;
  private final long bytes;

  /**
   * @param seconds that it may take: far more than it does, it only tells a hang
   * @param bytes that it may ask for, let go or not
   */
  public Bounds(long seconds, long bytes) {
    this.seconds = seconds;
    this.bytes = bytes;
  }

  /**
   * @return what went beyond a bound or was thrown; empty where neither
   */
  public String run(Callable<?> work) throws InterruptedException {
    try {
      long asked = thread.submit(() -> asked(work)).get(seconds, TimeUnit.SECONDS);
      return asked > bytes ? "asked for " + (asked >> 20) + " MiB" : "";
    } catch (TimeoutException e) {
      return "not done after " + seconds + " s";
    } catch (ExecutionException e) {
      return String.valueOf(e.getCause());
    }
  }

  private long asked(Callable<?> work) throws Exception {
    long before = threads.getCurrentThreadAllocatedBytes();
    work.call();
    return threads.getCurrentThreadAllocatedBytes() - before;
  }

  @Override
  public void close() {
    thread.shutdownNow();
  }
}

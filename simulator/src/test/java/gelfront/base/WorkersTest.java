// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class WorkersTest {
  /** Enough for three threads. */
  private static final int MANY = 3 * Workers.WORTH_WAKING * Workers.CHUNK + 17;

  private final ExecutorService pool = Executors.newFixedThreadPool(3);

  @AfterEach
  void close() {
    pool.shutdownNow();
  }

  @Test
  void everyElementIsVisitedOnceInChunksThatBeginAtMultiples() {
    Workers workers = new Workers(pool, 3);
    for (int n : new int[] {0, 1, Workers.CHUNK, Workers.CHUNK + 1, MANY}) {
      for (int repeat = 0; repeat < 50; repeat++) {
        AtomicIntegerArray seen = new AtomicIntegerArray(n);
        workers.over(
            n,
            (from, to) -> {
              assertEquals(0, from % Workers.CHUNK);
              assertTrue(to - from <= Workers.CHUNK);
              for (int i = from; i < to; i++) {
                seen.incrementAndGet(i);
              }
            });
        for (int i = 0; i < n; i++) {
          assertEquals(1, seen.get(i), "element " + i + " of " + n);
        }
      }
    }
  }

  @Test
  void aPoolThatIsBusyElsewhereHoldsNothingUp() {
    CountDownLatch gate = new CountDownLatch(1);
    for (int t = 0; t < 3; t++) {
      pool.execute(
          () -> {
            try {
              gate.await();
            } catch (InterruptedException e) {
              Thread.currentThread().interrupt();
            }
          });
    }
    AtomicInteger sum = new AtomicInteger();

    new Workers(pool, 2).over(MANY, (from, to) -> sum.addAndGet(to - from));

    assertEquals(MANY, sum.get());
    gate.countDown();
  }

  @Test
  void whatABodyThrowsReachesTheCallerAndTheNextLoopRuns() {
    Workers workers = new Workers(pool, 3);

    assertThrows(
        ArithmeticException.class,
        () ->
            workers.over(
                MANY,
                (from, to) -> {
                  throw new ArithmeticException("chunk at " + from);
                }));

    AtomicInteger sum = new AtomicInteger();
    workers.over(MANY, (from, to) -> sum.addAndGet(to - from));
    assertEquals(MANY, sum.get());
  }

  @Test
  void moreThreadsMayHelpFromOneLoopToTheNext() {
    AtomicInteger threads = new AtomicInteger(1);
    Workers workers = new Workers(pool, threads::get);

    assertEquals(1, meeting(MANY, workers, 1), "the caller alone");
    threads.set(3);
    assertEquals(3, meeting(MANY, workers, 3));
  }

  @Test
  void shortLoopsWakeNobody() {
    int few = (2 * Workers.WORTH_WAKING - 1) * Workers.CHUNK;

    assertEquals(1, meeting(few, new Workers(pool, 3), 1));
    assertEquals(2, meeting(few + 1, new Workers(pool, 3), 2));
  }

  /** Threads in a loop at once, each of which waits until so many have come. */
  private static int meeting(int n, Workers workers, int expected) {
    CountDownLatch all = new CountDownLatch(expected);
    Set<Thread> seen = ConcurrentHashMap.newKeySet();
    workers.over(
        n,
        (from, to) -> {
          seen.add(Thread.currentThread());
          all.countDown();
          try {
            assertTrue(all.await(10, TimeUnit.SECONDS), "nobody else comes");
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
        });
    return seen.size();
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.function.Supplier;

/**
 * What a piece of work took.
 *
 * @param value what it gave
 * @param seconds by the wall clock
 * @param peakHeap bytes, most that was in use meanwhile, garbage not yet collected included
 */
record Stopwatch<T>(T value, double seconds, long peakHeap) {

  static <T> Stopwatch<T> time(Supplier<T> work) {
    ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
    long start = System.nanoTime();
    T value = work.get();
    double seconds = (System.nanoTime() - start) * 1e-9;
    long peak =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(p -> p.getType() == MemoryType.HEAP)
            .mapToLong(p -> p.getPeakUsage().getUsed())
            .sum();
    return new Stopwatch<>(value, seconds, peak);
  }

  /** s that the work takes. */
  static double seconds(Runnable work) {
    long start = System.nanoTime();
    work.run();
    return (System.nanoTime() - start) * 1e-9;
  }

  /** Bytes in use once garbage is collected. */
  static long heldHeap() {
    ManagementFactory.getMemoryMXBean().gc();
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
  }
}

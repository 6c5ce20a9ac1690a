// SPDX-License-Identifier: Apache-2.0
package gelfront.timing;

import gelfront.base.Workers;
import java.util.Arrays;

/**
 * How fast this machine moves memory: a = b + s c over arrays that no cache holds. As of STREAM
 * (McCalpin, 1995): two arrays are read and one is written, 24 bytes an element; that the written
 * one is fetched first is not counted.
 */
final class Triad {
  private static final int SIZE = 1 << 23;
  private static final int BYTES = 24;
  private static final int RUNS = 9;

  private final double[] a = new double[SIZE];
  private final double[] b = new double[SIZE];
  private final double[] c = new double[SIZE];

  Triad() {
    Arrays.fill(b, 1);
    Arrays.fill(c, 2);
  }

  /** Bytes per second, best of several. */
  double rate(Workers workers) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < RUNS; i++) {
      double s = i;
      best = Math.min(best, Stopwatch.seconds(() -> workers.over(SIZE, (p, q) -> add(s, p, q))));
    }
    return (double) BYTES * SIZE / best;
  }

  private void add(double s, int from, int to) {
    for (int i = from; i < to; i++) {
      a[i] = b[i] + s * c[i];
    }
  }
}

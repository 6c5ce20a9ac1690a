// SPDX-License-Identifier: Apache-2.0
package gelfront.feed;

import java.util.Arrays;

/** What the stages of a feeding flow took so far, by the wall clock. */
public final class FeedClock {
  private final long[] nanos = new long[Stage.values().length];
  private long last;

  /** What a step of the flow does. */
  public enum Stage {
    /** Contraction, what is joined, the skin, books. */
    GATHER,
    /** Blocks of cells, where they are made anew, and their shape. */
    BLOCKS,
    /** w, and the course of the liquid. */
    MOBILITY,
    /** q. */
    SUCTION,
    /** Heat and mass carried, the sprue. */
    CARRY
  }

  /** A step begins. */
  void start() {
    last = System.nanoTime();
  }

  /** All since the last call was a stage's. */
  void lap(Stage stage) {
    long now = System.nanoTime();
    nanos[stage.ordinal()] += now - last;
    last = now;
  }

  /** s. */
  public double seconds(Stage stage) {
    return 1e-9 * nanos[stage.ordinal()];
  }

  /** s, all stages. */
  public double seconds() {
    return 1e-9 * Arrays.stream(nanos).sum();
  }
}

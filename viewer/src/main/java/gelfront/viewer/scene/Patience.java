// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

/**
 * When smooth edges are given up: the best of the first frames counts, for those also load things,
 * and other programs want the processor, too.
 */
final class Patience {
  /**
   * ns that a frame may take: on two cores in software, where it took 0.12 s of processor time, it
   * is more.
   */
  static final long MOST = 20_000_000;

  /** Frames that are measured. */
  static final int MEASURED = 6;

  private long best = Long.MAX_VALUE;
  private int measured;

  /** Whether the next frame counts. */
  boolean measures() {
    return measured < MEASURED;
  }

  /**
   * A frame is drawn; one that doesn't count any more is left out.
   *
   * @param nanos from its beginning until all of it was there
   */
  void took(long nanos) {
    if (measures()) {
      best = Math.min(best, nanos);
      measured++;
    }
  }

  /** Whether even the best frame took too long. */
  boolean isOver() {
    return !measures() && best > MOST;
  }
}

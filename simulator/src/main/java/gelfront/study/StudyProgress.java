// SPDX-License-Identifier: Apache-2.0
package gelfront.study;

import gelfront.base.CancelledException;
import gelfront.base.Progress;

/** Several runs at once as one piece of work. */
final class StudyProgress {
  /** Share of a run's time before cooling begins, and where judging begins: about so. */
  private static final double COOLING = 0.05;

  private static final double JUDGING = 0.85;

  private final String stage;
  private final int runs;
  private final double[] share;
  private final double[] ended;
  private final Progress watcher;
  private volatile boolean stopped;

  /**
   * @param runs to come
   * @param loops that run them
   */
  StudyProgress(String what, int runs, int loops, Progress watcher) {
    this.stage = what + ": " + runs + (runs == 1 ? " run" : " runs");
    this.runs = runs;
    this.share = new double[loops];
    this.ended = new double[loops];
    this.watcher = watcher;
  }

  /** What the runs of one loop are given. */
  Progress of(int loop) {
    return (what, fraction) -> told(loop, what, fraction);
  }

  private synchronized boolean told(int loop, String what, double fraction) {
    double now =
        switch (what) {
          case "cooling" -> COOLING + (JUDGING - COOLING) * fraction;
          case "judging" -> JUDGING + (1 - JUDGING) * fraction;
          default -> Math.max(share[loop], 0);
        };
    if (what.equals("starting")) {
      ended[loop] += share[loop] > 0 ? 1 : 0;
      now = 0;
    }
    share[loop] = now;
    double sum = 0;
    for (int k = 0; k < share.length; k++) {
      sum += ended[k] + share[k];
    }
    stopped = !watcher.at(stage, Math.min(1, sum / runs)) || stopped;
    return !stopped;
  }

  void stop() {
    stopped = true;
  }

  /** Leaves by exception if somebody wanted to stop. */
  void check() {
    if (stopped) {
      throw new CancelledException(stage);
    }
  }
}

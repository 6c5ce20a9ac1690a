// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.base.Progress;
import gelfront.base.Quantities;

/**
 * How far long work is, in words with the time that is left, and the way to stop it. Told from the
 * working thread, asked and stopped from any other.
 */
public final class Progressing implements Progress {
  /** Shares of a run that lie before and behind its cooling: measured, roughly. */
  private static final double BEFORE = 0.06;

  private static final double BEHIND = 0.08;

  /** s after which an estimate means something. */
  private static final double SETTLED = 0.7;

  /** Reports come thousands a second; eyes take twenty. */
  private static final long APART_NS = 50_000_000;

  private final long start = System.nanoTime();
  private final Runnable told;
  private volatile boolean stopped;
  private volatile String stage = "starting";
  private volatile double share;
  private volatile long toldAt;

  /**
   * @param told now and then; must be quick
   */
  public Progressing(Runnable told) {
    this.told = told;
  }

  @Override
  public boolean at(String what, double fraction) {
    double f = Math.max(0, Math.min(1, fraction));
    double now =
        what.endsWith("cooling")
            ? BEFORE + (1 - BEFORE - BEHIND) * f
            : share < BEFORE ? BEFORE * f : share;
    share = Math.max(share, now);
    stage = what;
    tell();
    return !stopped;
  }

  private void tell() {
    long now = System.nanoTime();
    if (now - toldAt > APART_NS) {
      toldAt = now;
      told.run();
    }
  }

  /** The same for work whose fraction is that of all of it. */
  public Progress plain() {
    return (what, fraction) -> {
      share = Math.max(0, Math.min(1, fraction));
      stage = what;
      tell();
      return !stopped;
    };
  }

  public void stop() {
    stopped = true;
  }

  public boolean stopped() {
    return stopped;
  }

  /** 0 to 1. */
  public double share() {
    return share;
  }

  /** What is being done, and for how long yet. */
  public String words() {
    return stage + left((System.nanoTime() - start) * 1e-9, share);
  }

  /**
   * @param passed s
   * @param share done of all, 0 to 1
   */
  static String left(double passed, double share) {
    if (passed < SETTLED || share < 0.08) {
      return "";
    }
    double left = passed * (1 - share) / share;
    return left < 1.5
        ? ", nearly done"
        : left < 90
            ? Quantities.say(", about %.0f s left", left)
            : Quantities.say(", about %.0f min left", left / 60);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.base.Progress;
import gelfront.base.Quantities;
import java.io.PrintStream;

/** One line on a terminal that shows how far the work is and what time is left. */
final class ProgressLine implements Progress, AutoCloseable {
  private static final int BAR = 24;
  private static final long EVERY_NANOS = 200_000_000L;

  /** A guess at the time left is worth nothing before this much is done. */
  private static final double ENOUGH = 0.05;

  private final Console console;
  private final boolean shown;
  private String stage = "";
  private long stageBegan;
  private long drawn;
  private int width;

  /**
   * @param shown whether to draw; asked to cancel it is in any case
   */
  ProgressLine(Console console, boolean shown) {
    this.console = console;
    this.shown = shown;
  }

  @Override
  public synchronized boolean at(String newStage, double fraction) {
    long now = System.nanoTime();
    if (!newStage.equals(stage)) {
      stage = newStage;
      stageBegan = now;
      drawn = 0;
    }
    if (shown && (drawn == 0 || now - drawn > EVERY_NANOS)) {
      drawn = now;
      draw(line(Math.max(0, Math.min(1, fraction)), (now - stageBegan) * 1e-9));
    }
    return !console.cancelled().getAsBoolean();
  }

  private String line(double fraction, double seconds) {
    int full = (int) Math.round(fraction * BAR);
    String bar = "#".repeat(full) + ".".repeat(BAR - full);
    String left =
        fraction < ENOUGH
            ? ""
            : Quantities.say(", about %s left", duration(seconds / fraction * (1 - fraction)));
    return Quantities.say("%s [%s] %3.0f %%%s", stage, bar, 100 * fraction, left);
  }

  /** "12 s", "3 min". */
  static String duration(double seconds) {
    return seconds < 90
        ? Quantities.say("%.0f s", Math.ceil(seconds))
        : Quantities.say("%.0f min", seconds / 60);
  }

  private void draw(String line) {
    PrintStream err = console.err();
    err.print("\r" + line + " ".repeat(Math.max(0, width - line.length())));
    err.flush();
    width = line.length();
  }

  /** Wipes the line. */
  @Override
  public synchronized void close() {
    if (width > 0) {
      draw("");
      console.err().print("\r");
      console.err().flush();
    }
  }
}

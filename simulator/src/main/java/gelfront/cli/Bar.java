package gelfront.cli;

import gelfront.base.Progress;
import java.io.PrintWriter;
import java.util.Locale;

/**
 * A progress bar with the time left, on a terminal only; cancels when the program is told to end.
 */
final class Bar implements Progress {
  private static final int WIDTH = 28;
  private static final long EVERY = 150_000_000;

  private final PrintWriter err;
  private final boolean shown;
  private volatile boolean cancelled;
  private String stage = "";
  private long stageStart;
  private long drawn;

  /**
   * @param shown whether anybody looks: a terminal, and not --quiet
   */
  Bar(PrintWriter err, boolean shown) {
    this.err = err;
    this.shown = shown;
  }

  void cancel() {
    cancelled = true;
  }

  @Override
  public boolean at(String what, double fraction) {
    long now = System.nanoTime();
    if (!what.equals(stage)) {
      stage = what;
      stageStart = now;
    }
    if (shown && now - drawn > EVERY) {
      drawn = now;
      int full = (int) Math.round(WIDTH * Math.max(0, Math.min(1, fraction)));
      err.printf(
          Locale.ROOT,
          "\r%-28s [%s%s] %s   ",
          what,
          "#".repeat(full),
          ".".repeat(WIDTH - full),
          left(fraction, (now - stageStart) * 1e-9));
      err.flush();
    }
    return !cancelled;
  }

  private static String left(double fraction, double seconds) {
    if (fraction < 0.05 || seconds < 0.5) {
      return "";
    }
    return String.format(Locale.ROOT, "%.0f s left", seconds * (1 - fraction) / fraction);
  }

  void done() {
    if (shown) {
      err.print("\r" + " ".repeat(WIDTH + 50) + "\r");
      err.flush();
    }
  }
}

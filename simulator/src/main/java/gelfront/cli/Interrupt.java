// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C. Asks the work to stop and gives it the time to clear away what it has begun; after that
 * the process ends with the code of an interrupted one.
 */
final class Interrupt {
  private static final int PATIENCE_SECONDS = 10;

  private final CountDownLatch done = new CountDownLatch(1);
  private volatile boolean asked;

  boolean asked() {
    return asked;
  }

  /** The work has come to its end. */
  void done() {
    done.countDown();
  }

  /** Called while the process is ending, for whatever reason. */
  void stop() {
    asked = true;
    try {
      if (!done.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

/** Work was given up because its watcher asked for it. */
public final class CancelledException extends RuntimeException {
  public CancelledException(String stage) {
    super("cancelled while " + stage);
  }
}

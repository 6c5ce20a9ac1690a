// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import org.jspecify.annotations.Nullable;

/** What keeps the window from being shown, in one line for the user, with the exit code. */
final class ViewerException extends Exception {
  private static final long serialVersionUID = 1;

  /** A fault in the program or in the machine's graphics. */
  static final int FAULT = 1;

  /** The command line is wrong. */
  static final int USAGE = 2;

  /** The result can't be used. */
  static final int INPUT = 3;

  /** The picture can't be written. */
  static final int OUTPUT = 4;

  private final int exitCode;

  ViewerException(int exitCode, String line, @Nullable Throwable cause) {
    super(line, cause);
    this.exitCode = exitCode;
  }

  int exitCode() {
    return exitCode;
  }
}

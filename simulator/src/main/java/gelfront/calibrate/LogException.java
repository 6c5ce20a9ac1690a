// SPDX-License-Identifier: Apache-2.0
package gelfront.calibrate;

/** A log that can't be used: file, line and reason. */
public final class LogException extends RuntimeException {
  private static final long serialVersionUID = 1;

  /**
   * @param line 0: the file as a whole
   */
  LogException(String file, int line, String message) {
    super(line > 0 ? file + ":" + line + ": " + message : file + ": " + message);
  }
}

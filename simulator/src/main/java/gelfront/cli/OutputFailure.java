// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

/** Something can't be written; the message is one line with the place. */
final class OutputFailure extends RuntimeException {
  private static final long serialVersionUID = 1;

  OutputFailure(String message) {
    super(message);
  }

  OutputFailure(String message, Throwable cause) {
    super(message, cause);
  }
}

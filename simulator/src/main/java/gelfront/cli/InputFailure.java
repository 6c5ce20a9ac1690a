// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

/** What the user gave can't be used; the message is one line with file and place. */
final class InputFailure extends RuntimeException {
  private static final long serialVersionUID = 1;

  InputFailure(String message) {
    super(message);
  }

  InputFailure(String message, Throwable cause) {
    super(message, cause);
  }
}

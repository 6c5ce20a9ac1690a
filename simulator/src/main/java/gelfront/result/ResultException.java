// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import java.io.IOException;

/** A result folder can't be read or must not be written; the message is one line with the place. */
public final class ResultException extends IOException {
  private static final long serialVersionUID = 1;

  public ResultException(String message) {
    super(message);
  }

  public ResultException(String message, Throwable cause) {
    super(message, cause);
  }
}

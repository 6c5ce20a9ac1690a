// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh;

/** A mesh that can't be read or trusted; the message names file, reason and place in one line. */
public final class MeshException extends RuntimeException {
  public MeshException(String message) {
    super(message);
  }

  /** The same reason with the file's name before it. */
  public MeshException in(String file) {
    return new MeshException(file + ": " + getMessage());
  }
}

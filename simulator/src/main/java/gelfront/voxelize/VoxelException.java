// SPDX-License-Identifier: Apache-2.0
package gelfront.voxelize;

/** Shape and feed system can't be made into a sound voxel model; the message says why and where. */
public final class VoxelException extends RuntimeException {
  private final String key;

  /**
   * @param key of the case file that says what can't be had, tables and key with dots between:
   *     {@code gate.at}
   */
  public VoxelException(String key, String message) {
    super(message);
    this.key = key;
  }

  /** Key of the case file, with its tables. */
  public String key() {
    return key;
  }
}

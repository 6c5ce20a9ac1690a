// SPDX-License-Identifier: Apache-2.0
package gelfront.base;

/**
 * Told how far long work has come, and asked whether to go on. All long work takes one. May be
 * called often and must answer at once.
 */
@FunctionalInterface
public interface Progress {
  /** Nobody watches, nobody cancels. */
  Progress NONE = (stage, fraction) -> true;

  /**
   * Reports and asks.
   *
   * @param stage what is being done, in words for a person
   * @param fraction how much of that stage is done, 0 to 1
   * @return false to cancel
   */
  boolean at(String stage, double fraction);

  /**
   * Reports and leaves by exception where the watcher wants to stop.
   *
   * @throws CancelledException if {@link #at} answered false
   */
  default void check(String stage, double fraction) {
    if (!at(stage, fraction)) {
      throw new CancelledException(stage);
    }
  }
}

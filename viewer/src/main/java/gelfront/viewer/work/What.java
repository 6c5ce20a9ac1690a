// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

/** What has changed in a {@link Session}. */
public enum What {
  /** Something else is open. */
  OPENED,
  /** The case was changed. */
  CASE,
  /** The quick verdict. */
  QUICK,
  /** There is another result, or none. */
  RESULT,
  /** The second design. */
  OTHER,
  /** A check is going on, has moved, or is over. */
  CHECK,
  /** The freezing has gone on in a check. */
  FREEZING,
  /** There is another answer to what helps. */
  HELP,
  /** There is something to be said. */
  MESSAGE
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

/** What the process ends with. The verdict never changes it: a part that dents is a good answer. */
final class ExitCode {
  static final int OK = 0;

  /** A fault in the program. */
  static final int INTERNAL = 1;

  /** The command line is wrong. */
  static final int USAGE = 2;

  /** A case, mesh or result can't be used. */
  static final int INPUT = 3;

  /** A result or file can't be written. */
  static final int OUTPUT = 4;

  /** Stopped from outside, by Ctrl-C. */
  static final int CANCELLED = 130;

  private ExitCode() {}
}

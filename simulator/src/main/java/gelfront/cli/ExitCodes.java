package gelfront.cli;

/** Exit codes, as the README lists them. */
final class ExitCodes {
  static final int OK = 0;
  static final int INTERNAL = 1;
  static final int USAGE = 2;
  static final int BAD_INPUT = 3;
  static final int NOT_WRITTEN = 4;
  static final int CANCELLED = 130;

  private ExitCodes() {}
}

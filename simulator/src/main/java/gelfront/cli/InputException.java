package gelfront.cli;

/** What was asked for can't be done with this input; one line. */
final class InputException extends RuntimeException {
  InputException(String message) {
    super(message);
  }
}

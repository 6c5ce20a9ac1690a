// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;

/** A wrong command line: what is wrong in one line, then where help is. */
final class UsageErrors implements IParameterExceptionHandler {
  private final Console console;

  UsageErrors(Console console) {
    this.console = console;
  }

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    String message = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    console.err().println("gelfront: " + message);
    CommandLine.UnmatchedArgumentException.printSuggestions(
        e, new java.io.PrintWriter(console.err(), true, java.nio.charset.StandardCharsets.UTF_8));
    console
        .err()
        .println("Try: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
    return ExitCode.USAGE;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** How many threads calculate. The result is the same with any number. */
final class Threads {
  private static final int MOST = 256;

  @Spec(Target.MIXEE)
  private CommandSpec command;

  private int count = Runtime.getRuntime().availableProcessors();

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Threads that calculate; left out: all processors. Never changes a result.")
  void set(int n) {
    if (n < 1 || n > MOST) {
      throw new ParameterException(command.commandLine(), "--threads " + n + ": 1 to " + MOST);
    }
    count = n;
  }

  int count() {
    return count;
  }
}

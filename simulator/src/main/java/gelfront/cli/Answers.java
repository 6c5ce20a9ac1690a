// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import picocli.CommandLine.Option;

/** How much is printed, and in which form. */
final class Answers {
  @Option(
      names = {"-q", "--quiet"},
      description = "Only the answer itself: no progress, no explanations.")
  private boolean quiet;

  @Option(names = "--json", description = "The answer as JSON on standard output.")
  private boolean json;

  boolean quiet() {
    return quiet;
  }

  boolean json() {
    return json;
  }
}

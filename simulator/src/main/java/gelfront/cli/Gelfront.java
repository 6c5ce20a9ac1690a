// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command that holds all others. */
@Command(
    name = "gelfront",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Tells before metal is cut whether a hand-injected soft-plastisol part comes out dented,"
          + " where, and which constriction is to blame.",
      ""
    },
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done, whatever the verdict",
      "1:a fault in the program",
      "2:wrong command line",
      "3:a case, mesh or result can't be used",
      "4:something can't be written",
      "130:stopped by Ctrl-C"
    },
    footer = {
      "",
      "gelfront view RESULT opens a result in a window.",
      "Never heat plastisol above 190 °C. Local rules, the material's safety data sheet and trained"
          + " people come before this tool."
    })
final class Gelfront implements Callable<Integer> {
  private final Console console;
  @Spec private CommandSpec spec;

  Gelfront(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    spec.commandLine().usage(console.err());
    return ExitCode.USAGE;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Calculates a case. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Calculates a case and writes a result folder with report.html, findings.json, pockets.csv,"
          + " series.csv, voxels.vti, dents.ply and dents.glb. Prints the verdict in words.",
      "Where doubt has been calculated for the case as it stands, or --doubt asks for it, the report"
          + " also says in how many plausible cases the part dents, and what to measure first.",
      "Ends with 0 whatever the verdict. An earlier result stays until the new one is complete."
    })
final class CheckCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "CASE", description = "The case file; start MESH writes a first one.")
  private Path caseFile;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      description = "The result folder; left out: beside the case, named after it.")
  private @Nullable Path folder;

  @Option(
      names = "--no-flow",
      description = {
        "Leaves out that liquid is drawn in and carries heat: what conduction alone would say. Also"
            + " calculates with it and prints both side by side."
      })
  private boolean noFlow;

  @Option(
      names = "--doubt",
      arity = "0..1",
      fallbackValue = "20",
      paramLabel = "N",
      description = "Also says how sure that is, by N plausible cases; N left out: 20.")
  private @Nullable Integer doubt;

  @Option(
      names = "--one-level",
      description = {
        "Leaves out level quick, which is calculated beside normal and fine to say whether the"
            + " verdict hangs on the size of the voxels."
      })
  private boolean oneLevel;

  @Mixin private Answers answers;
  @Mixin private Threads threads;

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Path target = folder == null ? beside(caseFile) : folder;
    CheckDoubt how = new CheckDoubt(console, answers, threads.count(), caseFile, !noFlow);
    new CaseCheck(console, answers, threads.count(), !noFlow)
        .check(
            caseFile,
            target,
            new CaseCheck.Also(() -> how.of(Optional.ofNullable(doubt)), !oneLevel));
    return ExitCode.OK;
  }

  /** {@code bait.toml} gives {@code bait-result}. */
  static Path beside(Path caseFile) {
    String name = String.valueOf(caseFile.getFileName()).replaceFirst("\\.[^.]*$", "");
    return caseFile.resolveSibling(name + "-result");
  }
}

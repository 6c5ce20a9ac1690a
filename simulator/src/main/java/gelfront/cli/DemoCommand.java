package gelfront.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The main job on a shipped example. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Copies a shipped example (two bulbs with a neck) into a folder, calculates it and prints the"
          + " verdict and the path of the report.",
      "The copied case is yours to change: then run check on it."
    })
final class DemoCommand implements Callable<Integer> {
  static final String EXAMPLE = "two-bulbs-neck";

  private final Console console;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      defaultValue = "gelfront-demo",
      description = "Where to copy and calculate it; left out: ${DEFAULT-VALUE}.")
  private Path folder;

  @Mixin private Answers answers;
  @Mixin private Threads threads;

  DemoCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    ExampleCase example = new ExampleCase(EXAMPLE);
    Path caseFile;
    try {
      caseFile = example.copyTo(folder);
    } catch (IOException e) {
      throw new OutputFailure(folder + ": can't be written: " + e.getMessage(), e);
    }
    if (!answers.quiet() && !answers.json()) {
      console.out().println("Calculating " + caseFile + ". It is yours to change; then run");
      console.out().println("  gelfront check " + caseFile);
      console.out().println();
    }
    new CaseCheck(console, answers, threads.count(), true)
        .check(caseFile, CheckCommand.beside(caseFile));
    return ExitCode.OK;
  }
}

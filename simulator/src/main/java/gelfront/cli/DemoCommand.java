// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.report.StoryPage;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
      "Copies a shipped example (two bulbs with a neck) and its cure into a folder, calculates both,"
          + " with and without the flow that feeds them, and prints verdicts and reports; story.html"
          + " there has both on one page. With --json: the findings of the first alone.",
      "The copied cases are yours to change: then run check on them."
    })
final class DemoCommand implements Callable<Integer> {
  static final String EXAMPLE = "two-bulbs-neck";
  private static final String CURED = "two-bulbs-cured";

  private final Console console;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      defaultValue = "gelfront-demo",
      description = "Where to copy and calculate it; left out: ${DEFAULT-VALUE}.")
  @SuppressWarnings("NullAway.Init") // has a default
  private Path folder;

  @Mixin private Answers answers;
  @Mixin private Threads threads;

  DemoCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Path caseFile = copied(new ExampleCase(EXAMPLE));
    CaseCheck check = new CaseCheck(console, answers, threads.count(), true);
    if (answers.json()) {
      check.check(caseFile, CheckCommand.beside(caseFile));
      return ExitCode.OK;
    }
    Path cured = copied(new ExampleCase(CURED, EXAMPLE));
    if (!answers.quiet()) {
      console.out().println("Calculating " + caseFile + " and its cure. They are yours to change;");
      console.out().println("then run");
      console.out().println("  gelfront check " + caseFile);
      console.out().println();
    }
    tell(chapter(check, caseFile), chapter(check, cured));
    return ExitCode.OK;
  }

  private StoryPage.Chapter chapter(CaseCheck check, Path caseFile) {
    Path result = CheckCommand.beside(caseFile);
    StoredRun run = check.check(caseFile, result);
    if (!answers.quiet()) {
      console.out().println();
    }
    String link = result.getFileName() + "/report.html";
    return new StoryPage.Chapter(run, check.conductionAlone(caseFile), link);
  }

  private void tell(StoryPage.Chapter before, StoryPage.Chapter after) {
    Path page = folder.resolve("story.html");
    try {
      Files.writeString(page, StoryPage.of(before, after));
    } catch (IOException e) {
      throw new OutputFailure(page + ": can't be written: " + e.getMessage(), e);
    }
    if (!answers.quiet()) {
      new FlowTable(console)
          .print(
              List.of("3 mm gate, no flow", "with flow", "cure, no flow", "with flow"),
              List.of(
                  before.alone(), before.run().findings(), after.alone(), after.run().findings()));
      console.out().println();
    }
    console.out().println("Both on one page: " + page.toAbsolutePath().normalize());
  }

  private Path copied(ExampleCase example) {
    try {
      return example.copyTo(folder);
    } catch (IOException e) {
      throw new OutputFailure(folder + ": can't be written: " + e.getMessage(), e);
    }
  }
}

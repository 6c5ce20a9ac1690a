// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.Doubt;
import gelfront.base.Dimension;
import gelfront.base.Quantities;
import gelfront.doubt.DoubtStudy;
import gelfront.doubt.Tolerances;
import gelfront.report.DoubtFiles;
import gelfront.report.DoubtPage;
import gelfront.report.DoubtWords;
import gelfront.setup.LoadedCase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says how sure a verdict is. */
@Command(
    name = "doubt",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Says how sure a verdict is: calculates plausible cases, with all that isn't known for sure"
          + " somewhere in its range, and tells in how many of them the part dents, how deep, and"
          + " what to measure first.",
      "Ranges are the material table's; a property that the case states is taken for known. Runs of"
          + " an earlier study are used again."
    })
final class DoubtCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(index = "0", paramLabel = "CASE", description = "The case file.")
  private Path caseFile;

  @Option(
      names = "--cases",
      paramLabel = "N",
      defaultValue = "20",
      description = "Plausible cases; left out: ${DEFAULT-VALUE}.")
  private int cases;

  @Option(
      names = "--thorough",
      description =
          "Each unknown's share of the variance instead of a rank correlation: N times the unknowns"
              + " and two more runs. Best with N a power of two.")
  private boolean thorough;

  @Option(
      names = "--temperatures-within",
      paramLabel = "K",
      defaultValue = "5",
      description = "Kelvin that thermometers are off at most; left out: ${DEFAULT-VALUE}.")
  private double kelvin;

  @Option(
      names = "--sizes-within",
      paramLabel = "LENGTH",
      defaultValue = "0.1 mm",
      description = "That cutters and files are off at most; left out: ${DEFAULT-VALUE}.")
  @SuppressWarnings("NullAway.Init") // has a default
  private String size;

  @Mixin private StudyPlace place;

  @Mixin private Answers answers;
  @Mixin private Threads threads;

  DoubtCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    try (StudyDesk desk =
        new StudyDesk(console, answers, threads.count(), caseFile, place.folder(), true)) {
      Doubt doubt = study(desk.base()).run(desk.study(), desk.progress());
      desk.write("doubt.csv", DoubtFiles.csv(doubt));
      desk.write(DoubtFiles.CURVES, DoubtFiles.curvesCsv(doubt));
      desk.write("doubt.json", DoubtFiles.json(doubt));
      Path page = desk.write("doubt.html", DoubtPage.of(doubt));
      print(doubt, page, desk);
    }
    return ExitCode.OK;
  }

  private DoubtStudy study(LoadedCase base) {
    try {
      double metres = Quantities.parse(size, Dimension.LENGTH);
      Tolerances t = new Tolerances(kelvin, metres, Tolerances.USUAL.time());
      return thorough ? DoubtStudy.thorough(base, t, cases) : DoubtStudy.few(base, t, cases);
    } catch (IllegalArgumentException e) {
      throw new InputFailure(String.valueOf(e.getMessage()), e);
    }
  }

  private void print(Doubt doubt, Path page, StudyDesk desk) {
    if (answers.json()) {
      console.out().print(DoubtFiles.json(doubt));
      return;
    }
    if (!answers.quiet()) {
      console.out().println("What decides (" + doubt.method() + ", and its interval):");
      for (Doubt.Influence i : doubt.influences()) {
        console.out().println(line(doubt.unknowns().get(i.unknown()), i));
      }
      console.out().println(desk.runs() + ".");
      console.out().println();
    }
    DoubtWords.of(doubt).forEach(console.out()::println);
    console.out().println("How sure: " + page);
  }

  private static String line(Doubt.Unknown u, Doubt.Influence i) {
    return Quantities.say(
        "  %-26s %6.2f  (%5.2f to %5.2f)%s",
        u.name(), i.value(), i.low(), i.high(), i.told() ? "" : "  not told from chance");
  }
}

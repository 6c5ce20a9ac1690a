// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.SeriesAnswer;
import gelfront.answer.ShotRow;
import gelfront.base.Quantities;
import gelfront.report.SeriesFiles;
import gelfront.report.SeriesPage;
import gelfront.run.SeriesRun;
import gelfront.setup.Case;
import gelfront.study.Job;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.VoxelException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shots in a row until they repeat. */
@Command(
    name = "series",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Calculates shot after shot into the mould as the one before left it, until they repeat: dent,"
          + " times and mould temperature of each, how many to throw away, and the fastest cycle that"
          + " still opens firm parts. Idle time and cycle stand in the case's [series].",
      "Writes series.html, series.json and series.csv into the study's folder."
    })
final class SeriesCommand implements Callable<Integer> {
  private static final int FEWEST = 3;
  private static final int MOST = 200;

  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "The case file.")
  private Path caseFile;

  @Option(
      names = "--shots",
      paramLabel = "N",
      defaultValue = "5",
      description = "Shots made one by one before the settled one; left out: ${DEFAULT-VALUE}.")
  private int shots;

  @Mixin private StudyOptions options;
  @Mixin private Answers answers;
  @Mixin private Threads threads;

  SeriesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    if (shots < FEWEST || shots > MOST) {
      String words = "--shots %d: %d to %d";
      throw new ParameterException(spec.commandLine(), Quantities.say(words, shots, FEWEST, MOST));
    }
    try (StudyDesk desk =
        new StudyDesk(
            console, answers, threads.count(), caseFile, options.folder(), options.flow())) {
      SeriesAnswer answer = answer(desk);
      desk.write("series.csv", SeriesFiles.csv(answer));
      desk.write("series.json", SeriesFiles.json(answer));
      print(answer, desk.write("series.html", SeriesPage.of(answer)));
    }
    return ExitCode.OK;
  }

  private SeriesAnswer answer(StudyDesk desk) {
    Case c = options.level().apply(Job.of("series", desk.base(), List.of())).setup();
    try {
      CaseVoxels voxels = CaseVoxels.of(c, desk.study().part(), desk.progress());
      return new SeriesRun(c, voxels, desk.workers(), desk.progress()).run(shots);
    } catch (VoxelException e) {
      throw new InputFailure(desk.base().told(e.key(), String.valueOf(e.getMessage())), e);
    }
  }

  private void print(SeriesAnswer a, Path page) {
    if (answers.json()) {
      console.out().print(SeriesFiles.json(a));
      return;
    }
    if (!answers.quiet()) {
      console.out().println("    shot   mould °C   deepest dent mm   gate s   firm s   cycle s");
      a.shots().forEach(r -> print(String.valueOf(r.number()), r));
      a.settled().ifPresent(r -> print("settled", r));
      a.fastest().filter(r -> a.clock().isPresent()).ifPresent(r -> print("fastest", r));
      console.out().println();
    }
    console.out().println(a.name() + ": " + SeriesPage.verdict(a));
    console.out().println(SeriesPage.pace(a));
    console.out().println("Page: " + page);
  }

  private void print(String which, ShotRow r) {
    String words = "%8s %10.1f      %5.2f to %5.2f %8.1f %8.0f %9.0f";
    console
        .out()
        .println(
            Quantities.say(
                words,
                which,
                r.mouldBefore(),
                1e3 * r.dentLow(),
                1e3 * r.dentHigh(),
                r.gateSets(),
                r.firmAt(),
                r.cycle()));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.study.MapStudy;
import gelfront.study.Range;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Maps dents over two inputs. */
@Command(
    name = "map",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Calculates a case over two of its inputs and shows how deep the deepest dent is and how long"
          + " it takes until the mould is opened: as a table here, and as csv, json and html in"
          + " the study's folder.",
      "For example: gelfront map bait.toml \"gate size = 2..5 mm\" \"mould temperature = 20..60"
          + " degC/4\". An input goes by its key (gelfront keys) or a word for it: gate, sprue, shot"
          + " temperature, mould temperature, hold. Runs of an earlier study are used again; what"
          + " was stopped goes on where it was."
    })
final class MapCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(index = "0", paramLabel = "CASE", description = "The case file.")
  private Path caseFile;

  @Parameters(
      index = "1",
      paramLabel = "X",
      description = "First input: NAME = LOW..HIGH UNIT[/N].")
  private String x;

  @Parameters(index = "2", paramLabel = "Y", description = "Second input.")
  private String y;

  @Option(
      names = "--steps",
      paramLabel = "N",
      defaultValue = "5",
      description = "Values of each input; left out: ${DEFAULT-VALUE}.")
  private int steps;

  @Mixin private StudyOptions options;
  @Mixin private Answers answers;
  @Mixin private Threads threads;

  MapCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    MapStudy wanted = wanted();
    try (StudyDesk desk =
        new StudyDesk(
            console, answers, threads.count(), caseFile, options.folder(), options.flow())) {
      new MapAnswer(console, answers).give(wanted.run(desk.study(), desk.progress()), desk);
    }
    return ExitCode.OK;
  }

  /** Asks for all values before a folder is made. */
  private MapStudy wanted() throws IOException {
    try {
      MapStudy map = new MapStudy(Range.parse(x, steps), Range.parse(y, steps), options.level());
      map.jobs(StudyDesk.base(caseFile, options.flow()));
      return map;
    } catch (IllegalArgumentException e) {
      throw new InputFailure(String.valueOf(e.getMessage()), e);
    }
  }
}

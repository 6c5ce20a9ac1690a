package gelfront.cli;

import gelfront.answer.DentMap;
import gelfront.answer.Ran;
import gelfront.base.Quantities;
import gelfront.report.MapFiles;
import gelfront.report.MapPage;
import gelfront.study.Job;
import gelfront.study.MapStudy;
import gelfront.study.Range;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
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
          + " it takes until the mould can be opened: as a table here, and as csv, json and html in"
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
      DentMap map = run(wanted, desk);
      String name = "map-" + slug(map.x().name()) + "-" + slug(map.y().name());
      desk.write(name + ".csv", MapFiles.csv(map));
      desk.write(name + ".json", MapFiles.json(map));
      Path page = desk.write(name + ".html", MapPage.of(map));
      print(map, page, desk);
    }
    return ExitCode.OK;
  }

  private MapStudy wanted() {
    try {
      UnaryOperator<Job> level = options.level();
      return new MapStudy(Range.parse(x, steps), Range.parse(y, steps), level);
    } catch (IllegalArgumentException e) {
      throw new InputFailure(e.getMessage(), e);
    }
  }

  private static DentMap run(MapStudy wanted, StudyDesk desk) {
    try {
      wanted.jobs(desk.base());
    } catch (IllegalArgumentException e) {
      throw new InputFailure(e.getMessage(), e);
    }
    return wanted.run(desk.study(), desk.progress());
  }

  private static String slug(String words) {
    return words.replaceAll("[^a-z0-9]+", "-");
  }

  private void print(DentMap map, Path page, StudyDesk desk) {
    if (answers.json()) {
      console.out().print(MapFiles.json(map));
      return;
    }
    if (!answers.quiet()) {
      table(map, "Deepest dent, mm (* not seen)", true);
      table(map, "Seconds until the mould can be opened", false);
      console.out().println(desk.runs() + ".");
    }
    console.out().println(map.name() + ": " + MapPage.summary(map));
    console.out().println("Map: " + page);
  }

  private void table(DentMap map, String title, boolean dents) {
    console.out().println(title + ": " + map.x().title() + " across, " + map.y().title() + " down");
    StringBuilder head = new StringBuilder(" ".repeat(10));
    map.x().values().forEach(v -> head.append(Quantities.say("%10.4g", v)));
    console.out().println(head);
    for (int r = 0; r < map.runs().size(); r++) {
      StringBuilder line = new StringBuilder(Quantities.say("%10.4g", map.y().values().get(r)));
      map.runs().get(r).forEach(ran -> line.append(cell(map, ran, dents)));
      console.out().println(line);
    }
    console.out().println();
  }

  private static String cell(DentMap map, Ran ran, boolean dents) {
    if (ran.outcome().isEmpty()) {
      return "        --";
    }
    double v = dents ? ran.outcome().get().dentHigh() * 1e3 : ran.outcome().get().cycle();
    String mark = dents && map.safe(ran) ? "*" : " ";
    return Quantities.say(dents ? "%9.2f" : "%9.0f", v) + mark;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.Ran;
import gelfront.setup.LoadedCase;
import gelfront.study.Job;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Studies whose runs a scheduler starts, on one machine or many. */
@Command(
    name = "study",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "A map whose runs are started by others, for instance by a scheduler's array job: jobs writes"
          + " jobs.txt with one command a line, run does one of them, collect makes the map of"
          + " what they left. Machines must see case and folder under the same path."
    })
final class StudyCommand implements Runnable {
  private final Console console;

  @Spec private CommandSpec spec;

  StudyCommand(Console console) {
    this.console = console;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "study jobs, study run or study collect");
  }

  @Command(
      name = "jobs",
      mixinStandardHelpOptions = true,
      description = "Lists the runs of a map, one command a line, in the study's jobs.txt.")
  int jobs(
      @Parameters(index = "0", paramLabel = "CASE", description = "The case file.") Path caseFile,
      @Parameters(index = "1", paramLabel = "X", description = "NAME = LOW..HIGH UNIT[/N]")
          String x,
      @Parameters(index = "2", paramLabel = "Y", description = "Second input.") String y,
      @Option(names = "--steps", paramLabel = "N", defaultValue = "5", description = "Values each.")
          int steps,
      @Mixin StudyOptions options)
      throws IOException {
    LoadedCase base = StudyDesk.base(caseFile, options.flow());
    String absolute = caseFile.toAbsolutePath().normalize().toString();
    JobList list =
        new JobList(absolute, base.text(), x, y, steps, options.levelWord(), options.flow());
    int n = list.jobs(base).size(); // refused before a folder is made
    try (StudyDesk desk = desk(caseFile, options.folder(), options.flow(), 1)) {
      List<String> lines = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        lines.add("gelfront study run " + quoted(desk.folder().folder().toString()) + " " + i);
      }
      desk.write(JobList.FILE, list.json());
      Path file = desk.write("jobs.txt", String.join("\n", lines) + "\n");
      console.out().println(n + " runs, one a line, numbered from 0: " + file);
    }
    return ExitCode.OK;
  }

  @Command(
      name = "run",
      mixinStandardHelpOptions = true,
      description = "Does one run of a job list and keeps it; one that is kept already is left.")
  int run(
      @Parameters(index = "0", paramLabel = "FOLDER", description = "The study's.") Path folder,
      @Parameters(index = "1", paramLabel = "NUMBER", description = "From 0.") int number,
      @Mixin Threads threads)
      throws IOException {
    JobList list = JobList.read(folder);
    try (StudyDesk desk = desk(Path.of(list.caseFile()), folder, list.flow(), threads.count())) {
      List<Job> jobs = list.jobs(desk.base());
      if (number < 0 || number >= jobs.size()) {
        throw new InputFailure(
            folder + ": no run " + number + "; they are 0 to " + (jobs.size() - 1));
      }
      Job job = jobs.get(number);
      Ran ran = desk.study().run(job.label(), List.of(job), desk.progress()).get(0);
      String result = ran.outcome().map(o -> o.verdict()).orElse("no result: " + ran.error());
      console.out().println(number + ", " + job.label() + ": " + result);
    }
    return ExitCode.OK;
  }

  @Command(
      name = "collect",
      mixinStandardHelpOptions = true,
      description = "Makes the map of a job list whose runs are all done.")
  int collect(
      @Parameters(index = "0", paramLabel = "FOLDER", description = "The study's.") Path folder,
      @Mixin Answers answers)
      throws IOException {
    JobList list = JobList.read(folder);
    try (StudyDesk desk = desk(Path.of(list.caseFile()), folder, list.flow(), 1)) {
      List<Job> jobs = list.jobs(desk.base());
      List<Integer> missing = new ArrayList<>();
      for (int i = 0; i < jobs.size(); i++) {
        if (desk.folder().find(desk.study().hash(jobs.get(i))).isEmpty()) {
          missing.add(i);
        }
      }
      if (!missing.isEmpty()) {
        throw new InputFailure(folder + ": " + words(missing, jobs.size()));
      }
      new MapAnswer(console, answers).give(list.study().run(desk.study(), desk.progress()), desk);
    }
    return ExitCode.OK;
  }

  private static String words(List<Integer> missing, int all) {
    String numbers = missing.stream().map(String::valueOf).collect(Collectors.joining(","));
    return missing.size()
        + " of "
        + all
        + (missing.size() == 1 ? " runs is missing: " : " runs are missing: ")
        + numbers;
  }

  private StudyDesk desk(Path caseFile, @Nullable Path folder, boolean flow, int threads)
      throws IOException {
    return new StudyDesk(console, new Answers(), threads, caseFile, folder, flow);
  }

  /** As a shell takes it for one word. */
  private static String quoted(String path) {
    return "'" + path.replace("'", "'\\''") + "'";
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.Calibrated;
import gelfront.answer.Trials;
import gelfront.base.Workers;
import gelfront.calibrate.CupCalibration;
import gelfront.calibrate.LogException;
import gelfront.calibrate.LogReader;
import gelfront.calibrate.TemperatureLog;
import gelfront.material.Ranged;
import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.report.CalibrationFiles;
import gelfront.report.CalibrationPage;
import gelfront.report.TrialsFiles;
import gelfront.report.TrialsPage;
import gelfront.result.WholeFile;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Fits a plastisol to a cooling curve, or to trial shots. */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Fits conductivity, contact and gelling to what a thermometer logged while a cup, tube or part"
          + " cooled, and writes them as a plastisol of your own, with intervals. What the log"
          + " doesn't tell is left as it was, and said.",
      "Without --at the log is one of trial shots, one a line: what was shot (any input of a case by"
          + " name, such as \"hold (s)\" or \"gate (mm)\"; case, cavity) and what came of it (dented:"
          + " yes or no; depth (mm); gate froze: before or after the plunger's release). They tell"
          + " the no-flow temperature.",
      "The case describes what the thermometer stood in: the plastisol as the part, the cup's wall as"
          + " the block, the bath as what cools its faces. The log is a table of times and"
          + " temperatures, as loggers write it."
    })
final class CalibrateCommand implements Callable<Integer> {
  /** Bytes; a day's log at ten readings a second. */
  private static final long LARGEST = 64 << 20;

  private final Console console;

  @Parameters(index = "0", paramLabel = "CASE", description = "The case file.")
  private Path caseFile;

  @Parameters(index = "1", paramLabel = "LOG", description = "The log, CSV or the like.")
  private Path logFile;

  @Option(
      names = "--at",
      paramLabel = "x,y,z",
      parameterConsumer = ProbeCommand.Places.class,
      description =
          "Place of the thermometer in mm, in the case's coordinates; left out: a log of trial shots.")
  private List<Vec3> places = new ArrayList<>();

  @Option(
      names = "--column",
      paramLabel = "HEADING",
      description = "Column of the temperature, where the log has several.")
  private @Nullable String column;

  @Option(
      names = "--name",
      paramLabel = "NAME",
      defaultValue = "calibrated",
      description = "Of the plastisol in later cases; left out: ${DEFAULT-VALUE}.")
  @SuppressWarnings("NullAway.Init") // has a default
  private String name;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      description = "Where files go; left out: beside the case, named after it.")
  private @Nullable Path folder;

  @Mixin private Answers answers;
  @Mixin private Threads threads;

  CalibrateCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    if (!name.matches("[a-z0-9][a-z0-9-]*")) {
      throw new InputFailure("--name " + name + ": small letters, digits and hyphens");
    }
    LoadedCase base = CaseFile.read(caseFile);
    String text = log();
    if (places.isEmpty()) {
      trials(base, text);
      return ExitCode.OK;
    }
    Calibrated c = calibrated(base.with(base.setup().numerics().withoutFlow()), text);
    write(base, c);
    return ExitCode.OK;
  }

  private String log() throws IOException {
    if (!Files.isRegularFile(logFile)) {
      throw new InputFailure(logFile + ": there is no such file");
    }
    if (Files.size(logFile) > LARGEST) {
      throw new InputFailure(logFile + ": is larger than 64 MiB: is it a log?");
    }
    try {
      return Files.readString(logFile);
    } catch (MalformedInputException e) { // degree signs of old programs
      return Files.readString(logFile, StandardCharsets.ISO_8859_1);
    }
  }

  private Calibrated calibrated(LoadedCase base, String text) {
    String file = String.valueOf(logFile.getFileName());
    ExecutorService pool = Executors.newFixedThreadPool(threads.count());
    boolean shown = console.terminal() && !answers.quiet();
    try (ProgressLine progress = new ProgressLine(console, shown)) {
      TemperatureLog log = LogReader.read(file, text, Optional.ofNullable(column));
      TriangleMesh part = PartLoader.load(base.setup().part()).mesh();
      Workers workers = new Workers(pool, threads.count());
      return new CupCalibration(base, part, places.get(0), log, workers, progress)
          .run(file, hash(text));
    } catch (LogException | IllegalArgumentException e) {
      throw new InputFailure(String.valueOf(e.getMessage()), e);
    } catch (MeshException e) {
      throw new InputFailure(caseFile.getFileName() + ": " + e.getMessage(), e);
    } finally {
      pool.shutdownNow();
    }
  }

  private void trials(LoadedCase base, String text) throws IOException {
    Path target = target();
    try (TrialDesk desk = new TrialDesk(console, answers, threads.count(), caseFile, target)) {
      Trials t = desk.run(logFile, text, hash(text));
      Map<String, Ranged> known = base.materials().entry("plastisol", grade(base));
      String table = TrialsFiles.materials(t, name, grade(base), known, today());
      Path materials = write(target, name + ".toml", table);
      write(target, "trials.json", TrialsFiles.json(t));
      Path page = write(target, "trials.html", TrialsPage.of(t));
      if (answers.json()) {
        console.out().print(TrialsFiles.json(t));
        return;
      }
      TrialsPage.words(t).forEach(console.out()::println);
      console.out().println("Materials: " + materials);
      console.out().println("Calibration: " + page);
    } catch (LogException | IllegalArgumentException e) {
      throw new InputFailure(String.valueOf(e.getMessage()), e);
    }
  }

  private Path target() {
    String stem = String.valueOf(caseFile.getFileName()).replaceFirst("\\.[^.]*$", "");
    return folder == null ? caseFile.resolveSibling(stem + "-calibration") : folder;
  }

  private static String grade(LoadedCase base) {
    return base.word("plastisol.grade").orElse("soft");
  }

  private static String today() {
    return String.valueOf(LocalDate.now(ZoneId.systemDefault()));
  }

  private static String hash(String text) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private void write(LoadedCase base, Calibrated c) {
    String grade = grade(base);
    Map<String, Ranged> known = base.materials().entry("plastisol", grade);
    Path target = target();
    String table = CalibrationFiles.materials(c, name, grade, known, today());
    Path materials = write(target, name + ".toml", table);
    write(target, "calibration.json", CalibrationFiles.json(c));
    Path page = write(target, "calibration.html", CalibrationPage.of(c));
    if (answers.json()) {
      console.out().print(CalibrationFiles.json(c));
      return;
    }
    CalibrationPage.words(c).forEach(console.out()::println);
    console.out().println("Materials: " + materials);
    console.out().println("Calibration: " + page);
  }

  private static Path write(Path folder, String name, String text) {
    Path file = folder.resolve(name);
    try {
      return WholeFile.write(file, text);
    } catch (IOException e) {
      throw new OutputFailure(file + ": can't be written: " + e.getMessage(), e);
    }
  }
}

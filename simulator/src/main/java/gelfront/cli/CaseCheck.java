// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.Doubt;
import gelfront.answer.VoxelDoubt;
import gelfront.base.Progress;
import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.finding.Amounts;
import gelfront.finding.Filled;
import gelfront.finding.Findings;
import gelfront.finding.Opening;
import gelfront.finding.Pocket;
import gelfront.mesh.MeshException;
import gelfront.report.Artifacts;
import gelfront.report.Beside;
import gelfront.report.DoubtWords;
import gelfront.report.FindingsJson;
import gelfront.report.HtmlReport;
import gelfront.report.VoxelWords;
import gelfront.result.Provenance;
import gelfront.result.ResultFolder;
import gelfront.result.StoredRun;
import gelfront.run.StoredRuns;
import gelfront.run.Watch;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.voxelize.VoxelException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/** The main job: a case file becomes a result folder and a verdict in words. */
final class CaseCheck {
  private final Console console;
  private final Answers answers;
  private final int threads;
  private final boolean flow;

  /**
   * @param threads that calculate, at least 1
   * @param flow whether liquid is drawn in and carries heat; false: both are shown side by side
   */
  CaseCheck(Console console, Answers answers, int threads, boolean flow) {
    this.console = console;
    this.answers = answers;
    this.threads = threads;
    this.flow = flow;
  }

  /** What conduction alone says of a case: calculated, neither written nor printed. */
  Findings conductionAlone(Path caseFile) {
    LoadedCase loaded = CaseFile.read(caseFile);
    LoadedCase alone = loaded.with(loaded.setup().numerics().withoutFlow());
    return judge(caseFile, alone).findings();
  }

  /** Reads and calculates a case; neither written nor printed. */
  StoredRun calculated(Path caseFile) {
    return calculate(caseFile, CaseFile.read(caseFile));
  }

  /** Reads, calculates, prints and writes. */
  StoredRun check(Path caseFile, Path folder) {
    return check(caseFile, folder, new Also(Optional::empty, false));
  }

  /**
   * What is found out beside the verdict.
   *
   * @param doubt how sure it is; asked once the case has been calculated
   * @param voxels whether level quick is asked, too, to see how far it hangs on their size
   */
  record Also(Supplier<Optional<Doubt>> doubt, boolean voxels) {}

  /**
   * As above.
   *
   * @param also found out
   */
  StoredRun check(Path caseFile, Path folder, Also also) {
    LoadedCase loaded = CaseFile.read(caseFile);
    checkWritable(folder);
    LoadedCase wanted = flow ? loaded : loaded.with(loaded.setup().numerics().withoutFlow());
    StoredRuns.Judged judged = judge(caseFile, wanted);
    if (!answers.json()) {
      print(judged); // whoever waits for it reads while the report is made
    }
    StoredRun run = judged.stored(provenance());
    Beside beside = beside(caseFile, wanted, run, also);
    try {
      ResultFolder.write(folder, run, Artifacts.all(beside));
    } catch (IOException e) {
      throw cantWrite(folder, e);
    }
    print(run, folder, beside);
    if (!flow && !answers.json() && !answers.quiet()) {
      new FlowTable(console).print(run.findings(), calculate(caseFile, loaded).findings());
    }
    return run;
  }

  private Beside beside(Path caseFile, LoadedCase loaded, StoredRun run, Also also) {
    Optional<Doubt> doubt = also.doubt().get();
    Optional<VoxelDoubt> voxels =
        also.voxels()
            ? within(caseFile, loaded, (w, p) -> CheckVoxels.of(loaded, run, doubt, w, p))
            : Optional.empty();
    return new Beside(doubt, voxels);
  }

  private static void checkWritable(Path folder) {
    try {
      ResultFolder.checkWritable(folder);
    } catch (IOException e) {
      throw cantWrite(folder, e);
    }
  }

  private static OutputFailure cantWrite(Path folder, IOException e) {
    String why = String.valueOf(e.getMessage());
    return new OutputFailure(
        why.contains(folder.toString()) ? why : folder + ": can't be written: " + why, e);
  }

  private StoredRun calculate(Path caseFile, LoadedCase loaded) {
    return judge(caseFile, loaded).stored(provenance());
  }

  private StoredRuns.Judged judge(Path caseFile, LoadedCase loaded) {
    return within(
        caseFile,
        loaded,
        (workers, progress) -> {
          StoredRuns.Judged judged = StoredRuns.judged(loaded, workers, progress, Watch.NOBODY);
          progress.check("writing the report", 0);
          return judged;
        });
  }

  /** Work with threads and a line of progress; what can't be calculated is told in a line. */
  private <T> T within(Path caseFile, LoadedCase loaded, BiFunction<Workers, Progress, T> work) {
    String name = String.valueOf(caseFile.getFileName());
    ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, threads - 1));
    boolean shown = console.terminal() && !answers.quiet();
    try (ProgressLine progress = new ProgressLine(console, shown)) {
      return work.apply(new Workers(pool, threads), progress);
    } catch (VoxelException e) {
      throw new InputFailure(loaded.told(e.key(), String.valueOf(e.getMessage())), e);
    } catch (MeshException e) {
      throw new InputFailure(name + ": " + e.getMessage(), e);
    } catch (OutOfMemoryError e) {
      throw new InputFailure(
          name
              + ": too fine for the memory: choose a coarser level, or allow more with"
              + " GELFRONT_JAVA_OPTS=-Xmx3g",
          e);
    } finally {
      pool.shutdownNow();
    }
  }

  private static Provenance provenance() {
    String host =
        System.getProperty("os.name")
            + " "
            + System.getProperty("os.arch")
            + ", Java "
            + System.getProperty("java.version");
    String now =
        OffsetDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.SECONDS).toString();
    return new Provenance(Version.number(), now, host, 0);
  }

  private void print(StoredRuns.Judged judged) {
    Findings f = judged.findings();
    if (!answers.quiet()) {
      console.out().println(f.explanation());
      print(f.opening());
      f.pockets().forEach(this::print);
      printFilling(f.filled());
      printAdvice(f);
      printTimes(f);
      printAmounts(f.amounts());
      judged.cautions().forEach(c -> console.out().println("Mind: " + c.metric()));
      console.out().println();
    }
    console.out().println(judged.loaded().setup().name() + ": " + f.verdict());
    console.out().flush();
  }

  private void print(StoredRun run, Path folder, Beside beside) {
    if (answers.json()) {
      printJson(run, beside);
      return;
    }
    beside.voxels().map(VoxelWords::of).ifPresent(said -> said.forEach(console.out()::println));
    beside.doubt().map(DoubtWords::of).ifPresent(said -> said.forEach(console.out()::println));
    Path report = folder.resolve(new HtmlReport().fileName());
    console.out().println("Report: " + report.toAbsolutePath().normalize());
  }

  private void printFilling(Filled f) {
    if (!f.calculated()) {
      return;
    }
    console.out().println("Filling: " + f.sentence());
    for (Filled.TrappedAir a : f.air()) {
      console
          .out()
          .println(
              Quantities.say(
                  "  Air %d: %s at [%.1f, %.1f, %.1f] mm, cut off after %.1f s. %s",
                  a.number(),
                  Quantities.ml(a.began()),
                  a.place().x() * 1e3,
                  a.place().y() * 1e3,
                  a.place().z() * 1e3,
                  a.since(),
                  a.proposal()));
    }
    console.out().println(Filled.APART);
  }

  private void printJson(StoredRun run, Beside beside) {
    try {
      new FindingsJson(beside.voxels()).write(run, console.out());
      console.out().println();
    } catch (IOException e) {
      throw new OutputFailure("can't print: " + e.getMessage(), e);
    }
  }

  private void print(Opening o) {
    if (!o.sentence().isEmpty()) {
      console.out().println("  " + o.sentence());
    }
    if (!o.sign().isEmpty()) {
      console.out().println("    At the bench: " + o.sign());
    }
  }

  private void print(Pocket p) {
    console
        .out()
        .println(
            Quantities.say(
                "  Pocket %d at (%.1f, %.1f, %.1f) mm: %s",
                p.number(),
                p.centre().x() * 1e3,
                p.centre().y() * 1e3,
                p.centre().z() * 1e3,
                p.sentence()));
    if (!p.sign().isEmpty()) {
      console.out().println("    At the bench: " + p.sign());
    }
  }

  private void printAdvice(Findings f) {
    if (!f.advice().isEmpty()) {
      console.out().println("What to change, best first:");
      f.advice().forEach(a -> console.out().println("  - " + a));
    }
  }

  private void printTimes(Findings f) {
    console
        .out()
        .println(
            Quantities.say(
                "Gate sets at %.1f s, the whole part at %.0f s; firm enough to open at %.0f s."
                    + " Smaller than the cavity by %.1f %% of length.",
                f.gateSets(), f.partSets(), f.firmAt(), f.linearShrinkage() * 100));
  }

  private void printAmounts(Amounts a) {
    double grams = 1e3 * (a.cavities() * a.partMass() + a.feedMass() + a.topUpMass());
    String injector =
        a.injectorCapacity().isEmpty()
            ? ""
            : a.injectorHoldsIt() ? " The injector holds it." : " The injector does NOT hold it.";
    console
        .out()
        .println(
            Quantities.say(
                "Melt at least %s (%s) a shot: %s%s in the part, %s in gate and sprue, %s drawn"
                    + " in.%s",
                Quantities.ml(a.shotVolume()),
                Quantities.say(grams < 1 ? "%.2f g" : "%.0f g", grams),
                a.cavities() > 1 ? a.cavities() + " x " : "",
                Quantities.ml(a.partVolume()),
                Quantities.ml(a.feedVolume()),
                Quantities.ml(a.topUpVolume()),
                injector));
  }
}

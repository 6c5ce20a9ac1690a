package gelfront.cli;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.report.FindingsJson;
import gelfront.report.HtmlReport;
import gelfront.report.PocketsCsv;
import gelfront.report.SeriesCsv;
import gelfront.report.VoxelsVti;
import gelfront.result.Provenance;
import gelfront.result.ResultFolder;
import gelfront.result.StoredRun;
import gelfront.run.StoredRuns;
import gelfront.setup.LoadedCase;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Runs a case and stores what it leaves: what check and demo share. */
final class Checking {
  private Checking() {}

  /**
   * @param folder of the result
   * @param quiet no progress bar
   */
  static StoredRun run(LoadedCase loaded, Path folder, boolean quiet, PrintWriter err)
      throws IOException {
    ResultFolder.checkWritable(folder);
    Bar bar = new Bar(err, !quiet && Boolean.getBoolean("gelfront.terminal"));
    Thread main = Thread.currentThread();
    Thread hook = new Thread(() -> stop(bar, main));
    Runtime.getRuntime().addShutdownHook(hook);
    try {
      StoredRun run = pooled(loaded, bar);
      bar.check("writing the report", 0);
      ResultFolder.write(
          folder,
          run,
          List.of(
              new HtmlReport(),
              new FindingsJson(),
              new PocketsCsv(),
              new SeriesCsv(),
              new VoxelsVti()));
      return run;
    } finally {
      bar.done();
      unhook(hook);
    }
  }

  private static StoredRun pooled(LoadedCase loaded, Progress bar) {
    int threads = Runtime.getRuntime().availableProcessors();
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      return StoredRuns.run(loaded, new Workers(pool, threads), bar, provenance());
    } finally {
      pool.shutdownNow();
    }
  }

  /** Ctrl-C: ask the run to stop and give it time to leave nothing half-written. */
  private static void stop(Bar bar, Thread main) {
    bar.cancel();
    try {
      main.join(5000);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void unhook(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      return; // the program is ending already, and the hook waits for this thread
    }
  }

  static Provenance provenance() {
    String host =
        System.getProperty("os.name")
            + " "
            + System.getProperty("os.arch")
            + ", Java "
            + System.getProperty("java.version");
    String now =
        LocalDateTime.now(ZoneId.systemDefault())
            .truncatedTo(ChronoUnit.MINUTES)
            .toString()
            .replace('T', ' ');
    return new Provenance(Version.text(), now, host, 0);
  }

  static void print(StoredRun run, Path folder, PrintWriter out) {
    out.println(run.findings().verdict());
    out.println(run.findings().explanation());
    run.findings().advice().stream().limit(3).forEach(a -> out.println("- " + a));
    out.println("Report: " + folder.resolve("report.html").toAbsolutePath().normalize());
  }
}

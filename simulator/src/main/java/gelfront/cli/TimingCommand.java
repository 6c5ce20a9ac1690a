// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.setup.CaseFile;
import gelfront.timing.LargeMesh;
import gelfront.timing.Scaling;
import gelfront.timing.Timings;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** timing. */
@Command(
    name = "timing",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Time this machine: the standard case (cells, steps, seconds, peak heap, one thread and"
          + " all; quick, with its errors; with flow, by its parts; from STL to report in a fresh process), the kernel"
          + " against the memory's speed, live mode (gate, sprue, recipe changed), and a mesh of a"
          + " million triangles from file to voxels.",
      "Nothing else should be running meanwhile."
    })
final class TimingCommand implements Callable<Integer> {
  @Option(
      names = "--runs",
      paramLabel = "N",
      defaultValue = "5",
      description = "Runs of which the median is told; left out: ${DEFAULT-VALUE}.")
  private int runs;

  @Option(
      names = "--voxel-mm",
      paramLabel = "MM",
      description = "Edge of a voxel of the standard case; left out: the normal level's.")
  private @Nullable Double voxelMm;

  @Option(names = "--no-mesh", description = "Leaves the large mesh out.")
  private boolean noMesh;

  @Option(
      names = "--scaling",
      description =
          "Instead: time and memory for up to 5 million plastisol cells; wants"
              + " GELFRONT_JAVA_OPTS=-Xmx4g and some minutes.")
  private boolean scaling;

  @Option(
      names = "--answers",
      description =
          "Instead: doubt, size, remedies and a map of 5 x 5 on the demo's case, each in a fresh"
              + " process.")
  private boolean answers;

  @Spec private CommandSpec spec;

  private final Console console;

  TimingCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (runs < 1 || (voxelMm != null && !(voxelMm >= 0.1 && voxelMm <= 1))) {
      throw new ParameterException(
          spec.commandLine(), "--runs must be 1 or more and --voxel-mm from 0.1 to 1");
    }
    int threads = Runtime.getRuntime().availableProcessors();
    console
        .out()
        .println(
            Quantities.say(
                "%s, Java %s, %d threads, heap up to %d MiB",
                processor(),
                System.getProperty("java.version"),
                threads,
                Runtime.getRuntime().maxMemory() >> 20));
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      Workers workers = new Workers(pool, threads);
      if (scaling) {
        new Scaling(console.out()::println).run(workers);
      } else if (answers) {
        answers();
      } else {
        all(workers, pool);
      }
    } catch (IOException e) {
      throw new OutputFailure("timing can't go on: " + e.getMessage(), e);
    } finally {
      pool.shutdownNow();
    }
    return ExitCode.OK;
  }

  private void answers() throws IOException {
    try (Scratch scratch = Scratch.make()) {
      new AnswerTimes(scratch.folder(), console.out()::println).run(runs);
    }
  }

  private void all(Workers workers, ExecutorService pool) throws IOException {
    Timings timings = new Timings(console.out()::println);
    OptionalDouble voxel =
        voxelMm == null ? OptionalDouble.empty() : OptionalDouble.of(1e-3 * voxelMm);
    timings.standardCase(voxel, runs, workers);
    timings.quickLevel(runs, workers);
    coldStart(timings, workers, pool);
    timings.kernel(workers);
    live(timings, workers, pool);
    if (!noMesh) {
      largeMesh(timings);
    }
  }

  private void coldStart(Timings timings, Workers workers, ExecutorService pool)
      throws IOException {
    try (Scratch scratch = Scratch.make()) {
      ColdStart cold = new ColdStart(scratch.folder());
      timings.withFlow(cold.loaded(), runs, workers);
      timings.study(cold.loaded(), runs, pool, workers.threads());
      tell("", cold.median(runs));
      tell(", without its look at level quick", cold.median(runs, "--one-level"));
      tell(", conduction alone (4 s asked)", cold.median(runs, "--one-level", "--no-flow"));
    }
  }

  private void tell(String what, FreshProcess.Took took) {
    console
        .out()
        .println(
            Quantities.say(
                "standard case as STL, check in a fresh process%s: verdict after %.2f s, whole"
                    + " report after %.2f s",
                what, took.first(), took.end()));
  }

  private void live(Timings timings, Workers workers, ExecutorService pool) throws IOException {
    try (Scratch scratch = Scratch.make()) {
      Path file = new ExampleCase(DemoCommand.EXAMPLE).copyTo(scratch.folder());
      timings.live(CaseFile.read(file), runs, workers, pool);
    }
  }

  private static void largeMesh(Timings timings) throws IOException {
    TriangleMesh ring = LargeMesh.ring();
    try (Scratch scratch = Scratch.make()) {
      Path stl = scratch.folder().resolve("ring.stl");
      try (OutputStream out = Files.newOutputStream(stl)) {
        MeshFiles.writeStl(ring, out, LengthUnit.MM);
      }
      timings.largeMesh(stl, ring.triangleCount());
    }
  }

  /** The processor's name where the system tells it, or else its kind. */
  private static String processor() {
    try {
      return Files.readAllLines(Path.of("/proc/cpuinfo")).stream()
          .filter(l -> l.startsWith("model name"))
          .map(l -> l.substring(l.indexOf(':') + 1).strip())
          .findFirst()
          .orElse(System.getProperty("os.arch"));
    } catch (IOException e) {
      return System.getProperty("os.arch");
    }
  }
}

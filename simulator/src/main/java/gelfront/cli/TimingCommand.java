package gelfront.cli;

import gelfront.base.Quantities;
import gelfront.base.Workers;
import gelfront.material.MaterialTable;
import gelfront.mesh.Vec3;
import gelfront.mesh.example.Examples;
import gelfront.run.CaseRunner;
import gelfront.setup.Block;
import gelfront.setup.Case;
import gelfront.setup.FeedSystem;
import gelfront.setup.Numerics;
import gelfront.setup.PartShape;
import gelfront.setup.Section;
import gelfront.setup.Shot;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** timing. */
@Command(
    name = "timing",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Time the two-bulb example on this machine: cells, steps, seconds, peak heap.")
final class TimingCommand implements Callable<Integer> {
  @Option(
      names = "--runs",
      paramLabel = "N",
      defaultValue = "3",
      description = "default: ${DEFAULT-VALUE}")
  private int runs;

  @Option(
      names = "--voxel-mm",
      paramLabel = "MM",
      description = "edge of a voxel; default: by level normal")
  private Double voxelMm;

  private final Console console;

  TimingCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    PrintStream out = console.out();
    int threads = Runtime.getRuntime().availableProcessors();
    out.println(
        Quantities.say(
            "%s, Java %s, %d threads, heap up to %d MiB",
            System.getProperty("os.arch"),
            System.getProperty("java.version"),
            threads,
            Runtime.getRuntime().maxMemory() >> 20));
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      for (int i = 0; i < runs; i++) {
        once(out, new Workers(pool, threads));
      }
    } finally {
      pool.shutdownNow();
    }
    return ExitCode.OK;
  }

  private void once(PrintStream out, Workers workers) {
    ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
    long start = System.nanoTime();
    CaseRunner.Outcome o =
        CaseRunner.run(
            example(),
            Examples.all().get("two-bulbs-neck"),
            workers,
            (stage, part) -> !console.cancelled().getAsBoolean());
    double seconds = (System.nanoTime() - start) * 1e-9;
    long peak =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(p -> p.getType() == java.lang.management.MemoryType.HEAP)
            .mapToLong(p -> p.getPeakUsage().getUsed())
            .sum();
    out.println(
        Quantities.say(
            "%,d plastisol cells, %,d mould cells, %d steps, %.2f s, peak heap %d MiB",
            o.voxels().report().plastisolCells(),
            o.voxels().report().mouldCells(),
            o.steps(),
            seconds,
            peak >> 20));
  }

  private Case example() {
    MaterialTable materials = MaterialTable.builtIn();
    Vec3 back = new Vec3(-1, 0, 0);
    OptionalDouble voxel =
        voxelMm == null ? OptionalDouble.empty() : OptionalDouble.of(voxelMm * 1e-3);
    return new Case(
        "timing",
        new PartShape.Calipers(List.of()),
        new FeedSystem.Declared(
            new FeedSystem.Gate(Vec3.ZERO, back, Section.round(3e-3), 3e-3),
            Optional.empty(),
            Optional.empty(),
            new FeedSystem.Sprue(10e-3, 10e-3, 28e-3, back)),
        List.of(),
        new Block(
            materials.mould("aluminium-6061"),
            15e-3,
            Optional.empty(),
            30,
            23,
            9,
            2500,
            List.of(),
            List.of()),
        materials.plastisol("soft"),
        new Shot(165, 2, 5, 20e3, List.of(), OptionalDouble.empty(), OptionalDouble.empty()),
        new Vec3(0, 0, 1),
        OptionalDouble.empty(),
        1,
        new Numerics(Numerics.Level.NORMAL, voxel),
        List.of());
  }
}

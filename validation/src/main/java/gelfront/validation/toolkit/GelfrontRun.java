// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.toolkit;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.management.OperatingSystemMXBean;
import gelfront.base.Workers;
import gelfront.grid.VoxelModel;
import gelfront.run.StepControl;
import gelfront.setup.Numerics;
import gelfront.timing.StandardCase;
import gelfront.timing.StandardErrors;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The standard case on one thread, all of it as the tetrahedra are, several times in one process.
 * Processor time is the whole process's, with compiler and garbage collector: of making voxels, of
 * the first run from the voxel model to the result, and the median of the later ones.
 */
public final class GelfrontRun {
  private static final OperatingSystemMXBean SYSTEM =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

  private GelfrontRun() {}

  /**
   * @param args voxel in mm, level, later runs, file to write
   */
  public static void main(String[] args) throws IOException {
    double spacing = 1e-3 * Double.parseDouble(args[0]);
    Numerics.Level level = Numerics.Level.valueOf(args[1].toUpperCase(Locale.ROOT));
    int runs = Integer.parseInt(args[2]);
    double before = cpu();
    long began = System.nanoTime();
    VoxelModel model = StandardCase.model(new Numerics(level, OptionalDouble.of(spacing)));
    double voxels = cpu() - before;
    Timed first = timed(model, level);
    double wall = 1e-9 * (System.nanoTime() - began);
    double cold = cpu();
    double warm = median(model, level, runs);

    ObjectNode row = new ObjectMapper().createObjectNode();
    row.put("name", String.format(Locale.ROOT, "gelfront, voxels of %s mm, warm", args[0]));
    row.put("unknowns", model.cavity().count() + model.mould().count());
    row.put("steps", first.run.steps());
    StandardErrors errors = StandardErrors.of(model.cavity(), first.run);
    Arrays.stream(errors.axis()).forEach(row.putArray("axis")::add);
    Arrays.stream(errors.half()).forEach(row.putArray("half")::add);
    row.put("last", errors.last());
    row.putObject("cpu_s").put("meshing", voxels).put("first", first.cpu).put("stepping", warm);
    row.put("whole_cpu_s", cold);
    row.put("wall_s", wall);
    row.put("peak_MB", peakMegabytes());
    Files.writeString(Path.of(args[3]), row.toPrettyString());
  }

  private record Timed(StandardCase.Run run, double cpu) {}

  private static Timed timed(VoxelModel model, Numerics.Level level) {
    double before = cpu();
    StandardCase.Run run = StandardCase.whole(model, Workers.SERIAL, StepControl.tolerance(level));
    return new Timed(run, cpu() - before);
  }

  private static double median(VoxelModel model, Numerics.Level level, int runs) {
    double[] took = new double[runs];
    Arrays.setAll(took, i -> timed(model, level).cpu);
    Arrays.sort(took);
    return took[runs / 2];
  }

  /** s of the whole process so far. */
  private static double cpu() {
    return 1e-9 * SYSTEM.getProcessCpuTime();
  }

  /** Resident, as the kernel counts it: what the scripts tell of themselves. */
  private static double peakMegabytes() throws IOException {
    return Files.readAllLines(Path.of("/proc/self/status")).stream()
            .filter(l -> l.startsWith("VmHWM"))
            .mapToDouble(l -> Double.parseDouble(l.replaceAll("\\D", "")))
            .findFirst()
            .orElse(Double.NaN)
        / 1024;
  }
}

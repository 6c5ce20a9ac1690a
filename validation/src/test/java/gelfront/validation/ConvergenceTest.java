// SPDX-License-Identifier: Apache-2.0
package gelfront.validation;

import gelfront.base.Workers;
import gelfront.evidence.Check;
import gelfront.grid.VoxelModel;
import gelfront.setup.Numerics;
import gelfront.timing.StandardCase;
import gelfront.timing.StandardErrors;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * The standard case on finer and finer voxels, cells half as large in the gate, steps of the fine
 * level throughout, so that what is left is of the cells. At the fine level's voxel half of the
 * normal level's bounds hold. Orders are printed, not asked for: every grid is early by some 0.1 %
 * on the axis, and more than that the cells do not leave there. With {@code -Dslow=true}, half a
 * minute; the table goes to {@code target/convergence.md}, and that of the last time lies beside
 * this module's data.
 */
@EnabledIfSystemProperty(named = "slow", matches = "true")
class ConvergenceTest {
  private static final double[] VOXELS_MM = {0.7, 0.5, 0.4, 0.3};

  private static StandardErrors errors(double voxelMm) {
    Numerics numerics = new Numerics(Numerics.Level.FINE, OptionalDouble.of(1e-3 * voxelMm));
    VoxelModel model = StandardCase.model(numerics);
    StandardCase.Run run = StandardCase.run(model, Workers.SERIAL, Numerics.Level.FINE);
    return StandardErrors.of(model.cavity(), run);
  }

  @Test
  void errorsFallWithTheVoxels() throws IOException {
    List<StandardErrors> found = Arrays.stream(VOXELS_MM).mapToObj(v -> errors(v)).toList();

    Files.write(Path.of("target", "convergence.md"), table(found));
    StandardErrors fine = found.get(VOXELS_MM.length - 1);
    double[] half = fine.half();
    check("mean error over that of 0.7 mm")
        .expected(0)
        .got(mean(fine) / mean(found.get(0)))
        .within(0.5, 1);
    check("worst on the axis").error(fine.worstAxis()).within(0.005);
    check("gate").error(fine.gate()).within(0.0075);
    check("worst half way to the wall").error(fine.worstHalf()).within(0.0075);
    check("gate half way").error(half[StandardErrors.GATE]).within(0.0075);
    check("last below 90 °C").error(fine.last()).within(0.0015);
  }

  private static Check check(String what) {
    return Check.of(
        "voxels of 0.3 mm: " + what, "axisymmetric finite elements, standard-case.json");
  }

  /** Slope of the error's size against the voxel in logarithms, least squares. */
  private static double order(List<StandardErrors> found, ToDoubleFunction<StandardErrors> error) {
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < VOXELS_MM.length; i++) {
      double size = Math.abs(error.applyAsDouble(found.get(i)));
      line.addData(Math.log(VOXELS_MM[i]), Math.log(size));
    }
    return line.getSlope();
  }

  /** Of the errors' sizes on the axis and half way to the wall. */
  private static double mean(StandardErrors e) {
    return 0.5 * (size(e.axis()) + size(e.half()));
  }

  private static double size(double[] errors) {
    return Arrays.stream(errors).map(Math::abs).average().orElseThrow();
  }

  private static List<String> table(List<StandardErrors> found) {
    List<String> rows = new ArrayList<>();
    StringBuilder head = new StringBuilder("| error of the time, % |");
    for (double v : VOXELS_MM) {
      head.append(String.format(Locale.ROOT, " %.2f mm |", v));
    }
    rows.add(head + " order |");
    rows.add("|---".repeat(VOXELS_MM.length + 2) + "|");
    List<StandardErrors.Probe> probes = StandardErrors.probes();
    for (int i : IntStream.range(0, probes.size()).toArray()) {
      rows.add(row("axis, x = " + probes.get(i).xMm() + " mm", found, e -> e.axis()[i]));
    }
    for (int i : IntStream.range(0, probes.size()).toArray()) {
      rows.add(row("half way, x = " + probes.get(i).xMm() + " mm", found, e -> e.half()[i]));
    }
    rows.add(row("last below 90 °C", found, StandardErrors::last));
    rows.add(row("mean of sizes, axis", found, e -> size(e.axis())));
    rows.add(row("mean of sizes, half way", found, e -> size(e.half())));
    return rows;
  }

  private static String row(
      String name, List<StandardErrors> found, ToDoubleFunction<StandardErrors> error) {
    StringBuilder row = new StringBuilder("| " + name + " |");
    found.forEach(e -> row.append(percent(error.applyAsDouble(e))));
    return row + String.format(Locale.ROOT, " %.1f |", order(found, error));
  }

  private static String percent(double error) {
    return String.format(Locale.ROOT, " %+.2f |", 100 * error);
  }
}

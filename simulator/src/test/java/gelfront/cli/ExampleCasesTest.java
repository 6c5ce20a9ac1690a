// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.finding.Findings;
import gelfront.finding.Severity;
import gelfront.mesh.example.Examples;
import gelfront.run.CaseRunner;
import gelfront.setup.Case;
import gelfront.setup.CaseFile;
import gelfront.setup.Numerics;
import gelfront.setup.PartLoader;
import gelfront.setup.PartShape;
import gelfront.voxelize.CaseVoxels;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every shipped case reads, has comments, makes a sound voxel model and comes to a verdict. */
final class ExampleCasesTest {
  private static final Path FOLDER = Path.of("../meshes/src/main/resources/gelfront/examples");

  /** The demo tells of a part that dents and of its cure: it had better be one. */
  private static final Map<String, Severity> TOLD =
      Map.of("two-bulbs-neck.toml", Severity.MAY_DENT, "two-bulbs-cured.toml", Severity.CLEAN);

  static Stream<Path> cases() throws IOException {
    try (Stream<Path> list = Files.list(FOLDER)) {
      return list.filter(p -> p.toString().endsWith(".toml")).sorted().toList().stream();
    }
  }

  @Test
  void everyExampleMeshHasACase() throws IOException {
    Set<String> used = new TreeSet<>();
    for (Path p : cases().toList()) {
      if (CaseFile.read(p).setup().part() instanceof PartShape.Meshes m) {
        m.files().forEach(f -> used.add(f.getFileName().toString().replace(".stl", "")));
      }
    }

    assertEquals(new TreeSet<>(Examples.all().keySet()), used);
    for (String told : TOLD.keySet()) {
      assertTrue(cases().anyMatch(p -> p.endsWith(told)), told);
    }
  }

  /** To the end, with the flow; five gates' smaller cells once were too many for a queue. */
  @ParameterizedTest
  @MethodSource("cases")
  void theCaseMakesASoundModelAndComesToAVerdict(Path file) throws IOException {
    Case c = quick(CaseFile.read(file).setup());

    CaseVoxels v = CaseVoxels.of(c, PartLoader.load(c.part()).mesh(), Progress.NONE);
    Findings found = CaseRunner.run(c, v, Workers.SERIAL, Progress.NONE).judgement().findings();

    assertTrue(Files.readString(file).startsWith("# "), "opens with what it is about");
    assertTrue(c.warnings().isEmpty(), () -> c.warnings().toString());
    assertTrue(v.report().cellsAcross() >= 4, () -> "cells " + v.report().cellsAcross());
    assertTrue(Math.abs(v.report().volumeError()) < 0.05, () -> "" + v.report().volumeError());
    assertTrue(found.partSets() > 0);
    Severity told = TOLD.get(file.getFileName().toString());
    assertTrue(told == null || told == found.severity(), found::verdict);
  }

  private static Case quick(Case c) {
    return new Case(
        c.name(),
        c.part(),
        c.copies(),
        c.feed(),
        c.growths(),
        c.block(),
        c.plastisol(),
        c.shot(),
        c.up(),
        c.clampingForce(),
        c.cavities(),
        new Numerics(Numerics.Level.QUICK, OptionalDouble.empty()),
        c.warnings());
  }
}

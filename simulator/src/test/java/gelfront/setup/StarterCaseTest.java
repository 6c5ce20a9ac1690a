// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.example.Examples;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** First cases are cases. */
final class StarterCaseTest {
  @TempDir private Path folder;

  static Set<String> examples() {
    return Examples.all().keySet();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleMeshGetsACaseThatLoadsBackAndShowsTheSamePart(String name) throws IOException {
    LengthUnit unit = Examples.unit(name);
    Path file = folder.resolve(name + ".stl");
    try (OutputStream out = Files.newOutputStream(file)) {
      MeshFiles.writeStl(Examples.all().get(name), out, unit);
    }
    StarterGuess.Unit sized = StarterGuess.unit(file, Optional.empty());
    TriangleMesh part = MeshRepair.prepare(sized.mesh(), MeshRepair.WELD).mesh();
    StarterGuess g = StarterGuess.of(part);

    LoadedCase loaded = CaseFile.parse("c.toml", g.text(name, name + ".stl", sized.unit()), folder);

    Case c = loaded.setup();
    assertEquals(unit, sized.unit());
    assertEquals(name, c.name());
    assertEquals(java.util.List.of(), c.warnings());
    PartShape.Meshes m = (PartShape.Meshes) c.part();
    assertEquals(sized.mesh().box(), MeshFiles.read(m.files().get(0), m.unit()).box());
    if (c.feed() instanceof FeedSystem.Declared d) {
      assertTrue(d.gate().at().distance(g.gate()) < 1e-6);
      assertTrue(d.gate().direction().distance(g.direction()) < 1e-6);
      assertEquals(g.gateSize(), d.gate().section().width(), 0.05e-3);
      assertEquals(g.sprueSize(), d.sprue().innerDiameter(), 0.05e-3);
    } else {
      FeedSystem.InMesh f = (FeedSystem.InMesh) c.feed();
      assertTrue(f.gates().get(0).distance(g.gate()) < 1e-6);
      assertTrue(f.mouth().orElseThrow().distance(g.mouth().orElseThrow()) < 1e-6);
    }
  }

  @Test
  void aSmallPartIsNotTakenForOneOfSeveralLitres() throws IOException {
    Path file = folder.resolve("short.stl");
    Files.writeString(
        file,
        """
        solid short
        facet normal 0 0 0
        outer loop
        vertex 0 0 0
        vertex 11 0 0
        vertex 0 6 4
        endloop
        endfacet
        endsolid
        """);

    assertEquals(LengthUnit.CM, StarterGuess.unit(file, Optional.empty()).unit());
  }

  /** What its comments offer can be had by taking the comment sign away. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void linesOfferedInCommentsAreReadToo(boolean feedInMesh) throws IOException {
    Files.writeString(folder.resolve("x.stl"), "");
    Vec3 at = new Vec3(0.001, -0.002, 0);
    String text =
        feedInMesh
            ? StarterCase.withFeed("x", "x.stl", "mm", at, at)
            : StarterCase.text("x", "x.stl", "mm", at, new Vec3(0, 0, 1), 3e-3, 8e-3);
    String opened = text.replaceAll("(?m)^# (?=[a-z_]+ = |\\[\\[)", "");

    Case c = CaseFile.parse("c.toml", opened, folder).setup();

    assertTrue(opened.length() < text.length());
    assertEquals(feedInMesh ? 1 : 0, c.growths().size());
    assertEquals(100e-6, c.shot().injectorCapacity().orElseThrow(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a \"b\" \\ c", "tab\tbell\u0007", "del\u007f", "Köder 钓饵", "'", "#"})
  void anyNameIsKept(String name) throws IOException {
    Files.writeString(folder.resolve("x.stl"), "");
    String text = StarterCase.text(name, "x.stl", "mm", Vec3.ZERO, new Vec3(1, 0, 0), 3e-3, 8e-3);

    assertEquals(name, CaseFile.parse("c.toml", text, folder).setup().name());
  }

  @Test
  void theMachinesLanguageChangesNothing() {
    Vec3 at = new Vec3(0.0012345, 0, -0.5);
    String usual = StarterCase.text("x", "x.stl", "mm", at, new Vec3(0.6, 0.8, 0), 3e-3, 8e-3);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);

      assertEquals(
          usual, StarterCase.text("x", "x.stl", "mm", at, new Vec3(0.6, 0.8, 0), 3e-3, 8e-3));
    } finally {
      Locale.setDefault(before);
    }
    assertTrue(usual.contains("at = [\"1.235 mm\", \"0.000 mm\", \"-500.000 mm\"]"), usual);
  }
}

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
import gelfront.mesh.shape.Solids;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class StarterGuessTest {
  private static final double TENTH_MM = 1e-4;

  private static TriangleMesh example(String name) {
    return MeshRepair.prepare(Examples.all().get(name), MeshRepair.WELD).mesh();
  }

  /** A right circular cone's section at height z has the area pi (r z / h)^2. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void sectionsOfATruncatedCone(int axis) {
    Vec3 along = new Vec3(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0);
    TriangleMesh cone = Solids.cylinder(Vec3.ZERO, along.times(0.05), 2e-3, 7e-3, 720);

    SectionProfile p = SectionProfile.of(cone);

    for (int s = 0; s < SectionProfile.STATIONS; s += 37) {
      double z = (s + 0.5) / SectionProfile.STATIONS;
      double expected = 2 * (2e-3 + 5e-3 * z);
      // 720 corners instead of a circle: an area 1.3e-5 too small
      assertEquals(expected, p.diameter(s), expected * 2e-5);
      assertTrue(p.centre(s).distance(along.times(0.05 * z)) < 1e-9);
    }
  }

  @ParameterizedTest
  @CsvSource({"cone-body,80", "bulb-thin-nose,90", "two-bulbs-neck,0", "finned-body,0"})
  void partsWithoutFeedGetAGateAtTheThickEnd(String name, double xMm) {
    StarterGuess g = StarterGuess.of(example(name));

    assertTrue(g.mouth().isEmpty());
    assertEquals(xMm * 1e-3, g.gate().x(), TENTH_MM);
    assertEquals(xMm > 0 ? 1 : -1, g.direction().x());
    assertTrue(g.gateSize() >= 2e-3 && g.gateSize() <= 6e-3, () -> "gate " + g.gateSize());
  }

  @Test
  void feedInTheMeshIsRecognised() {
    StarterGuess g = StarterGuess.of(example("two-bulbs-with-feed"));

    assertEquals(-31e-3, g.mouth().orElseThrow().x(), TENTH_MM);
    assertTrue(g.gate().x() > -3.1e-3 && g.gate().x() < 0, () -> "gate at " + g.gate());
    assertEquals(3e-3, g.gateSize(), TENTH_MM);
    assertEquals(10e-3, g.sprueSize(), TENTH_MM);
  }

  @ParameterizedTest
  @CsvSource({"MM,MM", "INCH,INCH", "M,M"})
  void theUnitIsGuessedFromTheSize(LengthUnit written, LengthUnit guessed, @TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("part.stl");
    try (OutputStream out = Files.newOutputStream(file)) {
      MeshFiles.writeStl(Examples.all().get("cone-body"), out, written);
    }

    StarterGuess.Unit u = StarterGuess.unit(file, Optional.empty());

    assertEquals(guessed, u.unit());
    assertEquals(80e-3, u.mesh().box().size().x(), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(strings = {"cone-body", "two-bulbs-with-feed", "straight-stick"})
  void theTextReadsBackAsACase(String name, @TempDir Path folder) throws IOException {
    LengthUnit unit = Examples.unit(name);
    String odd = "a \"quoted\" näme.stl".replace('"', '\'');
    try (OutputStream out = Files.newOutputStream(folder.resolve(odd))) {
      MeshFiles.writeStl(Examples.all().get(name), out, unit);
    }
    StarterGuess g = StarterGuess.of(example(name));

    Case c = CaseFile.parse("case.toml", g.text("my \"part\"", odd, unit), folder).setup();

    assertEquals("my \"part\"", c.name());
    if (c.feed() instanceof FeedSystem.Declared d) {
      assertTrue(d.gate().at().distance(g.gate()) < 1e-6);
    } else {
      assertEquals(g.mouth(), ((FeedSystem.InMesh) c.feed()).mouth());
    }
  }
}

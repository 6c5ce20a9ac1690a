// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.example.Examples;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.io.MeshTexts;
import gelfront.mesh.shape.Solids;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
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

  /** Off the axis and leaning: centres lie on the line between those of both ends. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void sectionsOfALeaningPrismAnywhere(int axis) {
    double[] low = {0.03, -0.02, 0.011};
    double[] high = {0.027, -0.016, 0.015};
    high[axis] = low[axis] + 0.05;
    TriangleMesh bar = leaning(low, high, axis);

    SectionProfile p = SectionProfile.of(bar);

    for (int s = 0; s < SectionProfile.STATIONS; s += 37) {
      double z = (s + 0.5) / SectionProfile.STATIONS;
      assertEquals(6e-3 * 4e-3, p.area(s), 1e-12);
      Vec3 middle = point(low).plus(point(high).minus(point(low)).times(z));
      assertTrue(p.centre(s).distance(middle) < 1e-9, p.centre(s) + " " + middle);
    }
  }

  private static Vec3 point(double[] of) {
    return new Vec3(of[0], of[1], of[2]);
  }

  /** Sections of 6 x 4 mm across an axis, their middles from one place to another. */
  private static TriangleMesh leaning(double[] low, double[] high, int axis) {
    double[] v = new double[24];
    for (int c = 0; c < 8; c++) {
      double[] middle = c < 4 ? low : high;
      double[] at = middle.clone();
      at[(axis + 1) % 3] += (c % 4 == 0 || c % 4 == 3 ? -1 : 1) * 3e-3;
      at[(axis + 2) % 3] += (c % 4 < 2 ? -1 : 1) * 2e-3;
      System.arraycopy(at, 0, v, 3 * c, 3);
    }
    int[] t = {
      0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3,
      0, 4, 3, 4, 7
    };
    return new TriangleMesh(v, t);
  }

  /** Two fifths of what is thickest, to a cutter of half millimetres; the sprue 1.6 times that. */
  @ParameterizedTest
  @CsvSource({"6,14,5.5,9", "14,6,5.5,9", "4,12,4.5,8", "30,20,6,10", "1,1.2,1,8"})
  void gateAndSprueFollowTheThickness(double low, double high, double gateMm, double sprueMm) {
    Vec3 from = new Vec3(0.01, 0.02, 0.03);
    Vec3 to = new Vec3(0.06, 0.02, 0.03);

    StarterGuess g = StarterGuess.of(Solids.cylinder(from, to, 0.5e-3 * low, 0.5e-3 * high, 96));

    assertEquals(gateMm * 1e-3, g.gateSize(), 1e-9);
    assertEquals(sprueMm * 1e-3, g.sprueSize(), 1e-9);
    assertTrue(g.gate().distance(high > low ? to : from) < 1e-6, "" + g.gate());
  }

  /** Pour opening and gate at the other end, the land's middle within a station. */
  @ParameterizedTest
  @ValueSource(ints = {1, -1})
  void feedInTheMeshIsRecognisedAtEitherEnd(int way) {
    TriangleMesh all =
        round(0, way * 20, 5, 5)
            .plus(round(way * 20, way * 23, 1.5, 1.5))
            .plus(round(way * 23, way * 45, 6, 1));

    StarterGuess g = StarterGuess.of(all);

    assertEquals(0, g.mouth().orElseThrow().x(), TENTH_MM);
    assertEquals(way * 21.5e-3, g.gate().x(), 2 * TENTH_MM);
    assertEquals(-way, g.direction().x());
    assertEquals(3e-3, g.gateSize(), TENTH_MM);
    assertEquals(10e-3, g.sprueSize(), TENTH_MM);
  }

  /** Along x, mm. */
  private static TriangleMesh round(double from, double to, double r0, double r1) {
    Vec3 low = new Vec3(from * 1e-3, 0, 0);
    return Solids.cylinder(low, new Vec3(to * 1e-3, 0, 0), r0 * 1e-3, r1 * 1e-3, 720);
  }

  /** The neck is narrow and a part begins behind it, but before it there is a part already. */
  @Test
  void aNeckBetweenTwoBulbsIsNoGate() {
    TriangleMesh bulbs =
        round(0, 5, 3, 3)
            .plus(round(5, 20, 6, 6))
            .plus(round(20, 24, 1.5, 1.5))
            .plus(round(24, 39, 6.5, 6.5))
            .plus(round(39, 44, 3, 3));

    StarterGuess g = StarterGuess.of(bulbs);

    assertTrue(g.mouth().isEmpty(), g.words());
    assertEquals(44e-3, g.gate().x(), TENTH_MM);
  }

  @Test
  void theGuessIsToldInMillimetres() {
    Vec3 gate = new Vec3(21.5e-3, 0, -1e-3);
    Vec3 back = new Vec3(-1, 0, 0);
    Optional<Vec3> mouth = Optional.of(new Vec3(0, 2e-3, 0));

    assertEquals(
        "a gate of 5.5 mm at the thicker end, at (21.5, 0.0, -1.0) mm",
        new StarterGuess(Optional.empty(), gate, back, 5.5e-3, 9e-3).words());
    assertEquals(
        "gate and sprue are part of the mesh, pour opening at (0.0, 2.0, 0.0) mm, gate (3.0 mm) at"
            + " (21.5, 0.0, -1.0) mm",
        new StarterGuess(mouth, gate, back, 3e-3, 10e-3).words());
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

  /** 8 long, it looks like inches, unless someone knows better. */
  @Test
  void aUnitThatIsStatedOrInTheFileIsNotGuessed(@TempDir Path folder) throws IOException {
    TriangleMesh pin = Solids.box(Vec3.ZERO, new Vec3(8e-3, 1.5e-3, 1.5e-3));
    Map<String, byte[]> written = MeshTexts.all(pin);
    Path stl = Files.write(folder.resolve("pin.stl"), written.get("binary.stl"));
    Path own = Files.write(folder.resolve("pin.3mf"), written.get("packed.3mf"));

    assertEquals(LengthUnit.INCH, StarterGuess.unit(stl, Optional.empty()).unit());
    assertPin(StarterGuess.unit(stl, Optional.of(LengthUnit.MM)));
    assertPin(StarterGuess.unit(own, Optional.empty()));
  }

  private static void assertPin(StarterGuess.Unit u) {
    assertEquals("mm", u.word());
    assertEquals(8e-3, u.mesh().box().size().x(), 1e-9);
  }

  /** Longer than hands fill, yet under a metre: taken as it is written. */
  @Test
  void aSizeThatFitsNoUnitIsMillimetresOrRefused(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("rod.stl");
    Files.write(file, MeshTexts.all(round(0, 600, 4, 4)).get("binary.stl"));
    assertEquals(LengthUnit.MM, StarterGuess.unit(file, Optional.empty()).unit());

    Files.write(file, MeshTexts.all(round(0, 1100, 4, 4)).get("binary.stl"));
    MeshException e =
        assertThrows(MeshException.class, () -> StarterGuess.unit(file, Optional.empty()));
    assertTrue(e.getMessage().contains("state the unit"), e.getMessage());
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

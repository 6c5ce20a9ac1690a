// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Units;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.shape.Solids;
import gelfront.viewer.Cases;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenerTest {
  @TempDir Path folder;

  @Test
  void aMeshWithoutACaseGetsAFirstOneWithAGuessedUnit() throws IOException {
    Path stl = Cases.bar(folder);

    Opened.ACase o = assertInstanceOf(Opened.ACase.class, Opener.open(stl));

    assertEquals(LengthUnit.MM, o.unit().orElseThrow().unit());
    assertEquals(
        "24.0 x 10.0 x 8.0 mm",
        Opener.size(o.unit().get().mesh(), LengthUnit.MM, LengthUnit.MM, Units.METRIC));
    assertTrue(o.project().unsaved(), "there is no file yet");
    assertTrue(o.project().file().isEmpty());
    assertEquals("bar", o.project().now().setup().name());
    assertTrue(o.notes().get(0).startsWith("Guessed a gate of"), () -> o.notes().toString());
  }

  @Test
  void aStatedUnitIsTakenForTheSameMesh() throws IOException {
    Path stl = Cases.bar(folder);

    Opened.ACase o =
        assertInstanceOf(Opened.ACase.class, Opener.open(stl, Optional.of(LengthUnit.CM)));

    assertEquals(0.24, o.project().part().box().size().x(), 1e-6);
  }

  @Test
  void aCaseIsWorkedOnInItsOwnFile() throws IOException {
    Path file = Cases.barCase(folder);

    Opened.ACase o = assertInstanceOf(Opened.ACase.class, Opener.open(file));

    assertEquals(Optional.of(file), o.project().file());
    assertTrue(!o.project().unsaved());
    assertTrue(o.unit().isEmpty(), "nothing to ask");
  }

  @Test
  void aMeshWithAHoleIsShownWithTheReason() throws IOException {
    TriangleMesh box = Solids.box(Vec3.ZERO, new Vec3(0.03, 0.01, 0.01));
    int[] open = Arrays.copyOf(box.copyTriangles(), 3 * box.triangleCount() - 6);
    Path stl = folder.resolve("hole.stl");
    try (OutputStream out = Files.newOutputStream(stl)) {
      MeshFiles.writeStl(new TriangleMesh(box.copyVertices(), open), out, LengthUnit.MM);
    }

    Opened.ABrokenMesh o = assertInstanceOf(Opened.ABrokenMesh.class, Opener.open(stl));

    assertEquals(10, o.mesh().triangleCount());
    assertTrue(!o.why().get(0).isBlank());
  }

  @Test
  void whatIsNothingIsSaidInWords() throws IOException {
    Path text = Files.writeString(folder.resolve("note.toml"), "size = 3 mm");

    Opened.Nothing o = assertInstanceOf(Opened.Nothing.class, Opener.open(text));
    Opened.Nothing none =
        assertInstanceOf(Opened.Nothing.class, Opener.open(folder.resolve("none.stl")));

    assertTrue(o.why().contains("note.toml:1:"), o.why());
    assertEquals("there is no such file", none.why());
  }
}

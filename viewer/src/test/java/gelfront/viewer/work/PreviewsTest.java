// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.shape.Solids;
import gelfront.viewer.Cases;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.MouldShown;
import gelfront.viewer.model.SetupShown;
import gelfront.viewer.model.SkinMesh;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PreviewsTest {
  @TempDir Path folder;

  private final MouldShapes moulds = new MouldShapes();

  private SetupShown shown(Path file) {
    Project p = ((Opened.ACase) Opener.open(file)).project();
    return Previews.of(p.now(), SkinMesh.of(p.part()), p.part(), moulds, List.of());
  }

  private static MouldShown block(SetupShown s) {
    return s.block().orElseThrow();
  }

  @Test
  void aMouldWithoutAShapeIsABoxAndTheEyeIsPutSoThatTheBarStaysLarge() throws IOException {
    SetupShown s = shown(Cases.barCase(folder));

    assertEquals(12 * 6, block(s).edges().length);
    Extent cavity = new Extent(new Vec3(-14, -5, -4), new Vec3(24, 5, 4)); // with land and sprue
    assertTrue(block(s).extent().radius() > 1.5 * cavity.radius());
    double grown = s.extent().radius() / cavity.radius();
    assertTrue(grown > 1.3 && grown <= 1.4, "by " + grown); // a diagonal grows less than its ends
    assertTrue(s.extent().lower().y() < -5 && s.extent().upper().x() > 24);
  }

  /** Two halves, each a box: twelve edges each, and no box round both. */
  @Test
  void aMouldIsDrawnByItsOwnSolidsReadOnce() throws IOException {
    Path file = Cases.barCase(folder);
    half("low.stl", -14, -30);
    half("high.stl", 0, -20);
    Files.writeString(
        file,
        "\n[block]\nmesh = [\"low.stl\", \"high.stl\"]\nunit = \"mm\"\n",
        java.nio.file.StandardOpenOption.APPEND);

    MouldShown first = block(shown(file));

    assertEquals(2 * 12 * 6, first.edges().length);
    assertEquals(
        new Extent(new Vec3(-20, -30, -14), new Vec3(40, 20, 14)).toString(),
        first.extent().toString());
    assertSame(first, block(shown(file)));
  }

  private void half(String name, double fromZ, double fromY) throws IOException {
    TriangleMesh box =
        Solids.box(
            new Vec3(-20, fromY, fromZ).times(1e-3), new Vec3(40, 20, fromZ + 14).times(1e-3));
    try (OutputStream out = Files.newOutputStream(folder.resolve(name))) {
      MeshFiles.writeStl(box, out, LengthUnit.MM);
    }
  }
}

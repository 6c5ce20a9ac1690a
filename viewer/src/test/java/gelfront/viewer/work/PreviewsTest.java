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

  /** Cut off by the block: one begins far outside, one doesn't meet it at all. */
  @Test
  void channelsForACoolantAreTubesAsLongAsTheBlock() throws IOException {
    Path file = Cases.barCase(folder);
    Files.writeString(
        file, channel(-500, 12) + channel(-500, 90), java.nio.file.StandardOpenOption.APPEND);

    SetupShown s = shown(file);

    assertEquals(1, s.channels().size());
    Extent tube = round(s.channels().get(0).positions());
    Extent mould = block(s).extent();
    assertEquals(0, tube.lower().distance(new Vec3(mould.lower().x(), -3, 9)), 1e-4);
    assertEquals(0, tube.upper().distance(new Vec3(mould.upper().x(), 3, 15)), 1e-4);
  }

  private static Extent round(float[] xyz) {
    Extent all = null;
    for (int i = 0; i < xyz.length; i += 3) {
      Vec3 p = new Vec3(xyz[i], xyz[i + 1], xyz[i + 2]);
      all = all == null ? new Extent(p, p) : all.with(new Extent(p, p));
    }
    return all;
  }

  private static String channel(int x, int z) {
    return """

        [[block.channel]]
        from = ["%d mm", "0 mm", "%d mm"]
        to = ["500 mm", "0 mm", "%d mm"]
        diameter = "6 mm"
        film = "3000 W/m2K"
        temperature = "15 degC"
        """
        .formatted(x, z, z);
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

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.shape.Solids;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small cases on disk, quick to calculate. */
public final class Cases {
  /** A comment of the user's own in the case's text. */
  public static final String COMMENT = "# the cutter I have";

  private Cases() {}

  /** A bar of 24 x 10 x 8 mm as an STL in millimetres. */
  public static Path bar(Path folder) throws IOException {
    Path stl = folder.resolve("bar.stl");
    try (OutputStream out = Files.newOutputStream(stl)) {
      MeshFiles.writeStl(
          Solids.box(new Vec3(0, -5e-3, -4e-3), new Vec3(24e-3, 5e-3, 4e-3)), out, LengthUnit.MM);
    }
    return stl;
  }

  /** A case of that bar, fed at its end, level quick. */
  public static Path barCase(Path folder) throws IOException {
    bar(folder);
    Path file = folder.resolve("mine.toml");
    Files.writeString(
        file,
        """
        name = "bar"
        [part]
        mesh = "bar.stl"
        unit = "mm"
        [gate]
        at = ["0 mm", "0 mm", "0 mm"]
        direction = [-1, 0, 0]
        size = "3 mm"   %s
        land = "2 mm"
        [sprue]
        diameter = "8 mm"
        length = "12 mm"
        [shot]
        temperature = "165 degC"
        [numerics]
        level = "quick"
        """
            .formatted(COMMENT));
    return file;
  }
}

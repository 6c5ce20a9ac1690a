// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.shape.Solids;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A case for pictures: a body with a fin that stands up from the parting face and is blind at its
 * top, so that air stays there, in a mould with corners milled off.
 */
final class BlindFin {
  private static final String TEXT =
      """
      name = "blind fin"

      [part]
      mesh = "blind-fin.stl"
      unit = "mm"

      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "4 mm"
      land = "3 mm"

      [sprue]
      diameter = "8 mm"
      length = "20 mm"

      [block]
      mesh = ["lower-half.stl", "upper-half.stl"]
      unit = "mm"

      [shot]
      temperature = "165 degC"

      [fill]

      [numerics]
      level = "quick"
      """;

  private BlindFin() {}

  /** Writes part, halves and case into a folder; the case. */
  static Path in(Path folder) throws IOException {
    write(part(), folder.resolve("blind-fin.stl"));
    write(half(-1, 18), folder.resolve("lower-half.stl"));
    write(half(1, 24), folder.resolve("upper-half.stl"));
    return Files.writeString(folder.resolve("blind-fin.toml"), TEXT);
  }

  private static TriangleMesh part() {
    double[] x = {0, 6e-3, 22e-3, 42e-3, 60e-3, 64e-3};
    double[] wide = {2.5e-3, 4.5e-3, 7e-3, 6e-3, 3e-3, 1.2e-3};
    double[] high = {2.5e-3, 4e-3, 5e-3, 4.5e-3, 2.5e-3, 1.2e-3};
    Vec3 low = new Vec3(20e-3, -1.5e-3, 0);
    return Solids.elliptic(x, wide, high, 48).plus(Solids.box(low, new Vec3(36e-3, 1.5e-3, 15e-3)));
  }

  /**
   * @param up 1 above the parting face, -1 below it
   * @param mm high
   */
  private static TriangleMesh half(int up, double mm) {
    List<double[]> outline =
        List.of(
            new double[] {-20e-3, 0},
            new double[] {20e-3, 0},
            new double[] {20e-3, (mm - 9) * 1e-3},
            new double[] {11e-3, mm * 1e-3},
            new double[] {-11e-3, mm * 1e-3},
            new double[] {-20e-3, (mm - 9) * 1e-3});
    Vec3 open = new Vec3(-23e-3, 0, 0); // flush with the sprue's open end
    return Solids.prism(outline, open, new Vec3(76e-3, 0, 0), new Vec3(0, 0, up));
  }

  private static void write(TriangleMesh mesh, Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      MeshFiles.writeStl(mesh, out, LengthUnit.MM);
    }
  }
}

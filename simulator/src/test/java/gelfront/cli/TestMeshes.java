// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

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

/** Meshes whose measures are known by hand. */
final class TestMeshes {
  private TestMeshes() {}

  /** A bar of 20 x 10 x 6 mm from the origin along x, y and z from -5, -3 to 5, 3 mm. */
  static Path write(Path file) throws IOException {
    List<double[]> outline =
        List.of(
            new double[] {-3e-3, -5e-3},
            new double[] {3e-3, -5e-3},
            new double[] {3e-3, 5e-3},
            new double[] {-3e-3, 5e-3});
    try (OutputStream out = Files.newOutputStream(file)) {
      MeshFiles.writeStl(
          Solids.prism(outline, Vec3.ZERO, new Vec3(20e-3, 0, 0), new Vec3(0, 0, 1)),
          out,
          LengthUnit.MM);
    }
    return file;
  }

  /** Two cylinders of 10 mm across: along x from 0 to 20 mm, and from 15 to 35 mm. */
  static Path writeOverlapping(Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      MeshFiles.writeStl(
          Solids.cylinder(Vec3.ZERO, new Vec3(20e-3, 0, 0), 5e-3, 5e-3, 180)
              .plus(Solids.cylinder(new Vec3(15e-3, 0, 0), new Vec3(35e-3, 0, 0), 5e-3, 5e-3, 180)),
          out,
          LengthUnit.MM);
    }
    return file;
  }

  /**
   * Two halves of a mould, 40 mm each way: boxes round a room of 12 x 12 x 12 mm in the middle with
   * a shaft of 5 x 5 x 14 mm to +x.
   */
  static void writeHalves(Path lowFile, Path highFile) throws IOException {
    // floor, roof and three sides; the fourth, at +x, leaves the shaft open
    TriangleMesh low =
        box(-20, -20, -20, 20, 20, -6)
            .plus(box(-20, -20, -6, -6, 20, 6))
            .plus(box(-6, -20, -6, 20, -6, 6));
    TriangleMesh high =
        box(-20, -20, 6, 20, 20, 20)
            .plus(box(-6, 6, -6, 20, 20, 6))
            .plus(box(6, -6, -6, 20, -2.5, 6))
            .plus(box(6, 2.5, -6, 20, 6, 6))
            .plus(box(6, -2.5, -6, 20, 2.5, -2.5))
            .plus(box(6, -2.5, 2.5, 20, 2.5, 6));
    write(lowFile, low);
    write(highFile, high);
  }

  /** Between two corners, mm. */
  static TriangleMesh box(double x, double y, double z, double toX, double toY, double toZ) {
    return Solids.box(
        new Vec3(x * 1e-3, y * 1e-3, z * 1e-3), new Vec3(toX * 1e-3, toY * 1e-3, toZ * 1e-3));
  }

  static void write(Path file, TriangleMesh mesh) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      MeshFiles.writeStl(mesh, out, LengthUnit.MM);
    }
  }
}

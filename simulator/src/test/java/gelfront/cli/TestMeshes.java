package gelfront.cli;

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
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.mesh.example.Examples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** A shipped example: a case file and its mesh. */
final class ExampleCase {
  private final String name;
  private final String mesh;

  /** Its mesh has the same name. */
  ExampleCase(String name) {
    this(name, name);
  }

  /**
   * @param mesh name of the mesh's file
   */
  ExampleCase(String name, String mesh) {
    this.name = name;
    this.mesh = mesh;
  }

  /**
   * Copies case and mesh; what is there already and the same is left alone.
   *
   * @return the case file
   * @throws OutputFailure if a file of that name is there and differs: somebody has changed it
   */
  Path copyTo(Path folder) throws IOException {
    List<String> files = List.of(mesh + ".stl", name + ".toml");
    for (String file : files) {
      refuseChanged(folder.resolve(file), Examples.shipped(file));
    }
    Files.createDirectories(folder);
    for (String file : files) {
      Path to = folder.resolve(file);
      if (!Files.exists(to)) {
        Files.write(to, Examples.shipped(file));
      }
    }
    return folder.resolve(name + ".toml");
  }

  private static void refuseChanged(Path file, byte[] shipped) throws IOException {
    if (Files.exists(file) && !Arrays.equals(Files.readAllBytes(file), shipped)) {
      throw new OutputFailure(
          file
              + ": differs from the shipped example and is not overwritten; run check on it, or give"
              + " the demo another folder with -o");
    }
  }
}

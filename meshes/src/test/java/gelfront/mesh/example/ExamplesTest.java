// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.example;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.check.PreparedMesh;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExamplesTest {
  /** Run with -Dexamples.write=true after a change to the generator, look, and commit. */
  @Test
  void storedFilesAreWhatTheCodeMakes(@TempDir Path folder) throws IOException {
    Examples.write(folder);
    if (Boolean.getBoolean("examples.write")) {
      Examples.write(Path.of("src/main/resources/gelfront/examples"));
    }

    for (String name : Examples.all().keySet()) {
      try (InputStream stored =
          Examples.class.getResourceAsStream("/gelfront/examples/" + name + ".stl")) {
        byte[] made = Files.readAllBytes(folder.resolve(name + ".stl"));
        assertArrayEquals(stored.readAllBytes(), made, name);
      }
    }
  }

  @Test
  void everyExampleIsClosedAndFacesOutwards() {
    Examples.all()
        .forEach(
            (name, mesh) -> {
              PreparedMesh p = MeshRepair.prepare(mesh, MeshRepair.WELD);

              assertTrue(p.repairs().isEmpty(), name + p.repairs());
              assertTrue(p.mesh().volume() > 0, name);
            });
  }

  @Test
  void finsOverlapTheirBody() {
    assertEquals(
        2,
        MeshRepair.prepare(Examples.all().get("finned-body"), MeshRepair.WELD)
            .report()
            .overlaps()
            .size());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Five million triangles are read, checked and repaired by a process of 2 GiB, from every format;
 * seconds and peaks go to {@code target/large-meshes.md}. Only with {@code -Dslow=true}.
 */
@EnabledIfSystemProperty(named = "slow", matches = "true")
class LargeMeshesTest {
  /** Round either way; two triangles for each of their squares. */
  private static final int SEGMENTS = 1582;

  @TempDir private Path folder;

  @Test
  void fiveMillionTrianglesInTwoGibibytes() throws IOException, InterruptedException {
    StringBuilder table =
        new StringBuilder("| file | MiB | s | peak of 2048 MiB |\n|---|---|---|---|\n");
    for (String name : List.of("binary.stl", "text.stl", "text.obj", "text.ply", "packed.3mf")) {
      Path file = folder.resolve(name);
      run("-Xmx1g", "write", file);
      run("-Xmx2g", "read", file);
      String[] told = Files.readString(Path.of(file + ".told")).split(" ", -1);

      assertEquals(2 * SEGMENTS * SEGMENTS, Integer.parseInt(told[0]), name);
      assertTrue(Double.parseDouble(told[1]) < 2e-5, name + ": volume off by " + told[1]);
      long mib = Files.size(file) >> 20;
      table.append("| " + name + " | " + mib + " | " + told[2] + " | " + told[3] + " |\n");
      Files.delete(file);
    }
    Files.writeString(Path.of("target", "large-meshes.md"), table);
  }

  private static void run(String heap, String what, Path file)
      throws IOException, InterruptedException {
    Process p =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                heap,
                "-cp",
                System.getProperty("java.class.path"),
                LargeMeshTrial.class.getName(),
                what,
                file.toString(),
                String.valueOf(SEGMENTS))
            .redirectErrorStream(true)
            .redirectOutput(Path.of(file + ".log").toFile())
            .start();
    assertEquals(0, p.waitFor(), Files.readString(Path.of(file + ".log")));
  }
}

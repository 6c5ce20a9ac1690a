// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who may know whom in the window; read from the sources' imports. */
class ViewerHouseTest {
  private static final Path SOURCES = Path.of("src/main/java/gelfront/viewer");

  /** Package, and what its sources may not name. */
  private static final Map<String, List<String>> FORBIDDEN =
      Map.of(
          "model",
              List.of(
                  "com.jme3",
                  "javax.swing",
                  "java.awt",
                  "viewer.work",
                  "viewer.scene",
                  "viewer.desk",
                  "viewer.store"),
          "store", List.of("com.jme3", "javax.swing", "viewer.work", "viewer.scene", "viewer.desk"),
          "work", List.of("com.jme3", "javax.swing", "java.awt", "viewer.scene", "viewer.desk"),
          "scene", List.of("javax.swing", "viewer.work", "viewer.desk", "viewer.store"),
          "desk", List.of("com.jme3"));

  @Test
  void packagesKnowOnlyWhatLiesBelowThem() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<String, List<String>> e : FORBIDDEN.entrySet()) {
      try (Stream<Path> files = Files.list(root().resolve(e.getKey()))) {
        for (Path f : files.toList()) {
          String text = Files.readString(f);
          e.getValue().stream().filter(text::contains).forEach(w -> wrong.add(f + ": " + w));
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** Maven runs tests in the module's folder; others may run them above it. */
  private static Path root() {
    return Files.isDirectory(SOURCES) ? SOURCES : Path.of("viewer").resolve(SOURCES);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class FreshProcessTest {
  @Test
  void tellsWhenTheFirstLineCameAndWhenItEnded() throws IOException {
    FreshProcess.Took took = FreshProcess.median(1, run -> List.of("keys"));

    assertTrue(took.first() > 0.05, () -> "no Java starts in " + took.first() + " s");
    assertTrue(took.end() >= took.first());
  }

  @Test
  void whatDoesNotEndWellIsNoTime() {
    List<String> wrong = List.of("check", "no-such-case.toml");

    IOException e = assertThrows(IOException.class, () -> FreshProcess.median(1, run -> wrong));

    String want = "check in a process of its own ended with " + ExitCode.INPUT;
    assertEquals(want, e.getMessage());
  }

  @Test
  void aScratchFolderGoesWithAllItHolds() throws IOException {
    Path folder;
    try (Scratch scratch = Scratch.make()) {
      folder = scratch.folder();
      Files.writeString(Files.createDirectories(folder.resolve("a/b")).resolve("c"), "d");
    }

    assertTrue(Files.notExists(folder));
  }
}

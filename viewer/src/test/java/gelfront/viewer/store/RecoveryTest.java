// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoveryTest {
  @TempDir Path folder;

  private final Recovery.Edits edits =
      new Recovery.Edits(
          "size = \"3 mm\" # ø\n", Path.of("/parts"), Optional.of(Path.of("/parts/a.toml")));

  @Test
  void editsOfALivingWindowAreItsOwn() {
    Recovery r = new Recovery(folder);
    r.keep(edits);

    assertTrue(r.lost().isEmpty());
    r.clear();
    assertEquals(0, folder.toFile().list().length);
  }

  @Test
  void editsOfADeadWindowAreHandedOutOnce() throws Exception {
    new Recovery(folder).keep(edits);
    Process dead = new ProcessBuilder("true").start();
    dead.waitFor();
    Path own = folder.resolve("edits-" + ProcessHandle.current().pid() + ".properties");
    Files.move(own, folder.resolve("edits-" + dead.pid() + ".properties"));

    Recovery next = new Recovery(folder);

    assertEquals(Optional.of(edits), next.lost());
    assertTrue(next.lost().isEmpty());
  }

  @Test
  void aDamagedSlotIsThrownAway() throws IOException {
    Files.writeString(folder.resolve("edits-x.properties"), "text=\\u00");

    assertTrue(new Recovery(folder).lost().isEmpty());
    assertEquals(0, folder.toFile().list().length);
  }
}

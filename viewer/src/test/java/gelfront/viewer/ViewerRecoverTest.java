// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.viewer.store.Remembered;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A window that is killed while it works loses nothing. */
@Timeout(240)
class ViewerRecoverTest {
  @TempDir Path folder;

  @BeforeAll
  static void needsADisplay() {
    Screen.needed();
  }

  private static boolean edits(Path home) {
    try (var list = Files.newDirectoryStream(home, "edits-*.properties")) {
      return list.iterator().hasNext();
    } catch (IOException e) {
      return false;
    }
  }

  @Test
  void aGateThatWasMovedIsThereAgainAfterAKill() throws Exception {
    Path home = folder.resolve("home");
    System.setProperty("gelfront.home", home.toString());
    Remembered.in(home).bounds(new Rectangle(0, 0, 1200, 800));
    Process killed = ViewerAppTest.start(Cases.barCase(folder).toString());
    try {
      Robot robot = new Robot();
      long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(120);
      // Its window is another process's: clicks on the middle of the picture until one counts.
      while (!edits(home)) {
        assertTrue(killed.isAlive() && System.nanoTime() < end, "no edit is kept");
        robot.mouseMove(700, 460);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.delay(700);
      }
    } finally {
      killed.destroyForcibly();
      assertTrue(killed.waitFor(30, TimeUnit.SECONDS));
    }

    try (Screen screen = new Screen()) {
      screen.until(() -> screen.shows("gate.size"), "the case is open again");
      screen.until(() -> screen.label("said").startsWith("Your last changes"), "and it says so");
      assertTrue(screen.enabled("do save"), "it is still to be saved");
      screen.press("do save");
      screen.until(() -> !screen.enabled("do save"), "saved into its own file");
      assertEquals(0, screen.closed());
    }
    String text = Files.readString(folder.resolve("mine.toml"));
    assertTrue(text.contains(Cases.COMMENT) && !text.contains("direction = [-1, 0, 0]"), text);
    assertTrue(!edits(home), "nothing is left to recover");
  }
}

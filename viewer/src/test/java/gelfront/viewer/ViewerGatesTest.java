// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.setup.CaseFile;
import gelfront.setup.FeedSystem;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A second gate in the real window: put, sized, dragged, taken away. */
@Timeout(300)
class ViewerGatesTest {
  @TempDir Path folder;

  @BeforeAll
  static void needsADisplay() {
    Screen.needed();
  }

  @Test
  void aSecondGateIsPutSizedDraggedAndTakenAway() throws Exception {
    System.setProperty("gelfront.home", folder.resolve("home").toString());
    Path file = Cases.barCase(folder);
    String before = Files.readString(file);
    try (Screen screen = new Screen(file.toString())) {
      screen.until(() -> Screen.feed(screen.picture()) > 0.01, "the sprue is drawn");
      screen.until(() -> screen.enabled("do check"), "the case is open");
      screen.still();

      screen.press("add gate");
      screen.press(screen.named("picture"), 0.62, 0.55);
      screen.until(() -> screen.shows("another_gate.1.size"), "it has lines in the form");
      screen.press(screen.named("another_gate.1.size"), 0.5, 0.5);
      screen.key(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
      screen.type("4\n");
      screen.until(() -> screen.label("another_gate.1.size").equals("4"), "typed");
      FeedSystem.Gate put = saved(screen, file).get(0).gate();
      assertEquals(4e-3, put.section().width(), 1e-9);

      screen.still();
      screen.drag(0.62, 0.55, 0.56, 0.55);
      screen.until(() -> screen.enabled("do save"), "it was dragged");
      FeedSystem.Gate there = saved(screen, file).get(0).gate();
      assertTrue(there.at().distance(put.at()) > 1e-3, put.at() + " to " + there.at());
      assertEquals(put.section(), there.section());

      screen.press("remove gate 2");
      screen.until(() -> !screen.shows("another_gate.1.size"), "it is gone");
      assertEquals(List.of(), saved(screen, file));
      assertEquals(0, screen.closed());
      assertEquals("", screen.said());
    }
    assertEquals(before, Files.readString(file));
  }

  private static List<FeedSystem.Branch> saved(Screen screen, Path file)
      throws InterruptedException {
    screen.press("do save");
    screen.until(() -> !screen.enabled("do save"), "saved");
    return ((FeedSystem.Declared) CaseFile.read(file).setup().feed()).others();
  }
}

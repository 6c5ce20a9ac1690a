// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Dimension;
import gelfront.setup.CaseFile;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A design in the real window: gate, form, verdict, check, save. */
@Timeout(300)
class ViewerWorkTest {
  @TempDir Path folder;

  @BeforeAll
  static void needsADisplay() {
    Screen.needed();
  }

  @Test
  void theGateIsPlacedSizedCheckedAndSaved() throws Exception {
    System.setProperty("gelfront.home", folder.resolve("home").toString());
    Path file = Cases.barCase(folder);
    try (Screen screen = new Screen(file.toString())) {
      screen.until(() -> Screen.feed(screen.picture()) > 0.01, "the sprue is drawn");
      screen.until(() -> screen.enabled("do check"), "the case is open");

      // A click on the long side puts the gate there, by the case's own text.
      BufferedImage before = screen.still();
      screen.press(screen.named("picture"), 0.62, 0.55);
      screen.until(() -> screen.enabled("do undo"), "the gate has moved");
      screen.until(() -> Screen.differs(before, screen.picture()), "and is drawn there");
      screen.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
      screen.until(() -> !screen.enabled("do undo"), "it is back");
      screen.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
      screen.until(() -> screen.enabled("do undo"), "and there again");

      Component size = screen.named("gate.size");
      screen.press(size, 0.5, 0.5);
      screen.key(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
      screen.type("4.5\n");
      screen.until(() -> screen.label("gate.size").equals("4.5"), "typed");

      screen.press("do check");
      screen.until(() -> screen.shows("verdict card"), "the result is there");
      screen.until(() -> screen.selected("mode OPEN"), "and is shown");

      screen.press("do save");
      screen.until(() -> !screen.enabled("do save"), "saved");
      assertEquals(0, screen.closed());
      assertEquals("", screen.said());
    }
    String text = Files.readString(file);
    assertTrue(text.contains("\"4.5 mm\"   " + Cases.COMMENT), text);
    assertEquals(
        4.5e-3, CaseFile.read(file).stated("gate.size", Dimension.LENGTH).orElseThrow(), 1e-9);
    assertTrue(!text.contains("direction = [-1, 0, 0]"), "the gate was put elsewhere");
  }
}

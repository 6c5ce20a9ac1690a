// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.result.ResultFolder;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** All views of a stored result in the real window. One window a process, as in life. */
@Timeout(240)
class ViewerViewsTest {
  @TempDir static Path folder;

  @BeforeAll
  static void needsADisplay() throws IOException {
    Screen.needed();
    System.setProperty("gelfront.home", folder.resolve("home").toString());
    ResultFolder.write(folder.resolve("ball"), StoredBall.run(), List.of());
  }

  @Test
  void everyViewShowsSomethingOfItsOwnAndAPlaceIsRead() throws Exception {
    try (Screen screen = new Screen(folder.resolve("ball").toString())) {
      screen.until(() -> coloured(screen.picture()), "the cut is seen");
      BufferedImage last = screen.still();
      for (String mode : List.of("CELLS", "SKIN", "POCKETS", "DENTS", "OPEN")) {
        screen.press("mode " + mode);
        BufferedImage before = last;
        screen.until(() -> Screen.differs(before, screen.picture()), mode);
        last = screen.still();
      }
      screen.press(screen.named("picture"), 0.5, 0.5);
      screen.until(() -> screen.label("read").contains("sets at 9"), "the middle is read");
      assertTrue(screen.label("read").contains("cut off at 9"), screen.label("read"));

      screen.press("open");
      BufferedImage cut = last;
      screen.until(() -> Screen.differs(cut, screen.picture()), "the cut is closed");
      screen.press("pocket 1");
      screen.until(() -> screen.selected("mode POCKETS"), "the pocket is shown");
    }
  }

  /** Whether the light end of the ramp is seen in the middle: that sets last. */
  private static boolean coloured(BufferedImage i) {
    int rgb = i.getRGB(i.getWidth() / 2 + 3, i.getHeight() / 2 + 4);
    return (rgb >> 16 & 255) > 230 && (rgb >> 8 & 255) > 200;
  }
}

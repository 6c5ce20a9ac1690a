// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Two designs side by side in the real window, looked at alike. */
@Timeout(300)
class ViewerCompareTest {
  @TempDir Path folder;

  @BeforeAll
  static void needsADisplay() {
    Screen.needed();
  }

  @Test
  void aKeptResultStandsBesideTheNextOneAndTurnsWithIt() throws Exception {
    System.setProperty("gelfront.home", folder.resolve("home").toString());
    try (Screen screen = new Screen(Cases.barCase(folder).toString())) {
      screen.until(() -> screen.enabled("do check"), "the case is open");
      screen.press("do check");
      screen.until(() -> screen.enabled("do compare"), "the first result");
      screen.press("do compare");
      screen.key(KeyEvent.VK_DOWN);
      screen.key(KeyEvent.VK_ENTER);
      screen.until(() -> inBoth(screen.picture()), "the same twice");

      BufferedImage before = screen.still();
      screen.drag(0.2, 0.2, 0.3, 0.3);
      screen.until(
          () -> {
            BufferedImage now = screen.picture();
            return Screen.differs(half(before, 0), half(now, 0))
                && Screen.differs(half(before, 1), half(now, 1));
          },
          "both turn");
      assertTrue(inBoth(screen.still()), "and both are seen");
      assertEquals(0, screen.closed());
      assertEquals("", screen.said());
    }
  }

  private static BufferedImage half(BufferedImage i, int which) {
    int w = i.getWidth() / 2;
    return i.getSubimage(which * w, 0, w, i.getHeight());
  }

  /** Whether dark or warm colours of the ramp are seen in the left and in the right half. */
  private static boolean inBoth(BufferedImage i) {
    return ramp(half(i, 0)) > 0.01 && ramp(half(i, 1)) > 0.01;
  }

  private static double ramp(BufferedImage i) {
    int n = 0;
    for (int rgb : i.getRGB(0, 0, i.getWidth(), i.getHeight(), null, 0, i.getWidth())) {
      int red = rgb >> 16 & 255;
      int blue = rgb & 255;
      n += red - blue > 25 || (red < 70 && blue - red > 12) ? 1 : 0;
    }
    return (double) n / (i.getWidth() * i.getHeight());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.report.ColourRamp;
import gelfront.result.ResultFolder;
import gelfront.viewer.model.Colours;
import gelfront.viewer.model.LateSlider;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import javax.swing.JSlider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A stored result in the real window, driven by mouse and keys. */
@Timeout(240)
class ViewerWindowTest {
  private static final LateSlider STEPS = LateSlider.of(StoredBall.run().fields());

  /** Of 256 levels: what rounding and filtering may do to an exact colour. */
  private static final int NEAR = 3;

  @TempDir static Path folder;

  @BeforeAll
  static void needsADisplay() throws IOException {
    Screen.needed();
    System.setProperty("gelfront.home", folder.resolve("home").toString());
    ResultFolder.write(folder.resolve("ball"), StoredBall.run(), List.of());
  }

  @Test
  void theFreezingIsPlayedOnTheCutAndLateCellsStandAlone() throws Exception {
    try (Screen screen = new Screen(folder.resolve("ball").toString())) {
      JSlider late = (JSlider) screen.named("late");
      // Cut through the middle: its colour is that of the last time.
      screen.until(() -> near(middle(screen.picture()), ramp(98), 8), "the cut is seen");
      assertEquals(LateSlider.STEPS, late.getValue(), "all of it has set");

      screen.press(late, 0.5, 0.5);
      double now = STEPS.from(Screen.on(late::getValue));
      assertTrue(now > 35 && now < 60, now + " s");
      screen.until(
          () -> share(screen.picture(), Colours.LIQUID) > 0.01, "the middle is still liquid");
      double rim = time(edge(screen.still()));
      assertTrue(rim > 15 && rim < now, "and the rim has set: " + rim);
      assertEquals(0, share(screen.still(), Colours.SHUT), 1e-4, "nothing is cut off yet");

      screen.press(late, 0.85, 0.5);
      screen.until(() -> share(screen.picture(), Colours.SHUT) == 0, "set times are cut-off times");

      BufferedImage open = screen.still();
      screen.press("mode CELLS");
      screen.until(() -> Screen.differs(open, screen.picture()), "the cells are drawn");
      screen.until(() -> Screen.on(late::getValue) == STEPS.stepAt(StoredBall.CUT_OFF), "late");
      double alone = cells(screen.still());
      screen.press(late, 0.02, 0.5);
      screen.until(() -> cells(screen.picture()) > 2 * alone, "early cells are shown again");

      BufferedImage before = screen.still();
      screen.drag(0.3, 0.3, 0.4, 0.35);
      screen.until(() -> Screen.differs(before, screen.picture()), "dragging turns the part");

      assertEquals(0, screen.closed());
      assertEquals("", screen.said());
    }
  }

  @Test
  void aScreenshotIsWrittenAndTheProgramEndsByItself() throws Exception {
    Path png = folder.resolve("ball.png");

    Process p =
        ViewerAppTest.start(folder.resolve("ball").toString(), "--screenshot", png.toString());

    try {
      assertTrue(p.waitFor(60, TimeUnit.SECONDS), "the program ends");
      assertEquals(0, p.exitValue(), () -> "" + p.errorReader().lines().toList());
    } finally {
      p.destroyForcibly();
    }
    BufferedImage all = ImageIO.read(png.toFile());
    int w = all.getWidth();
    int h = all.getHeight();
    // Well inside the picture: the legend has the cut's colours, too.
    BufferedImage inner = all.getSubimage(w * 3 / 10, h / 5, w / 2, h / 2);
    assertTrue(share(inner, ramp(60)) > 1e-4 && cells(inner) > 0.05, "share " + cells(inner));
  }

  /** 0xRRGGBB that the legend gives a time. */
  private static int ramp(double seconds) {
    return ColourRamp.STANDARD.at(seconds / STEPS.latest());
  }

  /** s that the legend gives the nearest colour. */
  private static double time(int rgb) {
    int best = 0;
    for (int step = 1; step < ColourRamp.STANDARD.size(); step++) {
      best = distance(rgb, step) < distance(rgb, best) ? step : best;
    }
    return STEPS.latest() * best / (ColourRamp.STANDARD.size() - 1);
  }

  private static int distance(int rgb, int step) {
    int other = ColourRamp.STANDARD.rgb(step);
    int sum = 0;
    for (int shift = 0; shift < 24; shift += 8) {
      int d = (rgb >> shift & 255) - (other >> shift & 255);
      sum += d * d;
    }
    return sum;
  }

  private static boolean near(int rgb, int other, int within) {
    for (int shift = 0; shift < 24; shift += 8) {
      if (Math.abs((rgb >> shift & 255) - (other >> shift & 255)) > within) {
        return false;
      }
    }
    return true;
  }

  /** Below the stem of the pocket's number, which begins at the middle. */
  private static int middle(BufferedImage i) {
    return i.getRGB(i.getWidth() / 2 + 3, i.getHeight() / 2 + 4);
  }

  /** Near the ball's rim on the cut: it fills most of the picture's height. */
  private static int edge(BufferedImage i) {
    return i.getRGB(i.getWidth() / 2 + 3, i.getHeight() / 2 + (int) (0.20 * i.getHeight()));
  }

  private static double share(BufferedImage i, int colour) {
    int n = 0;
    for (int rgb : i.getRGB(0, 0, i.getWidth(), i.getHeight(), null, 0, i.getWidth())) {
      n += near(rgb, colour, NEAR) ? 1 : 0;
    }
    return (double) n / (i.getWidth() * i.getHeight());
  }

  /** Share of pixels darker or warmer than background and outline ever are. */
  private static double cells(BufferedImage i) {
    int n = 0;
    for (int rgb : i.getRGB(0, 0, i.getWidth(), i.getHeight(), null, 0, i.getWidth())) {
      int red = rgb >> 16 & 255;
      int blue = rgb & 255;
      n += red - blue > 25 || (red < 70 && blue - red > 12) ? 1 : 0;
    }
    return (double) n / (i.getWidth() * i.getHeight());
  }
}

package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import gelfront.report.ColourRamp;
import gelfront.result.ResultFolder;
import gelfront.viewer.model.LateSlider;
import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JSlider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The real window on a real screen, driven by mouse. In CI a missing display is a failure. */
@Timeout(120)
class ViewerWindowTest {
  /** s after which a wait gives up; it goes on as soon as what it waits for is there. */
  private static final int PATIENCE = 30;

  private static final LateSlider STEPS = LateSlider.of(StoredBall.run().fields());

  @TempDir static Path folder;

  private Robot robot;
  private Component picture;

  @BeforeAll
  static void needsADisplay() throws IOException {
    String display = System.getenv("DISPLAY");
    if ("true".equals(System.getenv("CI"))) {
      assertNotNull(display, "CI must give the window tests a display");
    }
    assumeTrue(display != null, "no display");
    ResultFolder.write(folder.resolve("ball"), StoredBall.run(), List.of());
  }

  @Test
  void theSliderLeavesTheLateOnesAndTheUserCanLookRound() throws Exception {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream err = new PrintStream(said, true, StandardCharsets.UTF_8);
    ExecutorService app = Executors.newSingleThreadExecutor();
    Future<Integer> code = app.submit(() -> ViewerApp.run(err, folder.resolve("ball").toString()));
    Frame desk = desk(code, said);
    picture = named(desk, "picture");
    robot = new Robot();

    JSlider late = (JSlider) named(desk, "late");
    until(() -> voxelShare(screen()) > 0.002, "the pocket is seen");
    assertEquals(STEPS.stepAt(StoredBall.CUT_OFF), late.getValue());
    double pocket = voxelShare(still());
    assertLikeLegend(STEPS.latest(), middle(still()));

    press(late, 0.01, 0.3);
    until(() -> voxelShare(screen()) > 3 * pocket, "the slider shows early cells");
    assertTrue(voxelShare(still()) > 0.02, "all of the ball");
    double all = voxelShare(still());

    press(late, 0.6, 0.3);
    until(() -> voxelShare(screen()) < 0.5 * all, "the slider hides early cells");
    BufferedImage open = still();
    assertTrue(voxelShare(open) > 0.005, "late cells stand alone");
    assertTrue(late.getValue() > LateSlider.STEPS / 2);
    assertLikeLegend(STEPS.latest(), middle(open));

    press(named(desk, "open"), 0.5, 0.5);
    double skin = STEPS.from(late.getValue());
    until(() -> !like(STEPS.latest(), middle(screen())), "the cut is closed");
    assertTrue(ramp(middle(still())) < STEPS.latest(), "the outside of the late cells is seen");
    assertTrue(ramp(middle(still())) >= skin - 6, "and they are late");

    BufferedImage before = still();
    drag();
    until(() -> differs(before, screen()), "dragging turns the part");

    press(named(desk, "pockets"), 0.5, 20);
    until(() -> late.getValue() == STEPS.stepAt(StoredBall.CUT_OFF), "the pocket");

    desk.dispatchEvent(new WindowEvent(desk, WindowEvent.WINDOW_CLOSING));
    assertEquals(0, code.get(PATIENCE, TimeUnit.SECONDS));
    assertEquals("", said.toString(StandardCharsets.UTF_8));
    app.shutdown();
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
    // Well inside the picture: the legend has the voxels' colours too.
    BufferedImage inner = all.getSubimage(w * 3 / 10, h / 5, w / 2, h / 2);
    assertTrue(voxelShare(inner) > 0.002, "share " + voxelShare(inner));
  }

  private static Frame desk(Future<Integer> code, ByteArrayOutputStream said)
      throws InterruptedException {
    until(() -> code.isDone() || open().findAny().isPresent(), "the window opens");
    assertTrue(!code.isDone(), () -> said.toString(StandardCharsets.UTF_8));
    return open().findAny().orElseThrow();
  }

  private static Stream<Frame> open() {
    return Stream.of(Frame.getFrames()).filter(f -> "desk".equals(f.getName()) && f.isShowing());
  }

  private static Component named(Container in, String name) {
    for (Component c : in.getComponents()) {
      Component found =
          name.equals(c.getName()) ? c : c instanceof Container inner ? named(inner, name) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  private static void until(BooleanSupplier seen, String what) throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
    while (!seen.getAsBoolean()) {
      assertTrue(System.nanoTime() < end, "waited in vain: " + what);
      Thread.sleep(20);
    }
  }

  private BufferedImage screen() {
    return robot.createScreenCapture(
        new Rectangle(picture.getLocationOnScreen(), picture.getSize()));
  }

  /** The screen once it no longer changes. */
  private BufferedImage still() throws InterruptedException {
    BufferedImage[] last = {screen()};
    until(
        () -> {
          robot.waitForIdle();
          robot.delay(100);
          BufferedImage before = last[0];
          last[0] = screen();
          return !differs(before, last[0]);
        },
        "the picture comes to rest");
    return last[0];
  }

  /** Share of pixels darker or warmer than background and ghost ever are. */
  private static double voxelShare(BufferedImage i) {
    int voxels = 0;
    for (int y = 0; y < i.getHeight(); y++) {
      for (int x = 0; x < i.getWidth(); x++) {
        int rgb = i.getRGB(x, y);
        int red = rgb >> 16 & 255;
        int blue = rgb & 255;
        boolean dark = red < 85 && blue > 45 && blue - red > 12;
        voxels += dark || red - blue > 25 ? 1 : 0;
      }
    }
    return (double) voxels / (i.getWidth() * i.getHeight());
  }

  private static boolean differs(BufferedImage a, BufferedImage b) {
    int[] p = a.getRGB(0, 0, a.getWidth(), a.getHeight(), null, 0, a.getWidth());
    int[] q = b.getRGB(0, 0, b.getWidth(), b.getHeight(), null, 0, b.getWidth());
    return !Arrays.equals(p, q);
  }

  /** Below the stem of the pocket's number, which begins at the middle. */
  private static int middle(BufferedImage i) {
    return i.getRGB(i.getWidth() / 2 + 3, i.getHeight() / 2 + 3);
  }

  private static void assertLikeLegend(double seconds, int rgb) {
    assertTrue(like(seconds, rgb), () -> String.format("%06x is not that of %s s", rgb, seconds));
  }

  /** Within one cell's time of the legend, seen through the ghost's 3 %. */
  private static boolean like(double seconds, int rgb) {
    return Math.abs(ramp(rgb) - seconds) <= 10;
  }

  /** s that the legend gives the nearest colour. */
  private static double ramp(int rgb) {
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

  /**
   * @param down share of the height, or pixels if above 1
   */
  private void press(Component c, double across, double down) {
    Point at = c.getLocationOnScreen();
    double dy = down > 1 ? down : down * c.getHeight();
    robot.mouseMove(at.x + (int) (across * c.getWidth()), at.y + (int) dy);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    robot.waitForIdle();
  }

  private void drag() {
    Point at = picture.getLocationOnScreen();
    robot.mouseMove(at.x + 200, at.y + 200);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseMove(at.x + 260, at.y + 240);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    robot.waitForIdle();
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.AWTException;
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
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.SwingUtilities;

/** The real window on a real screen, with somebody at mouse and keys. */
final class Screen implements AutoCloseable {
  /** s after which a wait gives up; it goes on as soon as what it waits for is there. */
  private static final int PATIENCE = 60;

  private final ByteArrayOutputStream said = new ByteArrayOutputStream();
  private final ExecutorService app = Executors.newSingleThreadExecutor();
  private final Robot robot;
  private final Future<Integer> code;
  private Frame desk;

  /** Opens the window with that command line. */
  Screen(String... args) throws AWTException, InterruptedException {
    robot = new Robot();
    PrintStream err = new PrintStream(said, true, StandardCharsets.UTF_8);
    code = app.submit(() -> ViewerApp.run(err, args));
    until(() -> code.isDone() || open().findAny().isPresent(), "the window opens");
    assertTrue(!code.isDone(), () -> said.toString(StandardCharsets.UTF_8));
    desk = open().findAny().orElseThrow();
    until(() -> shows("picture"), "the picture is on the screen");
  }

  /** In CI a missing display is a failure. */
  static void needed() {
    String display = System.getenv("DISPLAY");
    if ("true".equals(System.getenv("CI"))) {
      assertNotNull(display, "CI must give the window tests a display");
    }
    assumeTrue(display != null, "no display");
  }

  private static Stream<Frame> open() {
    return Stream.of(Frame.getFrames()).filter(f -> "desk".equals(f.getName()) && f.isShowing());
  }

  String said() {
    return said.toString(StandardCharsets.UTF_8);
  }

  Frame frame() {
    return desk;
  }

  /** Closes the window by its own button and gives the exit code. */
  int closed() throws Exception {
    desk.dispatchEvent(new WindowEvent(desk, WindowEvent.WINDOW_CLOSING));
    return code.get(PATIENCE, TimeUnit.SECONDS);
  }

  @Override
  public void close() {
    try {
      if (!code.isDone()) {
        closed();
      }
    } catch (Exception e) {
      throw new AssertionError("the window does not close", e);
    } finally {
      app.shutdown();
    }
  }

  Component named(String name) {
    Component c = on(() -> find(desk, name));
    assertNotNull(c, "nothing is called " + name);
    return c;
  }

  boolean shows(String name) {
    return on(
        () -> {
          Component c = find(desk, name);
          return c != null && c.isShowing();
        });
  }

  private static Component find(Container in, String name) {
    for (Component c : in.getComponents()) {
      Component found =
          name.equals(c.getName()) ? c : c instanceof Container inner ? find(inner, name) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** On the window's thread. */
  static <T> T on(Supplier<T> work) {
    CompletableFuture<T> result = new CompletableFuture<>();
    SwingUtilities.invokeLater(() -> result.complete(work.get()));
    return result.join();
  }

  void until(BooleanSupplier seen, String what) throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
    while (!seen.getAsBoolean()) {
      assertTrue(System.nanoTime() < end, () -> "waited in vain: " + what + "; said " + said());
      Thread.sleep(20);
    }
  }

  boolean enabled(String name) {
    return on(() -> named(find(desk, name)).isEnabled());
  }

  private static Component named(Component c) {
    assertNotNull(c);
    return c;
  }

  /** Whether a button that stays pressed is. */
  boolean selected(String name) {
    return on(() -> ((AbstractButton) named(find(desk, name))).isSelected());
  }

  String label(String name) {
    Component c = named(name);
    return on(
        () ->
            c instanceof AbstractButton b
                ? b.getText()
                : c instanceof javax.swing.JLabel l
                    ? l.getText()
                    : ((javax.swing.text.JTextComponent) c).getText());
  }

  BufferedImage picture() {
    Component c = named("picture");
    assertTrue(!code.isDone(), () -> "it ended: " + said());
    return robot.createScreenCapture(new Rectangle(c.getLocationOnScreen(), c.getSize()));
  }

  /** The picture once it no longer changes. */
  BufferedImage still() throws InterruptedException {
    BufferedImage[] last = {picture()};
    until(
        () -> {
          robot.waitForIdle();
          robot.delay(150);
          BufferedImage before = last[0];
          last[0] = picture();
          return !differs(before, last[0]);
        },
        "the picture comes to rest");
    return last[0];
  }

  static boolean differs(BufferedImage a, BufferedImage b) {
    int[] p = a.getRGB(0, 0, a.getWidth(), a.getHeight(), null, 0, a.getWidth());
    int[] q = b.getRGB(0, 0, b.getWidth(), b.getHeight(), null, 0, b.getWidth());
    return !Arrays.equals(p, q);
  }

  /** Presses the middle of a component. */
  void press(String name) {
    press(named(name), 0.5, 0.5);
  }

  /**
   * @param across share of the width
   * @param down share of the height
   */
  void press(Component c, double across, double down) {
    moveTo(c, across, down);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    robot.waitForIdle();
  }

  private void moveTo(Component c, double across, double down) {
    Point at = c.getLocationOnScreen();
    robot.mouseMove(
        at.x + (int) Math.round(across * c.getWidth()),
        at.y + (int) Math.round(down * c.getHeight()));
  }

  /** Drags on the picture between two places, shares of its size. */
  void drag(double x0, double y0, double x1, double y1) {
    Component c = named("picture");
    moveTo(c, x0, y0);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    for (int i = 1; i <= 5; i++) {
      moveTo(c, x0 + (x1 - x0) * i / 5, y0 + (y1 - y0) * i / 5);
      robot.delay(20);
    }
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    robot.waitForIdle();
  }

  /** Types into the component that has the focus. */
  void type(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      key(c == '.' ? java.awt.event.KeyEvent.VK_PERIOD : Character.toUpperCase(c));
    }
  }

  void key(int code) {
    robot.keyPress(code);
    robot.keyRelease(code);
    robot.waitForIdle();
  }

  void key(int modifier, int code) {
    robot.keyPress(modifier);
    key(code);
    robot.keyRelease(modifier);
    robot.waitForIdle();
  }

  /** Share of pixels as warm as gate and sprue, seen through the block. */
  static double feed(BufferedImage i) {
    int n = 0;
    for (int rgb : i.getRGB(0, 0, i.getWidth(), i.getHeight(), null, 0, i.getWidth())) {
      n += (rgb >> 16 & 255) > 1.5 * (rgb & 255) ? 1 : 0;
    }
    return (double) n / (i.getWidth() * i.getHeight());
  }
}

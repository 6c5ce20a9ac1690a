// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.desk;

import gelfront.viewer.model.Orbit;
import gelfront.viewer.model.Plane;
import gelfront.viewer.model.Ray;
import java.awt.Canvas;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import javax.swing.SwingUtilities;

/** Mouse and keys on the picture turn, slide and zoom it, and move the cut. */
final class PictureControls extends MouseAdapter {
  private static final double RAD_PER_PIXEL = 0.008;
  private static final double RAD_PER_KEY = Math.toRadians(6);
  private static final double ZOOM = 1.12;

  /** Pixels that a click may move. */
  private static final int STILL = 4;

  /** What happens at the part itself. */
  interface Hand {
    /** Whether it takes hold of something there. */
    boolean takes(Ray ray, double mmPerPixel);

    void drags(Ray ray);

    void lets();

    void clicks(Ray ray);

    /** What can be done there is asked with the other button. */
    void asks(Ray ray, double mmPerPixel, MouseEvent e);
  }

  private final Gaze gaze;
  private final Hand hand;
  private int x;
  private int y;
  private int startX;
  private int startY;
  private boolean held;

  PictureControls(Gaze gaze, Hand hand) {
    this.gaze = gaze;
    this.hand = hand;
  }

  void listenTo(Canvas canvas) {
    canvas.addMouseListener(this);
    canvas.addMouseMotionListener(this);
    canvas.addMouseWheelListener(this);
    canvas.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            gaze.resized();
          }
        });
    canvas.addKeyListener(
        new KeyAdapter() {
          @Override
          public void keyPressed(KeyEvent e) {
            key(e);
          }
        });
  }

  /** Two designs stand side by side: each has half of the width. */
  private Ray ray(MouseEvent e) {
    double height = Math.max(1, e.getComponent().getHeight());
    double width = Math.max(1, gaze.aspect() * height);
    double across = e.getX() % width / width;
    return gaze.now().orbit().through(across, e.getY() / height, gaze.fieldOfView(), gaze.aspect());
  }

  @Override
  public void mousePressed(MouseEvent e) {
    e.getComponent().requestFocusInWindow();
    x = e.getX();
    y = e.getY();
    startX = x;
    startY = y;
    held = plain(e) && hand.takes(ray(e), mmPerPixel(e));
  }

  private double mmPerPixel(MouseEvent e) {
    double height = Math.max(1, e.getComponent().getHeight());
    return 2 * gaze.now().orbit().distance() * Math.tan(gaze.fieldOfView() / 2) / height;
  }

  private static boolean plain(MouseEvent e) {
    int keys = InputEvent.SHIFT_DOWN_MASK | InputEvent.ALT_DOWN_MASK;
    return SwingUtilities.isLeftMouseButton(e) && (e.getModifiersEx() & keys) == 0;
  }

  @Override
  public void mouseDragged(MouseEvent e) {
    int dx = e.getX() - x;
    int dy = e.getY() - y;
    x = e.getX();
    y = e.getY();
    if (held) {
      hand.drags(ray(e));
    } else if (e.isShiftDown()) {
      moveCut(dx, dy, mmPerPixel(e));
    } else if (e.isAltDown()) {
      tiltCut(dx, dy);
    } else if (SwingUtilities.isLeftMouseButton(e)) {
      look(gaze.now().orbit().turned(-dx * RAD_PER_PIXEL, dy * RAD_PER_PIXEL));
    } else {
      double h = Math.max(1, e.getComponent().getHeight());
      look(gaze.now().orbit().slid(-dx / h, dy / h, gaze.fieldOfView()));
    }
  }

  private void look(Orbit o) {
    gaze.change(l -> l.with(o));
  }

  /** As far along its normal as the mouse goes along the normal's picture. */
  private void moveCut(int dx, int dy, double mmPerPixel) {
    Orbit o = gaze.now().orbit();
    gaze.change(
        l ->
            l.cut(
                l.plane()
                    .map(
                        p -> {
                          double toRight = p.normal().dot(o.right());
                          double toTop = p.normal().dot(o.up());
                          double steep = Math.hypot(toRight, toTop);
                          double along = steep < 0.2 ? -dy : (dx * toRight - dy * toTop) / steep;
                          return p.moved(along * mmPerPixel);
                        })));
  }

  private void tiltCut(int dx, int dy) {
    Orbit o = gaze.now().orbit();
    gaze.change(
        l ->
            l.cut(
                l.plane()
                    .map(
                        p -> {
                          Plane t = p.turned(o.up(), dx * RAD_PER_PIXEL);
                          return t.turned(o.right(), dy * RAD_PER_PIXEL);
                        })));
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    boolean still = Math.abs(e.getX() - startX) + Math.abs(e.getY() - startY) <= STILL;
    if (held && !still) {
      hand.lets();
    } else if (still && plain(e)) {
      hand.clicks(ray(e));
    } else if (still && SwingUtilities.isRightMouseButton(e)) {
      hand.asks(ray(e), mmPerPixel(e), e);
    }
    held = false;
  }

  @Override
  public void mouseClicked(MouseEvent e) {
    if (e.getClickCount() == 2) {
      gaze.goHome();
    }
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent e) {
    look(gaze.now().orbit().zoomed(Math.pow(ZOOM, e.getPreciseWheelRotation())));
  }

  private void key(KeyEvent e) {
    Orbit o = gaze.now().orbit();
    switch (e.getKeyCode()) {
      case KeyEvent.VK_LEFT -> look(o.turned(-RAD_PER_KEY, 0));
      case KeyEvent.VK_RIGHT -> look(o.turned(RAD_PER_KEY, 0));
      case KeyEvent.VK_UP -> look(o.turned(0, RAD_PER_KEY));
      case KeyEvent.VK_DOWN -> look(o.turned(0, -RAD_PER_KEY));
      case KeyEvent.VK_PLUS, KeyEvent.VK_ADD, KeyEvent.VK_EQUALS -> look(o.zoomed(1 / ZOOM));
      case KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT -> look(o.zoomed(ZOOM));
      case KeyEvent.VK_HOME -> gaze.goHome();
      default -> {}
    }
  }
}

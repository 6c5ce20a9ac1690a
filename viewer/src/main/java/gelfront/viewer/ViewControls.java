package gelfront.viewer;

import gelfront.viewer.model.Orbit;
import java.awt.Canvas;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** Mouse and keys on the picture turn and zoom it; page up and down move the slider. */
final class ViewControls extends MouseAdapter implements KeyListener {
  static final String HELP =
      "Drag or arrow keys turn, wheel or + and - zoom, Home goes back,"
          + " Page up and Page down move the slider.";

  private static final double RAD_PER_PIXEL = 0.008;
  private static final double RAD_PER_KEY = Math.toRadians(6);
  private static final double ZOOM = 1.12;

  private final Supplier<Orbit> home;
  private final Consumer<Orbit> look;
  private final IntConsumer slide;
  private Orbit orbit;
  private int x;
  private int y;

  /**
   * @param home the view to begin with and to come back to, for the picture's present size
   * @param look is told every new view
   * @param slide is told steps to move the slider by
   */
  ViewControls(Supplier<Orbit> home, Consumer<Orbit> look, IntConsumer slide) {
    this.home = home;
    this.look = look;
    this.slide = slide;
  }

  void listenTo(Canvas canvas) {
    canvas.addMouseListener(this);
    canvas.addMouseMotionListener(this);
    canvas.addMouseWheelListener(this);
    canvas.addKeyListener(this);
  }

  void goHome() {
    go(home.get());
  }

  private void go(Orbit to) {
    orbit = to;
    look.accept(to);
  }

  @Override
  public void mousePressed(MouseEvent e) {
    e.getComponent().requestFocus();
    x = e.getX();
    y = e.getY();
  }

  @Override
  public void mouseDragged(MouseEvent e) {
    go(orbit.turned((x - e.getX()) * RAD_PER_PIXEL, (e.getY() - y) * RAD_PER_PIXEL));
    x = e.getX();
    y = e.getY();
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent e) {
    go(orbit.zoomed(Math.pow(ZOOM, e.getPreciseWheelRotation())));
  }

  @Override
  public void keyPressed(KeyEvent e) {
    switch (e.getKeyCode()) {
      case KeyEvent.VK_LEFT -> go(orbit.turned(-RAD_PER_KEY, 0));
      case KeyEvent.VK_RIGHT -> go(orbit.turned(RAD_PER_KEY, 0));
      case KeyEvent.VK_UP -> go(orbit.turned(0, RAD_PER_KEY));
      case KeyEvent.VK_DOWN -> go(orbit.turned(0, -RAD_PER_KEY));
      case KeyEvent.VK_PLUS, KeyEvent.VK_ADD, KeyEvent.VK_EQUALS -> go(orbit.zoomed(1 / ZOOM));
      case KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT -> go(orbit.zoomed(ZOOM));
      case KeyEvent.VK_HOME -> goHome();
      case KeyEvent.VK_PAGE_UP -> slide.accept(8);
      case KeyEvent.VK_PAGE_DOWN -> slide.accept(-8);
      default -> {}
    }
  }

  @Override
  public void keyTyped(KeyEvent e) {}

  @Override
  public void keyReleased(KeyEvent e) {}
}

package gelfront.viewer.scene;

import com.jme3.system.lwjgl.LwjglCanvas;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * The engine's canvas, drawn when something has changed and otherwise twice a second, for screens
 * that forget a window while another covers it.
 */
final class OnChangeCanvas extends LwjglCanvas {
  private static final int REDRAW_MS = 500;

  private final Semaphore changes = new Semaphore(0);

  OnChangeCanvas() {
    getCanvas()
        .addComponentListener(
            new ComponentAdapter() {
              @Override
              public void componentResized(ComponentEvent e) {
                changed();
              }
            });
  }

  /** Asks for a new picture; from any thread. */
  void changed() {
    changes.release();
  }

  /** Waits here, because the engine asks before it takes the lock that the desktop shares. */
  @Override
  public boolean checkVisibilityState() {
    try {
      if (changes.tryAcquire(REDRAW_MS, TimeUnit.MILLISECONDS)) {
        changes.drainPermits();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return super.checkVisibilityState();
  }
}

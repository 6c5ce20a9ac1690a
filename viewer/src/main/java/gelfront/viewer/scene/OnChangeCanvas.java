// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.system.lwjgl.LwjglCanvas;
import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** The engine's canvas, drawn when something has changed or the screen has lost it, else not. */
final class OnChangeCanvas extends LwjglCanvas {
  private static final int LOOK_MS = 250;

  private final Semaphore changes = new Semaphore(0);

  /** Engine's thread. */
  private boolean stale = true;

  OnChangeCanvas() {
    getCanvas()
        .addComponentListener(
            new ComponentAdapter() {
              @Override
              public void componentResized(ComponentEvent e) {
                changed();
              }

              @Override
              public void componentShown(ComponentEvent e) {
                changed();
              }
            });
    // Without paint events a picture that another window has covered stays lost. They clear the
    // canvas first, so the new picture is asked for behind them.
    getCanvas().setIgnoreRepaint(false);
    Toolkit.getDefaultToolkit()
        .addAWTEventListener(
            e -> {
              if (e.getSource() == getCanvas()) {
                EventQueue.invokeLater(this::changed);
              }
            },
            AWTEvent.PAINT_EVENT_MASK);
  }

  /** Asks for a new picture; from any thread. */
  void changed() {
    changes.release();
  }

  /** Waits here, because the engine asks before it takes the lock that the desktop shares. */
  @Override
  public boolean checkVisibilityState() {
    try {
      if (changes.tryAcquire(LOOK_MS, TimeUnit.MILLISECONDS)) {
        changes.drainPermits();
        stale = true;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    boolean draws = stale && super.checkVisibilityState();
    stale &= !draws;
    return draws;
  }
}

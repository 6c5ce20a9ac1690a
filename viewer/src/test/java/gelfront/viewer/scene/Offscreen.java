// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import gelfront.viewer.model.Look;
import gelfront.viewer.model.ResultShown;
import java.awt.image.BufferedImage;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The engine's picture without a window: one a process. In CI a missing display is a failure. */
final class Offscreen {
  static final int WIDTH = 640;
  static final int HEIGHT = 480;
  static final double ASPECT = (double) WIDTH / HEIGHT;
  private static final int PATIENCE = 60;
  private static final Logger ENGINE_LOG = Logger.getLogger("com.jme3");

  private final ExecutorService worker = Executors.newSingleThreadExecutor();
  private final CompletableFuture<Throwable> failed = new CompletableFuture<>();
  private final Stage stage;

  Offscreen() {
    boolean display = System.getenv("DISPLAY") != null;
    if ("true".equals(System.getenv("CI"))) {
      assertNotNull(System.getenv("DISPLAY"), "CI must give the scene tests a display");
    }
    assumeTrue(display, "no display");
    ENGINE_LOG.setLevel(Level.SEVERE);
    stage = Stage.offscreen(worker, failed::complete, WIDTH, HEIGHT);
  }

  Stage stage() {
    return stage;
  }

  Shot of(ResultShown shown, Look look) throws Exception {
    stage.look(look);
    stage.show(shown);
    return picture(look);
  }

  /** As it is, looked at otherwise. */
  Shot look(Look look) throws Exception {
    stage.look(look);
    return picture(look);
  }

  private Shot picture(Look look) throws Exception {
    CompletableFuture<BufferedImage> picture = stage.picture();
    Object first =
        CompletableFuture.anyOf(picture, failed).get(PATIENCE, TimeUnit.SECONDS); // told at once
    if (first instanceof Throwable t) {
      throw new AssertionError("the engine failed", t);
    }
    return new Shot(picture.join(), look);
  }

  void end() throws Exception {
    stage.stop(false);
    stage.destroyed().get(PATIENCE, TimeUnit.SECONDS);
    worker.shutdownNow();
  }
}

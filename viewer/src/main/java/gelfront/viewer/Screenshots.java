// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import gelfront.viewer.desk.Desk;
import gelfront.viewer.desk.PngFile;
import gelfront.viewer.model.Mode;
import gelfront.viewer.scene.Stage;
import gelfront.viewer.work.Session;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import javax.swing.SwingUtilities;

/** Pictures of the window without anybody at it. */
final class Screenshots {
  /** ms between looks at whether what was asked for is there. */
  private static final int LOOK_MS = 20;

  private final Desk desk;
  private final Stage stage;
  private final Session session;
  private final CompletableFuture<Boolean> over;

  /**
   * @param over ends where the window has failed
   */
  Screenshots(Desk desk, Stage stage, Session session, CompletableFuture<Boolean> over) {
    this.desk = desk;
    this.stage = stage;
    this.session = session;
    this.over = over;
  }

  /** One picture, once all is there that is being calculated. */
  void save(Path file, Optional<Mode> mode)
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    settle();
    if (mode.isPresent()) {
      SwingUtilities.invokeAndWait(() -> desk.choose(mode.get()));
    }
    write(take(), file);
  }

  /** Whether the window has failed: nothing more will come. */
  boolean failed() {
    return over.isDone();
  }

  /** Waits until nothing is calculated. */
  void settle() throws InterruptedException, InvocationTargetException {
    while (busy() && !over.isDone()) {
      Thread.sleep(LOOK_MS);
    }
  }

  private boolean busy() throws InterruptedException, InvocationTargetException {
    CompletableFuture<Boolean> busy = new CompletableFuture<>();
    SwingUtilities.invokeAndWait(() -> busy.complete(session.busy()));
    return busy.join();
  }

  BufferedImage take() throws InterruptedException, ExecutionException, InvocationTargetException {
    SwingUtilities.invokeAndWait(() -> {}); // what was shown last has reached the stage
    CompletableFuture<BufferedImage> canvas = stage.picture();
    CompletableFuture.anyOf(canvas, over).get();
    CompletableFuture<BufferedImage> all = new CompletableFuture<>();
    SwingUtilities.invokeAndWait(() -> all.complete(desk.painted(canvas.join())));
    return all.join();
  }

  static void write(BufferedImage picture, Path file) throws ViewerException {
    try {
      PngFile.write(picture, file);
    } catch (IOException e) {
      String why = e instanceof NoSuchFileException ? "there is no such folder" : e.getMessage();
      throw new ViewerException(ViewerException.OUTPUT, file + ": can't be written: " + why, e);
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import gelfront.answer.RunStore;
import gelfront.viewer.desk.Desk;
import gelfront.viewer.desk.Theme;
import gelfront.viewer.scene.Stage;
import gelfront.viewer.store.Remembered;
import gelfront.viewer.work.Backgrounds;
import gelfront.viewer.work.Opened;
import gelfront.viewer.work.Opener;
import gelfront.viewer.work.Session;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Starts the window and ends with an exit code. */
public final class ViewerApp {
  private static final Logger ENGINE_LOG = Logger.getLogger("com.jme3");

  /** Ends with {@code true} when the user closes the window, or with what went wrong. */
  private final CompletableFuture<Boolean> over = new CompletableFuture<>();

  private ViewerApp() {}

  /** Opens what the command line names. */
  public static void main(String[] args) {
    System.exit(run(System.err, args));
  }

  /**
   * Returns when the window has been closed.
   *
   * @param err for one line if something is wrong
   * @return the exit code: 0 closed by the user, else as {@link ViewerException} lists them
   */
  static int run(PrintStream err, String... args) {
    ENGINE_LOG.setLevel(Level.SEVERE);
    try {
      Arguments a = Arguments.of(args);
      if (a.timing()) {
        time(err);
      } else {
        new ViewerApp().show(a);
      }
      return 0;
    } catch (ViewerException e) {
      err.println("gelfront: " + e.getMessage());
      if (System.getenv("GELFRONT_DEBUG") != null) {
        e.printStackTrace(err);
      }
      return e.exitCode();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ViewerException.FAULT;
    }
  }

  private static void time(PrintStream out) throws ViewerException, InterruptedException {
    requireDisplay();
    try {
      new WindowTiming(out).run();
    } catch (ExecutionException | InvocationTargetException e) {
      throw fault(e.getCause() == null ? e : e.getCause());
    }
  }

  /** What the command line names must be there and sound; what is opened later may be not. */
  private static Optional<Opened> opened(Arguments a) throws ViewerException {
    if (a.file().isEmpty()) {
      return Optional.empty();
    }
    Opened o = Opener.open(a.file().get());
    if (o instanceof Opened.Nothing n) {
      throw new ViewerException(ViewerException.INPUT, n.line(), null);
    }
    return Optional.of(o);
  }

  /** A gallery has all that it writes in its own folder; the user's settings and edits stay. */
  private static RunStore outcomes(Arguments a) throws ViewerException {
    if (a.gallery().isEmpty()) {
      return RunStore.inMemory();
    }
    System.setProperty("gelfront.home", a.gallery().get().resolve("home").toString());
    return Gallery.outcomes(a.gallery().get());
  }

  /** Edits of a window that ended unexpectedly; where nobody looks they wait. */
  private static void recover(Desk desk, boolean attended) {
    if (attended) {
      desk.doings().recover();
    }
  }

  private void show(Arguments a) throws ViewerException, InterruptedException {
    Optional<Opened> first = opened(a);
    requireDisplay();
    int threads = Runtime.getRuntime().availableProcessors();
    try (Backgrounds background = new Backgrounds(threads, outcomes(a))) {
      Stage stage = new Stage(background.drawing(), over::completeExceptionally);
      Session session = new Session(background, SwingUtilities::invokeLater);
      Desk desk = open(session, stage, background);
      boolean attended = a.screenshot().isEmpty() && a.gallery().isEmpty();
      Thread.setDefaultUncaughtExceptionHandler((t, e) -> unforeseen(e, session, attended));
      stage.startCanvas();
      SwingUtilities.invokeLater(
          () -> first.ifPresentOrElse(session::take, () -> recover(desk, attended)));
      try {
        if (a.screenshot().isPresent()) {
          new Screenshots(desk, stage, session, over).save(a.screenshot().get(), a.mode());
        } else if (a.gallery().isPresent()) {
          new Gallery(desk, new Screenshots(desk, stage, session, over), session)
              .fill(a.gallery().get());
        } else {
          over.get();
        }
      } finally {
        Thread.setDefaultUncaughtExceptionHandler(null);
        close(desk, stage);
      }
    } catch (ExecutionException | InvocationTargetException e) {
      throw fault(e.getCause() == null ? e : e.getCause());
    }
  }

  /** Said in the strip where somebody reads it; else the end. */
  private void unforeseen(Throwable e, Session session, boolean attended) {
    ENGINE_LOG.log(Level.FINE, "not foreseen", e);
    if (attended) {
      String words = "A fault in the program (" + e + "): save your case, then start again.";
      SwingUtilities.invokeLater(() -> session.complain(words));
    } else {
      over.completeExceptionally(e);
    }
  }

  private static void requireDisplay() throws ViewerException {
    try {
      if (!GraphicsEnvironment.isHeadless()) {
        GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
        return;
      }
    } catch (HeadlessException | AWTError e) {
      throw noDisplay(e);
    }
    throw noDisplay(null);
  }

  private static ViewerException noDisplay(@Nullable Throwable cause) {
    return new ViewerException(
        ViewerException.FAULT,
        "the window needs a display and found none; report.html in the result shows the same part",
        cause);
  }

  private Desk open(Session session, Stage stage, Backgrounds background)
      throws InterruptedException, InvocationTargetException {
    CompletableFuture<Desk> made = new CompletableFuture<>();
    SwingUtilities.invokeAndWait(
        () -> {
          Remembered remembered = Remembered.in(Remembered.folder());
          Theme.set(remembered.dark());
          Desk desk = new Desk(session, stage, background, remembered);
          desk.frame()
              .addWindowListener(
                  new WindowAdapter() {
                    @Override
                    public void windowClosing(WindowEvent e) {
                      remembered.bounds(desk.frame().getBounds());
                      desk.doings().closes();
                      over.complete(true);
                    }
                  });
          desk.frame().setVisible(true);
          made.complete(desk);
        });
    return made.join();
  }

  /**
   * Hide, then stop the engine off Swing's thread. The window is not disposed of: the X error that
   * its late messages then meet, while the process ends, can lock up with the GL library's own end.
   */
  private static void close(Desk desk, Stage stage)
      throws InterruptedException, InvocationTargetException {
    SwingUtilities.invokeAndWait(() -> desk.frame().setVisible(false));
    stage.stop(false);
    try {
      stage.destroyed().get(10, TimeUnit.SECONDS);
    } catch (ExecutionException | TimeoutException e) {
      Logger.getLogger(ViewerApp.class.getName()).log(Level.FINE, "the engine did not end", e);
    }
  }

  private static ViewerException fault(Throwable t) {
    return new ViewerException(
        ViewerException.FAULT,
        "the window failed: "
            + String.valueOf(t.getMessage()).lines().findFirst().orElse("")
            + " ("
            + t.getClass().getSimpleName()
            + ")",
        t);
  }
}

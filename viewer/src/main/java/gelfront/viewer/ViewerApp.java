package gelfront.viewer;

import com.formdev.flatlaf.FlatLightLaf;
import gelfront.result.ResultException;
import gelfront.result.ResultFolder;
import gelfront.result.StoredRun;
import gelfront.viewer.model.Extent;
import gelfront.viewer.scene.PartView;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.imageio.ImageIO;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;

/**
 * A small window on a stored run: every cell coloured by its set time, and a slider that hides what
 * has set before, so that late pockets stand alone.
 */
public final class ViewerApp {
  private static final Logger ENGINE_LOG = Logger.getLogger("com.jme3");

  /** Ends with {@code true} when the user closes the window, or with what went wrong. */
  private final CompletableFuture<Boolean> over = new CompletableFuture<>();

  private ViewerApp() {}

  /** Opens the result folder that the command line names. */
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
      StoredRun run = read(a.result());
      new ViewerApp().show(run, extent(run, a), a);
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

  private static StoredRun read(Path folder) throws ViewerException {
    try {
      return ResultFolder.read(folder);
    } catch (ResultException e) {
      throw new ViewerException(ViewerException.INPUT, e.getMessage(), e);
    } catch (IOException e) {
      throw new ViewerException(
          ViewerException.INPUT, folder + ": can't be read: " + e.getMessage(), e);
    }
  }

  private static Extent extent(StoredRun run, Arguments a) throws ViewerException {
    try {
      return Extent.of(run.fields());
    } catch (IllegalArgumentException e) {
      throw new ViewerException(ViewerException.INPUT, a.result() + ": " + e.getMessage(), e);
    }
  }

  private void show(StoredRun run, Extent extent, Arguments a)
      throws ViewerException, InterruptedException {
    requireDisplay();
    ExecutorService worker = Executors.newSingleThreadExecutor();
    try {
      PartView view = new PartView(run, extent, worker, over::completeExceptionally);
      Desk desk = open(run, extent, view);
      view.startCanvas();
      try {
        if (a.screenshot().isPresent()) {
          save(desk, view, a.screenshot().get());
        } else {
          over.get();
        }
      } finally {
        close(desk, view);
      }
    } catch (ExecutionException | InvocationTargetException e) {
      throw fault(e.getCause());
    } finally {
      worker.shutdownNow();
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

  private static ViewerException noDisplay(Throwable cause) {
    return new ViewerException(
        ViewerException.FAULT,
        "the window needs a display and found none; report.html in the result shows the same part",
        cause);
  }

  private Desk open(StoredRun run, Extent extent, PartView view)
      throws InterruptedException, InvocationTargetException {
    CompletableFuture<Desk> made = new CompletableFuture<>();
    SwingUtilities.invokeAndWait(
        () -> {
          FlatLightLaf.setup();
          // Light menus and tips would lie behind the picture.
          JPopupMenu.setDefaultLightWeightPopupEnabled(false);
          ToolTipManager.sharedInstance().setLightWeightPopupEnabled(false);
          Desk desk = new Desk(run, extent, view);
          desk.frame()
              .addWindowListener(
                  new WindowAdapter() {
                    @Override
                    public void windowClosing(WindowEvent e) {
                      over.complete(true);
                    }
                  });
          desk.frame().setVisible(true);
          desk.begin();
          made.complete(desk);
        });
    return made.join();
  }

  private void save(Desk desk, PartView view, Path file)
      throws ViewerException, InterruptedException, ExecutionException, InvocationTargetException {
    CompletableFuture<BufferedImage> canvas = view.picture();
    CompletableFuture.anyOf(canvas, over).get();
    if (!canvas.isDone()) {
      return;
    }
    CompletableFuture<BufferedImage> all = new CompletableFuture<>();
    SwingUtilities.invokeAndWait(() -> all.complete(desk.painted(canvas.join())));
    write(all.join(), file);
  }

  /** Made in memory first: given a file it can't open, ImageIO prints a stack trace. */
  static void write(BufferedImage picture, Path file) throws ViewerException {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    try {
      ImageIO.write(picture, "png", png);
      Files.write(file, png.toByteArray());
    } catch (IOException e) {
      String why = e instanceof NoSuchFileException ? "there is no such folder" : e.getMessage();
      throw new ViewerException(ViewerException.OUTPUT, file + ": can't be written: " + why, e);
    }
  }

  /**
   * Hide, then stop the engine off Swing's thread. The window is not disposed of: the X error that
   * its late messages then meet, while the process ends, can lock up with the GL library's own end.
   */
  private static void close(Desk desk, PartView view)
      throws InterruptedException, InvocationTargetException {
    SwingUtilities.invokeAndWait(() -> desk.frame().setVisible(false));
    view.stop(false);
    try {
      view.destroyed().get(10, TimeUnit.SECONDS);
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

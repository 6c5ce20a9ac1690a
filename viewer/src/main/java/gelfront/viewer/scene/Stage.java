// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.app.SimpleApplication;
import com.jme3.app.state.AppState;
import com.jme3.math.ColorRGBA;
import com.jme3.renderer.RenderManager;
import com.jme3.renderer.ViewPort;
import com.jme3.system.AppSettings;
import com.jme3.system.JmeContext;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Orbit;
import gelfront.viewer.model.ResultShown;
import gelfront.viewer.model.SetupShown;
import java.awt.Canvas;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The 3-D picture: one design, or two side by side looked at alike. All public methods may be
 * called on any thread and return at once; the newest wish wins.
 */
public final class Stage extends SimpleApplication {
  /** Bottom to top, rad. */
  public static final double FIELD_OF_VIEW = Math.toRadians(32);

  /** Between the ends of the colour ramp, so that both stand out. */
  private static final ColorRGBA BACKGROUND = new ColorRGBA(0.38f, 0.42f, 0.46f, 1);

  private final Executor worker;
  private final Consumer<Throwable> failed;

  /** Absent: the picture is in no window. */
  private final Optional<OnChangeCanvas> canvas;

  private final AtomicReference<Look> wanted = new AtomicReference<>();
  private final Queue<CompletableFuture<BufferedImage>> pictures = new ConcurrentLinkedQueue<>();
  private final CountDownLatch begun = new CountDownLatch(1);
  private final CompletableFuture<Void> destroyed = new CompletableFuture<>();
  private final AtomicInteger frames = new AtomicInteger();

  /** What is or is about to be on each side. Worker's thread: the engine's may be behind. */
  private final Exhibit[] made = new Exhibit[2];

  private List<Side> sides = List.of();

  /** Null where the driver has none, or it took too long. */
  private @Nullable Smoothing smoothing;

  /**
   * @param worker one thread, on which meshes are made in the order they were asked for
   * @param failed is told once if the picture can't go on
   */
  public Stage(Executor worker, Consumer<Throwable> failed) {
    this(worker, failed, Optional.of(new OnChangeCanvas()));
    OnChangeCanvas shown = canvas.orElseThrow();
    context = shown;
    shown.setSettings(settings);
    shown.setSystemListener(this);
  }

  private Stage(Executor worker, Consumer<Throwable> failed, Optional<OnChangeCanvas> canvas) {
    super(new AppState[0]);
    this.worker = worker;
    this.failed = failed;
    this.canvas = canvas;
    AppSettings s = new AppSettings(true);
    s.setAudioRenderer(null);
    s.setUseInput(false);
    s.setGammaCorrection(false);
    s.setX11PlatformPreferred(true);
    setSettings(s);
    setPauseOnLostFocus(false);
  }

  /**
   * The same picture in no window; the engine needs a display for it all the same. It draws on its
   * own, again and again, until it is stopped.
   *
   * @param width pixels
   * @param height pixels
   */
  static Stage offscreen(Executor worker, Consumer<Throwable> failed, int width, int height) {
    Stage stage = new Stage(worker, failed, Optional.empty());
    stage.settings.setResolution(width, height);
    stage.settings.setFrameRate(20);
    stage.start(JmeContext.Type.OffscreenSurface);
    return stage;
  }

  /** The component to put into a window; call {@link #startCanvas()} once that is visible. */
  public Canvas canvas() {
    return canvas.orElseThrow().getCanvas();
  }

  /** Asks for a new picture. */
  private void changed() {
    canvas.ifPresent(OnChangeCanvas::changed);
  }

  /** Shows a part before it is calculated. */
  public void show(SetupShown shown, int edge) {
    prepare(0, () -> new SetupExhibit(shown, assetManager, edge));
  }

  /** Shows a result, on the left where there are two. */
  public void show(ResultShown shown) {
    prepare(0, () -> new ResultExhibit(shown, assetManager));
  }

  /** Shows a second result beside the first. */
  public void compare(ResultShown shown) {
    prepare(1, () -> new ResultExhibit(shown, assetManager));
  }

  /** One design again. */
  public void compareNothing() {
    behind(
        () -> {
          made[1] = null;
          later(() -> put(1, null));
        });
  }

  private interface Making {
    Exhibit make();
  }

  private void prepare(int side, Making making) {
    behind(
        () -> {
          Exhibit e = making.make();
          made[side] = e;
          Look look = wanted.get();
          if (look != null) {
            e.prepare(look);
          }
          later(() -> put(side, e));
        });
  }

  private void put(int side, @Nullable Exhibit e) {
    sides.get(side).show(e);
    split();
    applyWanted();
  }

  private void split() {
    boolean two = sides.get(1).shows();
    sides.get(0).occupy(0, two ? 0.5f : 1);
    sides.get(1).occupy(0.5f, 1);
    fit();
  }

  /** Looks so from now on. */
  public void look(Look look) {
    Look before = wanted.getAndSet(look);
    if (before != null && before.mode() == look.mode()) {
      later(this::applyWanted);
      return;
    }
    behind(
        () -> {
          Look newest = Objects.requireNonNullElse(wanted.get(), look);
          Stream.of(made).filter(Objects::nonNull).forEach(e -> e.prepare(newest));
          later(this::applyWanted);
        });
  }

  private void applyWanted() {
    Look look = wanted.get();
    if (look == null) {
      return;
    }
    Orbit o = look.orbit();
    sides.forEach(s -> s.apply(look));
    sides.forEach(
        s -> {
          s.camera().setLocation(Meshes.vector(o.eye()));
          s.camera().lookAtDirection(Meshes.vector(o.forward()), Meshes.vector(o.up()));
        });
    fit();
  }

  /** The picture once all that was asked for before is drawn. */
  public CompletableFuture<BufferedImage> picture() {
    CompletableFuture<BufferedImage> picture = new CompletableFuture<>();
    behind(() -> later(() -> pictures.add(picture)));
    return picture;
  }

  /** Number of frames drawn so far. */
  public int frames() {
    return frames.get();
  }

  /** Completed once the engine has let go of the canvas. */
  public CompletableFuture<Void> destroyed() {
    return destroyed;
  }

  /** Ends the picture; {@link #destroyed} tells when. */
  @Override
  public void stop(boolean waitFor) {
    super.stop(waitFor);
    changed();
  }

  /** In the order asked for, once the engine is there. */
  private void behind(Runnable work) {
    try {
      worker.execute(() -> onceBegun(work));
    } catch (RejectedExecutionException e) { // the window is closing: nobody looks any more
      changed();
    }
  }

  private void onceBegun(Runnable work) {
    try {
      begun.await();
      work.run();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (RuntimeException | Error e) {
      failed.accept(e);
    }
  }

  /** The engine would keep what goes wrong in there to itself. */
  private void later(Runnable work) {
    enqueue(
        () -> {
          try {
            work.run();
          } catch (RuntimeException | Error e) {
            failed.accept(e);
          }
        });
    changed();
  }

  @Override
  public void simpleInitApp() {
    float scale = canvas.map(c -> scale(c.getCanvas())).orElse(1f);
    viewPort.setBackgroundColor(BACKGROUND);
    Side first = new Side(viewPort, rootNode, guiNode, new Labels(assetManager, scale));
    Side second =
        Side.beside(renderManager, cam, guiNode, new Labels(assetManager, scale), BACKGROUND);
    second.occupy(0.5f, 1);
    sides = List.of(first, second);
    List<ViewPort> ports = sides.stream().map(Side::port).toList();
    smoothing = Smoothing.of(renderer, ports, cam.getWidth(), cam.getHeight());
    fit();
    begun.countDown();
  }

  private static float scale(Canvas c) {
    return (float) c.getGraphicsConfiguration().getDefaultTransform().getScaleX();
  }

  private void fit() {
    Look look = wanted.get();
    float r = look == null ? 50 : (float) look.orbit().extent().radius();
    sides.forEach(s -> s.fit((float) FIELD_OF_VIEW, r / 50, r * 40));
  }

  @Override
  public void reshape(int w, int h) {
    super.reshape(w, h);
    sides.forEach(s -> s.resize(w, h));
    if (smoothing != null) {
      smoothing.resize(w, h);
    }
    fit();
  }

  @Override
  public void simpleUpdate(float secondsPerFrame) {
    if (smoothing != null && smoothing.gaveUp()) {
      smoothing = null;
    }
    sides.forEach(Side::update);
  }

  @Override
  public void simpleRender(RenderManager manager) {
    frames.incrementAndGet();
    CompletableFuture<BufferedImage> asked = pictures.poll();
    while (asked != null) {
      asked.complete(Pixels.of(renderer, cam.getWidth(), cam.getHeight()));
      asked = pictures.poll();
    }
  }

  /** The engine alone would end the program with exit code 0. */
  @Override
  public void handleError(String message, Throwable t) {
    failed.accept(t == null ? new IllegalStateException(message) : t);
  }

  @Override
  public void destroy() {
    super.destroy();
    destroyed.complete(null);
  }
}

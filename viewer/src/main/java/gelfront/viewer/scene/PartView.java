package gelfront.viewer.scene;

import com.jme3.app.SimpleApplication;
import com.jme3.app.state.AppState;
import com.jme3.material.Material;
import com.jme3.math.ColorRGBA;
import com.jme3.math.Vector3f;
import com.jme3.renderer.RenderManager;
import com.jme3.scene.Geometry;
import com.jme3.scene.Mesh;
import com.jme3.system.AppSettings;
import gelfront.finding.Pocket;
import gelfront.mesh.Vec3;
import gelfront.result.StoredRun;
import gelfront.viewer.model.Cut;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.LateSlider;
import gelfront.viewer.model.Orbit;
import gelfront.viewer.model.VoxelFaces;
import java.awt.Canvas;
import java.awt.image.BufferedImage;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/**
 * The 3-D picture: voxels by set time in a ghosted part, pockets numbered as in the report. All
 * public methods may be called on any thread and return at once; the newest wish wins.
 */
public final class PartView extends SimpleApplication {
  /** Bottom to top, rad. */
  public static final double FIELD_OF_VIEW = Math.toRadians(32);

  /** Between the ends of the colour ramp, so that both stand out. */
  private static final ColorRGBA BACKGROUND = new ColorRGBA(0.38f, 0.42f, 0.46f, 1);

  private record Shown(double from, Cut cut) {}

  private final StoredRun run;
  private final Extent extent;
  private final Executor worker;
  private final Consumer<Throwable> failed;
  private final OnChangeCanvas canvas = new OnChangeCanvas();
  private final AtomicReference<Shown> wantedShown = new AtomicReference<>();
  private final AtomicReference<Orbit> wantedOrbit = new AtomicReference<>();
  private final Queue<CompletableFuture<BufferedImage>> pictures = new ConcurrentLinkedQueue<>();
  private final CompletableFuture<Void> destroyed = new CompletableFuture<>();
  private Geometry voxels;
  private Labels labels;

  /**
   * @param worker one thread, on which meshes are made in the order they were asked for
   * @param failed is told once if the picture can't go on
   */
  public PartView(StoredRun run, Extent extent, Executor worker, Consumer<Throwable> failed) {
    super(new AppState[0]);
    this.run = run;
    this.extent = extent;
    this.worker = worker;
    this.failed = failed;
    AppSettings s = new AppSettings(true);
    s.setAudioRenderer(null);
    s.setUseInput(false);
    s.setGammaCorrection(false);
    s.setX11PlatformPreferred(true);
    setSettings(s);
    setPauseOnLostFocus(false);
    context = canvas;
    canvas.setSettings(s);
    canvas.setSystemListener(this);
  }

  /** The component to put into a window; call {@link #startCanvas()} once that is visible. */
  public Canvas canvas() {
    return canvas.getCanvas();
  }

  /**
   * Shows the cells that set then or later.
   *
   * @param from s
   */
  public void show(double from, Cut cut) {
    wantedShown.set(new Shown(from, cut));
    worker.execute(this::makeWanted);
  }

  private void makeWanted() {
    Shown wanted = wantedShown.getAndSet(null);
    if (wanted == null) {
      return;
    }
    try {
      double latest = LateSlider.of(run.fields()).latest();
      Mesh mesh =
          VoxelGeometry.mesh(VoxelFaces.of(run.fields(), wanted.from(), wanted.cut()), latest);
      later(() -> voxels.setMesh(mesh));
    } catch (RuntimeException | OutOfMemoryError e) {
      failed.accept(e);
    }
  }

  /** Looks from there. */
  public void look(Orbit orbit) {
    wantedOrbit.set(orbit);
    later(this::lookAsWanted);
  }

  /** The picture once all that was asked for before is drawn. */
  public CompletableFuture<BufferedImage> picture() {
    CompletableFuture<BufferedImage> picture = new CompletableFuture<>();
    worker.execute(() -> later(() -> pictures.add(picture)));
    return picture;
  }

  /** Completed once the engine has let go of the canvas. */
  public CompletableFuture<Void> destroyed() {
    return destroyed;
  }

  /** Ends the picture; {@link #destroyed} tells when. */
  @Override
  public void stop(boolean waitFor) {
    super.stop(waitFor);
    canvas.changed();
  }

  private void later(Runnable work) {
    enqueue(work);
    canvas.changed();
  }

  @Override
  public void simpleInitApp() {
    viewPort.setBackgroundColor(BACKGROUND);
    labels = new Labels(guiFont, unshaded(), guiNode);
    voxels = VoxelGeometry.of(assetManager);
    rootNode.attachChild(voxels);
    rootNode.attachChild(GhostGeometry.of(assetManager, run.surface()));
    rootNode.attachChild(new Axes(extent).geometry(assetManager, labels));
    for (Pocket p : run.findings().pockets()) {
      labels.onPlate(Integer.toString(p.number()), p.centre().times(1e3), 20);
    }
    fit();
  }

  private Material unshaded() {
    return new Material(assetManager, "Common/MatDefs/Misc/Unshaded.j3md");
  }

  private void fit() {
    float r = (float) extent.radius();
    float aspect = (float) cam.getWidth() / cam.getHeight();
    cam.setFrustumPerspective((float) Math.toDegrees(FIELD_OF_VIEW), aspect, r / 50, r * 40);
  }

  private void lookAsWanted() {
    Orbit o = wantedOrbit.get();
    cam.setLocation(vector(o.eye()));
    cam.lookAtDirection(vector(o.forward()), vector(o.up()));
  }

  private static Vector3f vector(Vec3 v) {
    return new Vector3f((float) v.x(), (float) v.y(), (float) v.z());
  }

  @Override
  public void reshape(int w, int h) {
    super.reshape(w, h);
    if (voxels != null) {
      fit();
    }
  }

  @Override
  public void simpleUpdate(float secondsPerFrame) {
    labels.place(cam);
  }

  @Override
  public void simpleRender(RenderManager manager) {
    CompletableFuture<BufferedImage> wanted = pictures.poll();
    while (wanted != null) {
      wanted.complete(Pixels.of(renderer, cam.getWidth(), cam.getHeight()));
      wanted = pictures.poll();
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

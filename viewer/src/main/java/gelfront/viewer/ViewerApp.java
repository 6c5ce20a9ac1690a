package gelfront.viewer;

import com.jme3.app.SimpleApplication;
import com.jme3.font.BitmapText;
import com.jme3.input.ChaseCamera;
import com.jme3.input.KeyInput;
import com.jme3.input.controls.ActionListener;
import com.jme3.input.controls.KeyTrigger;
import com.jme3.math.ColorRGBA;
import com.jme3.scene.Geometry;
import com.jme3.scene.Node;
import com.jme3.system.AppSettings;
import com.jme3.system.JmeContext;
import gelfront.finding.Pocket;
import gelfront.result.ResultException;
import gelfront.result.ResultFolder;
import gelfront.result.StoredRun;
import gelfront.viewer.model.LateSlider;
import gelfront.viewer.model.VoxelFaces;
import gelfront.viewer.scene.VoxelGeometry;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * A small window on a stored run: every cell coloured by its set time, and a slider that hides what
 * has set before, so that late pockets stand alone. Drag turns, wheel zooms, left and right arrow
 * move the slider.
 */
public final class ViewerApp extends SimpleApplication {
  private final StoredRun run;
  private final LateSlider slider;
  private final CountDownLatch closed = new CountDownLatch(1);
  private final Node turned = new Node("part");
  private Geometry voxels;
  private BitmapText words;
  private volatile Throwable fault;

  ViewerApp(StoredRun run) {
    this.run = run;
    this.slider = new LateSlider(run.fields(), run.findings().gateSets());
  }

  /** Opens a result folder; exit code 3 and one line where it is none. */
  public static void main(String[] args) throws InterruptedException {
    System.exit(open(args));
  }

  private static int open(String[] args) throws InterruptedException {
    if (args.length != 1) {
      System.err.println("gelfront: view needs one result folder");
      return 2;
    }
    StoredRun run;
    try {
      run = ResultFolder.read(Path.of(args[0]));
    } catch (ResultException e) {
      System.err.println("gelfront: " + e.getMessage());
      return 3;
    } catch (IOException e) {
      System.err.println("gelfront: " + args[0] + ": can't be read: " + e.getMessage());
      return 3;
    }
    ViewerApp app = new ViewerApp(run);
    app.show(JmeContext.Type.Display);
    app.closed.await();
    return app.fault == null ? 0 : 1;
  }

  /** Starts the window, or a hidden one of the same size for tests. */
  void show(JmeContext.Type type) {
    Logger.getLogger("com.jme3").setLevel(Level.SEVERE);
    AppSettings s = new AppSettings(true);
    s.setTitle("gelfront: " + run.name());
    s.setResolution(1200, 760);
    s.setAudioRenderer(null);
    s.setX11PlatformPreferred(true);
    s.setGammaCorrection(false);
    setSettings(s);
    setShowSettings(false);
    setDisplayStatView(false);
    setDisplayFps(false);
    setPauseOnLostFocus(false);
    start(type);
  }

  @Override
  public void simpleInitApp() {
    flyCam.setEnabled(false);
    viewPort.setBackgroundColor(new ColorRGBA(0.36f, 0.39f, 0.42f, 1));
    voxels = VoxelGeometry.of(assetManager);
    turned.attachChild(voxels);
    rootNode.attachChild(turned);
    words = new BitmapText(guiFont);
    words.setSize(guiFont.getCharSet().getRenderedSize() * 1.1f);
    guiNode.attachChild(words);
    chase();
    keys();
    rebuild();
  }

  private void chase() {
    ChaseCamera c = new ChaseCamera(cam, turned, inputManager);
    float longest =
        (float) (1e3 * run.fields().spacing() * Math.max(run.fields().nx(), run.fields().ny()));
    c.setDefaultDistance(1.05f * longest);
    c.setMaxDistance(4 * longest);
    c.setMinDistance(0.2f * longest);
    c.setDefaultHorizontalRotation(1.2f);
    c.setDefaultVerticalRotation(0.5f);
    c.setInvertVerticalAxis(true);
    c.setDragToRotate(true);
    cam.setFrustumPerspective(40, (float) cam.getWidth() / cam.getHeight(), 1, 20 * longest);
  }

  private void keys() {
    inputManager.addMapping("later", new KeyTrigger(KeyInput.KEY_RIGHT));
    inputManager.addMapping("earlier", new KeyTrigger(KeyInput.KEY_LEFT));
    ActionListener step =
        (name, pressed, perFrame) -> {
          if (pressed) {
            move(name.equals("later") ? 1 : -1);
          }
        };
    inputManager.addListener(step, "later", "earlier");
  }

  /** On the engine's thread only. */
  void move(int by) {
    if (slider.move(by)) {
      rebuild();
    }
  }

  private void rebuild() {
    VoxelGeometry.show(voxels, VoxelFaces.of(run.fields(), slider.from()), slider.latest());
    StringBuilder s = new StringBuilder(run.findings().verdict()).append('\n');
    for (Pocket p : run.findings().pockets()) {
      s.append(p.number()).append(": ").append(p.sentence()).append('\n');
    }
    s.append(
        String.format(
            Locale.ROOT,
            "Shown: what sets after %.0f s or later, dark early, light late (up to %.0f s)."
                + " Arrow keys change it, drag turns, wheel zooms.",
            slider.from(),
            slider.latest()));
    words.setText(wrapped(s.toString(), 130));
    words.setLocalTranslation(14, cam.getHeight() - 10f, 0);
  }

  /** Lines of at most {@code width} letters, broken at spaces. */
  static String wrapped(String text, int width) {
    StringBuilder out = new StringBuilder();
    int column = 0;
    for (String word : text.split("(?<=[ \\n])", -1)) {
      if (column + word.length() > width) {
        out.append('\n');
        column = 0;
      }
      out.append(word);
      column = word.endsWith("\n") ? 0 : column + word.length();
    }
    return out.toString();
  }

  @Override
  public void handleError(String message, Throwable t) {
    fault = t;
    if (t != null && System.getenv("GELFRONT_DEBUG") != null) {
      t.printStackTrace();
    }
    System.err.println("gelfront: the window failed: " + message + ": " + t);
    stop();
  }

  @Override
  public void destroy() {
    super.destroy();
    closed.countDown();
  }

  /** What made the window fail, or null. */
  Throwable fault() {
    return fault;
  }

  /** Released once the window has gone. */
  CountDownLatch closed() {
    return closed;
  }
}

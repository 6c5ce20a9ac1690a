package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.jme3.system.JmeContext;
import com.jme3.util.BufferUtils;
import gelfront.finding.Amounts;
import gelfront.finding.Findings;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.result.Fields;
import gelfront.result.Health;
import gelfront.result.Inputs;
import gelfront.result.Provenance;
import gelfront.result.Series;
import gelfront.result.StoredRun;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The window for real, hidden, on a display; in CI a missing display is a failure. */
class ViewerWindowTest {
  private static StoredRun ball() {
    int n = 24;
    int[] cells = new int[n * n * n];
    float[] set = new float[cells.length];
    int count = 0;
    for (int c = 0; c < cells.length; c++) {
      int j = c / n % n;
      int k = c / n / n;
      double r = Math.hypot(Math.hypot(c % n - 11.5, j - 11.5), k - 11.5);
      if (r < 10) {
        cells[count] = c;
        set[count++] = 100 - 10 * (float) r;
      }
    }
    Fields f =
        new Fields(
            Vec3.ZERO,
            1e-3,
            n,
            n,
            n,
            java.util.Arrays.copyOf(cells, count),
            new byte[count],
            java.util.Arrays.copyOf(set, count),
            java.util.Arrays.copyOf(set, count),
            new short[count],
            List.of());
    Findings findings =
        new Findings(
            Severity.CLEAN,
            "No dent.",
            "",
            List.of(),
            List.of(),
            1,
            2,
            3,
            4,
            0.02,
            2e-4,
            new Amounts(1e-6, 1e-6, 0, 1e-3, 1e-3, 0, 1, OptionalDouble.empty()));
    return new StoredRun(
        "ball",
        "",
        new Inputs(List.of(), List.of()),
        findings,
        new Series(new double[] {0}, List.of()),
        new Health(List.of()),
        List.of(),
        new Provenance("test", "", "", 0),
        f,
        Solids.sphere(Vec3.ZERO, 1e-2, 16));
  }

  @Test
  @Timeout(120)
  void showsTheVoxelsAndTheSliderLeavesTheLateOnes() throws Exception {
    boolean display = System.getenv("DISPLAY") != null;
    assumeTrue(display || System.getenv("CI") != null, "needs a display");
    ViewerApp app = new ViewerApp(ball());
    app.show(JmeContext.Type.OffscreenSurface);

    double all = share(app);
    onEngine(
        app,
        () -> {
          app.move(30);
          return 0.0;
        });
    double late = share(app);
    app.stop();

    assertTrue(app.closed().await(30, TimeUnit.SECONDS), "the window closes");
    assertNull(app.fault());
    assertTrue(all > 0.08, "the ball fills part of the window: " + all);
    assertTrue(late > 0.001 && late < 0.5 * all, "late cells stand alone: " + late + " of " + all);
    assertEquals(0, app.closed().getCount());
  }

  /** Share of the pixels that are not background, once anything is seen. */
  private static double share(ViewerApp app)
      throws InterruptedException, ExecutionException, TimeoutException {
    double share = 0;
    for (int tries = 0; tries < 500 && share == 0; tries++) { // until the camera has found the part
      share = onEngine(app, () -> read(app));
    }
    return share;
  }

  private static double onEngine(ViewerApp app, Callable<Double> work)
      throws InterruptedException, ExecutionException, TimeoutException {
    return app.enqueue(work).get(60, TimeUnit.SECONDS);
  }

  private static double read(ViewerApp app) {
    int w = app.getCamera().getWidth();
    int h = app.getCamera().getHeight();
    ByteBuffer pixels = BufferUtils.createByteBuffer(4 * w * h);
    app.getRootNode().updateGeometricState();
    app.getRenderer().setFrameBuffer(null);
    app.getRenderer().setViewPort(0, 0, w, h);
    app.getRenderManager().renderViewPort(app.getViewPort(), 0);
    app.getRenderer().readFrameBuffer(null, pixels);
    int background = pixels.getInt(0);
    int other = 0;
    for (int i = 0; i < w * h; i++) {
      other += pixels.getInt(4 * i) != background ? 1 : 0;
    }
    return (double) other / (w * h);
  }
}

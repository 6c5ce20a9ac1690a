// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import gelfront.base.Quantities;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.result.Fields;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.LateSlider;
import gelfront.viewer.model.Look;
import gelfront.viewer.model.Mode;
import gelfront.viewer.model.Orbit;
import gelfront.viewer.model.Plane;
import gelfront.viewer.model.ResultShown;
import gelfront.viewer.scene.Stage;
import gelfront.viewer.work.Backgrounds;
import gelfront.viewer.work.LiveFreezing;
import java.awt.Dimension;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.reflect.InvocationTargetException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.IntFunction;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/** What the picture takes on this machine: a made-up result of two million cells, 1280 x 800. */
final class WindowTiming {
  /** Half axes of the body, cells. */
  private static final int LONG = 124;

  private static final int SHORT = 62;
  private static final double EDGE = 0.25e-3;
  private static final int FRAMES = 12;

  private final PrintStream out;

  WindowTiming(PrintStream out) {
    this.out = out;
  }

  void run() throws InterruptedException, ExecutionException, InvocationTargetException {
    Fields fields = body();
    CompletableFuture<Throwable> failed = new CompletableFuture<>();
    try (Backgrounds threads = new Backgrounds(1)) {
      Stage stage = new Stage(threads.drawing(), failed::complete);
      SwingUtilities.invokeAndWait(() -> open(stage));
      long since = System.currentTimeMillis() - startOfJava();
      tell("window on the screen %.1f s after the start of Java", since * 1e-3);
      stage.startCanvas();
      CompletableFuture.anyOf(stage.picture(), failed).get();
      measure(stage, fields);
      SwingUtilities.invokeAndWait(
          () -> SwingUtilities.getWindowAncestor(stage.canvas()).setVisible(false));
      stage.stop(false);
      stage.destroyed().get();
    }
  }

  private static long startOfJava() {
    return ManagementFactory.getRuntimeMXBean().getStartTime();
  }

  private static void open(Stage stage) {
    JFrame frame = new JFrame("gelfront timing");
    stage.canvas().setPreferredSize(new Dimension(1280, 800));
    frame.add(stage.canvas());
    frame.pack();
    frame.setVisible(true);
  }

  private void measure(Stage stage, Fields fields) throws InterruptedException, ExecutionException {
    long start = System.nanoTime();
    Extent extent = Extent.of(fields);
    Orbit eye = Orbit.round(extent, Stage.FIELD_OF_VIEW, 1.6);
    Look look = Look.at(eye).with(Mode.OPEN).cut(Optional.of(Plane.lengthwise(extent)));
    stage.look(look);
    stage.show(new ResultShown(LiveFreezing.stored(fields, surface()), 0));
    stage.picture().get();
    tell(
        "first frame of %,d plastisol cells, grid %d x %d x %d: %.2f s",
        fields.cells().length,
        fields.nx(),
        fields.ny(),
        fields.nz(),
        1e-9 * (System.nanoTime() - start));
    tell("processor time a frame, all threads:");
    double latest = LateSlider.of(fields).latest();
    frames(stage, "cut open, turned", i -> look.with(eye.turned(0.05 * i, 0)));
    frames(stage, "cut open, time moved", i -> look.atTime(latest * i / FRAMES));
    frames(stage, "cut open, plane moved", i -> look.cut(look.plane().map(p -> p.moved(0.2 * i))));
    for (Mode m : List.of(Mode.CELLS, Mode.SKIN)) {
      Look other = look.with(m);
      long asked = System.nanoTime();
      stage.look(other);
      stage.picture().get();
      tell("  %s, first time: %.2f s", m.label(), 1e-9 * (System.nanoTime() - asked));
      frames(stage, m.label(), i -> other.hidingBefore(latest * i / FRAMES));
    }
  }

  private void frames(Stage stage, String what, IntFunction<Look> looks)
      throws InterruptedException, ExecutionException {
    long[] cpu = new long[FRAMES];
    for (int i = 0; i < FRAMES; i++) {
      int before = stage.frames();
      long start = cpu();
      stage.look(looks.apply(i));
      while (stage.frames() == before) {
        Thread.sleep(2);
      }
      cpu[i] = cpu() - start;
    }
    Arrays.sort(cpu);
    tell("  %s: %.0f ms in the median of %d", what, 1e-6 * cpu[FRAMES / 2], FRAMES);
  }

  private static long cpu() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  private static TriangleMesh surface() {
    double[] v = Solids.sphere(Vec3.ZERO, 1, 128).copyVertices();
    int[] t = Solids.sphere(Vec3.ZERO, 1, 128).copyTriangles();
    for (int i = 0; i < v.length; i++) {
      v[i] = EDGE * ((i % 3 == 0 ? LONG : SHORT) * v[i] + (i % 3 == 0 ? LONG : SHORT));
    }
    return new TriangleMesh(v, t);
  }

  /** An egg that sets from its skin to its middle in 100 s. */
  private static Fields body() {
    int nx = 2 * LONG;
    int ny = 2 * SHORT;
    int[] cells = new int[nx * ny * ny];
    float[] set = new float[cells.length];
    int n = 0;
    for (int c = 0; c < cells.length; c++) {
      double x = (c % nx + 0.5) / LONG - 1;
      double y = (c / nx % ny + 0.5) / SHORT - 1;
      int layer = c / nx / ny;
      double z = (layer + 0.5) / SHORT - 1;
      double r = x * x + y * y + z * z;
      if (r < 1) {
        cells[n] = c;
        set[n++] = (float) (100 * (1 - r));
      }
    }
    int[] held = Arrays.copyOf(cells, n);
    float[] times = Arrays.copyOf(set, n);
    return new Fields(
        Vec3.ZERO, EDGE, nx, ny, ny, held, new byte[n], times, times, new short[n], List.of());
  }

  private void tell(String format, Object... values) {
    out.println(Quantities.say(format, values));
  }
}

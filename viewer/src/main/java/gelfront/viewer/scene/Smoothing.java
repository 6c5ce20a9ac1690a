// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.post.SceneProcessor;
import com.jme3.profile.AppProfiler;
import com.jme3.renderer.Caps;
import com.jme3.renderer.Limits;
import com.jme3.renderer.RenderManager;
import com.jme3.renderer.Renderer;
import com.jme3.renderer.ViewPort;
import com.jme3.renderer.queue.RenderQueue;
import com.jme3.texture.FrameBuffer;
import com.jme3.texture.FrameBuffer.FrameBufferTarget;
import com.jme3.texture.Image.Format;
import com.jme3.util.BufferUtils;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Smooth edges where the driver offers several samples a pixel: all sides are drawn into a buffer
 * that has them, which is copied into the window before words are drawn over it; the canvas' own
 * setting for it does nothing. Given up for good where frames take too long, as on machines that
 * draw in software. Engine's thread.
 */
final class Smoothing implements SceneProcessor {
  private static final int SAMPLES = 4;

  private final Renderer renderer;
  private final List<ViewPort> ports;
  private final Patience patience = new Patience();
  private FrameBuffer buffer;
  private long begun;
  private boolean ready;

  private Smoothing(Renderer renderer, List<ViewPort> ports, int width, int height) {
    this.renderer = renderer;
    this.ports = ports;
    buffer = made(width, height);
  }

  private static FrameBuffer made(int width, int height) {
    FrameBuffer b = new FrameBuffer(Math.max(1, width), Math.max(1, height), SAMPLES);
    b.addColorTarget(FrameBufferTarget.newTarget(Format.RGBA8));
    b.setDepthTarget(FrameBufferTarget.newTarget(Format.Depth));
    return b;
  }

  /**
   * @param ports of the sides, drawn in that order
   * @return null where the driver has no such buffers
   */
  static @Nullable Smoothing of(Renderer renderer, List<ViewPort> ports, int width, int height) {
    Integer most = renderer.getLimits().get(Limits.FrameBufferSamples);
    boolean offered = renderer.getCaps().contains(Caps.FrameBufferMultisample);
    if (!offered || most == null || most < SAMPLES) {
      return null;
    }
    Smoothing s = new Smoothing(renderer, ports, width, height);
    ports.forEach(p -> p.addProcessor(s));
    ports.forEach(p -> p.setOutputFrameBuffer(s.buffer));
    return s;
  }

  void resize(int width, int height) {
    FrameBuffer old = buffer;
    buffer = made(width, height);
    ports.forEach(p -> p.setOutputFrameBuffer(buffer));
    old.dispose();
  }

  /**
   * Whether frames take too long; then it is out of the picture.
   *
   * @return whether it has been given up
   */
  boolean gaveUp() {
    if (!patience.isOver()) {
      return false;
    }
    for (ViewPort p : ports) {
      p.removeProcessor(this);
      p.setOutputFrameBuffer(null);
    }
    buffer.dispose();
    return true;
  }

  @Override
  public void initialize(RenderManager manager, ViewPort port) {
    ready = true;
  }

  @Override
  public boolean isInitialized() {
    return ready;
  }

  @Override
  public void reshape(ViewPort port, int width, int height) {}

  @Override
  public void preFrame(float secondsPerFrame) {
    begun = System.nanoTime();
  }

  @Override
  public void postQueue(RenderQueue queue) {}

  /** The copy takes the renderer's rectangle for the window's: it is set to all of it. */
  @Override
  public void postFrame(FrameBuffer drawn) {
    renderer.setViewPort(0, 0, buffer.getWidth(), buffer.getHeight());
    renderer.copyFrameBuffer(buffer, null, true, false);
    if (patience.measures()) {
      renderer.setFrameBuffer(null);
      renderer.setViewPort(0, 0, 1, 1);
      renderer.readFrameBuffer(null, BufferUtils.createByteBuffer(4)); // waits until all is drawn
      patience.took(System.nanoTime() - begun);
    }
  }

  @Override
  public void cleanup() {}

  @Override
  public void setProfiler(AppProfiler profiler) {}
}

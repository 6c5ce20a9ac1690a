// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.math.ColorRGBA;
import com.jme3.renderer.Camera;
import com.jme3.renderer.RenderManager;
import com.jme3.renderer.ViewPort;
import com.jme3.scene.Node;
import gelfront.viewer.model.Look;
import org.jspecify.annotations.Nullable;

/** One half of the picture, or all of it. Engine's thread. */
final class Side {
  private final ViewPort port;
  private final Node root;
  private final Labels labels;

  /** The one that is there even where nothing is shown. */
  private final boolean first;

  private @Nullable Exhibit shown;

  Side(ViewPort port, Node root, Node gui, Labels labels) {
    this.port = port;
    this.root = root;
    this.labels = labels;
    this.first = port.isEnabled();
    gui.attachChild(labels.node());
  }

  /** A second one with a camera of its own; the engine moves the first one's scene alone. */
  static Side beside(
      RenderManager manager, Camera like, Node gui, Labels labels, ColorRGBA ground) {
    Node root = new Node("second");
    ViewPort port = manager.createMainView("second", like.clone());
    port.setClearFlags(true, true, true);
    port.setBackgroundColor(ground);
    port.attachScene(root);
    port.setEnabled(false);
    return new Side(port, root, gui, labels);
  }

  ViewPort port() {
    return port;
  }

  Camera camera() {
    return port.getCamera();
  }

  boolean shows() {
    return shown != null;
  }

  /**
   * @param exhibit null: nothing
   */
  void show(@Nullable Exhibit exhibit) {
    if (shown != null) {
      root.detachChild(shown.node());
    }
    shown = exhibit;
    labels.clear();
    port.setEnabled(exhibit != null || first);
    if (exhibit != null) {
      root.attachChild(exhibit.node());
    }
  }

  void occupy(float left, float right) {
    camera().setViewPort(left, right, 0, 1);
  }

  void resize(int width, int height) {
    camera().resize(width, height, false);
  }

  void fit(float fieldOfView, float near, float far) {
    Camera c = camera();
    float width = c.getWidth() * (c.getViewPortRight() - c.getViewPortLeft());
    float degrees = (float) Math.toDegrees(fieldOfView);
    c.setFrustumPerspective(degrees, width / c.getHeight(), near, far);
  }

  void apply(Look look) {
    if (shown != null) {
      shown.apply(look, labels);
    }
  }

  void update() {
    root.updateLogicalState(0);
    root.updateGeometricState();
    labels.place(camera());
  }
}

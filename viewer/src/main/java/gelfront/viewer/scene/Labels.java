// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.asset.AssetManager;
import com.jme3.material.Material;
import com.jme3.math.Vector3f;
import com.jme3.renderer.Camera;
import com.jme3.scene.Geometry;
import com.jme3.scene.Node;
import com.jme3.scene.Spatial;
import com.jme3.scene.shape.Quad;
import com.jme3.texture.Image;
import com.jme3.texture.Image.Format;
import com.jme3.texture.Texture2D;
import com.jme3.texture.image.ColorSpace;
import com.jme3.util.BufferUtils;
import gelfront.mesh.Vec3;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Words that stay upright and in front at places of the part. Engine's thread. */
final class Labels {
  /** Pixels between a place and the lower edge of its plate. */
  private static final int STEM = 34;

  /** Pixels between a place and words below it. */
  private static final int BELOW = 12;

  private record Label(Vector3f at, Node node, int width, int height, boolean stem) {}

  private final Paints paints;
  private final Node gui = new Node("labels");
  private final List<Label> labels = new ArrayList<>();
  private final float scale;
  private @Nullable Node title;

  /**
   * @param scale pixels of the screen for one of the window
   */
  Labels(AssetManager assets, float scale) {
    this.paints = new Paints(assets);
    this.scale = scale;
    gui.setQueueBucket(com.jme3.renderer.queue.RenderQueue.Bucket.Gui);
    gui.setCullHint(Spatial.CullHint.Never);
  }

  Node node() {
    return gui;
  }

  /** Plate above its place, with a stem: it hides nothing and reads on all colours. */
  void onPlate(List<String> lines, Vec3 at, int edge) {
    BufferedImage image = Plates.plate(lines, edge, scale);
    Node node = new Node("plate");
    Geometry stem = new Geometry("stem", new Quad(2 * scale, STEM * scale));
    stem.setMaterial(paints.plain(Plates.GROUND));
    stem.setLocalTranslation(-scale, 0, 0);
    node.attachChild(stem);
    node.attachChild(picture(image, -image.getWidth() / 2, Math.round(STEM * scale)));
    add(at, node, image, true);
  }

  void plain(String words, Vec3 at) {
    BufferedImage image = Plates.plain(words, scale);
    plain(words, at, image, -image.getHeight() / 2);
  }

  /** As many pixels below its place however small the part is, so that it meets no other. */
  void below(String words, Vec3 at) {
    BufferedImage image = Plates.plain(words, scale);
    plain(words, at, image, -image.getHeight() - Math.round(BELOW * scale));
  }

  private void plain(String words, Vec3 at, BufferedImage image, int y) {
    Node node = new Node(words);
    node.attachChild(picture(image, -image.getWidth() / 2, y));
    add(at, node, image, false);
  }

  private void add(Vec3 at, Node node, BufferedImage image, boolean stem) {
    labels.add(new Label(Meshes.vector(at), node, image.getWidth(), image.getHeight(), stem));
    gui.attachChild(node);
  }

  private Geometry picture(BufferedImage image, int x, int y) {
    Geometry g = new Geometry("words", new Quad(image.getWidth(), image.getHeight()));
    Material m = paints.picture(texture(image));
    g.setMaterial(m);
    g.setLocalTranslation(x, y, 1);
    return g;
  }

  private static Texture2D texture(BufferedImage image) {
    ByteBuffer bytes = BufferUtils.createByteBuffer(4 * image.getWidth() * image.getHeight());
    for (int y = image.getHeight() - 1; y >= 0; y--) {
      for (int x = 0; x < image.getWidth(); x++) {
        int c = image.getRGB(x, y);
        bytes.put((byte) (c >> 16)).put((byte) (c >> 8)).put((byte) c).put((byte) (c >> 24));
      }
    }
    bytes.flip();
    return new Texture2D(
        new Image(Format.RGBA8, image.getWidth(), image.getHeight(), bytes, ColorSpace.Linear));
  }

  /** At the head of its side of the picture. */
  void title(String words) {
    BufferedImage image = Plates.plain(words, scale);
    title = new Node("title");
    title.attachChild(picture(image, 0, -image.getHeight()));
    gui.attachChild(title);
  }

  void clear() {
    gui.detachAllChildren();
    labels.clear();
    title = null;
  }

  /** Puts every label over its place as the camera sees it now, inside the camera's picture. */
  void place(Camera camera) {
    float left = camera.getViewPortLeft() * camera.getWidth();
    float right = camera.getViewPortRight() * camera.getWidth();
    if (title != null) {
      title.setLocalTranslation(left + 12 * scale, camera.getHeight() - 10 * scale, 0);
    }
    for (Label l : labels) {
      Vector3f s = camera.getScreenCoordinates(l.at());
      float half = l.width() / 2f;
      float x = Math.max(left + half + 2, Math.min(right - half - 2, s.x));
      float top = camera.getHeight() - l.height() - STEM * scale;
      float y = l.stem() ? Math.max(-STEM * scale, Math.min(top, s.y)) : s.y;
      l.node().setLocalTranslation(Math.round(x), Math.round(y), 0);
    }
  }
}

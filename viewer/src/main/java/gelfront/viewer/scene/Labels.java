package gelfront.viewer.scene;

import com.jme3.font.BitmapFont;
import com.jme3.font.BitmapText;
import com.jme3.material.Material;
import com.jme3.material.RenderState.BlendMode;
import com.jme3.math.ColorRGBA;
import com.jme3.math.Vector3f;
import com.jme3.renderer.Camera;
import com.jme3.scene.Geometry;
import com.jme3.scene.Node;
import com.jme3.scene.shape.Quad;
import gelfront.mesh.Vec3;
import java.util.ArrayList;
import java.util.List;

/** Words that stay upright and in front at places of the part. */
final class Labels {
  private static final int PAD = 5;
  private static final int STEM = 44;

  private record Label(Vector3f at, Node node, float width, float height) {}

  private final BitmapFont font;
  private final Material plate;
  private final Node gui;
  private final List<Label> labels = new ArrayList<>();

  /**
   * @param plate unshaded material, used behind the words
   */
  Labels(BitmapFont font, Material plate, Node gui) {
    this.font = font;
    this.plate = plate;
    this.gui = gui;
    plate.setColor("Color", new ColorRGBA(0.07f, 0.1f, 0.14f, 0.85f));
    plate.getAdditionalRenderState().setBlendMode(BlendMode.Alpha);
  }

  /** White on a dark plate above its place, with a stem: it hides nothing, reads on all colours. */
  void onPlate(String words, Vec3 at, float size) {
    BitmapText text = text(words, size);
    float width = text.getLineWidth() + 2 * PAD;
    float height = text.getLineHeight() + 2;
    Geometry back = new Geometry("plate", new Quad(width, height));
    back.setMaterial(plate);
    Node node = new Node(words);
    back.setLocalTranslation(0, STEM + height / 2, 0);
    text.setLocalTranslation(PAD, STEM + height * 1.5f - 1, 1);
    Geometry stem = new Geometry("stem", new Quad(2, STEM));
    stem.setMaterial(plate);
    stem.setLocalTranslation(width / 2 - 1, height / 2, 0);
    node.attachChild(stem);
    node.attachChild(back);
    node.attachChild(text);
    add(at, node, width, height);
  }

  void plain(String words, Vec3 at, float size) {
    BitmapText text = text(words, size);
    Node node = new Node(words);
    text.setLocalTranslation(0, text.getLineHeight(), 0);
    node.attachChild(text);
    add(at, node, text.getLineWidth(), text.getLineHeight());
  }

  private BitmapText text(String words, float size) {
    BitmapText text = new BitmapText(font);
    text.setSize(size);
    text.setColor(ColorRGBA.White);
    text.setText(words);
    return text;
  }

  private void add(Vec3 at, Node node, float width, float height) {
    labels.add(
        new Label(
            new Vector3f((float) at.x(), (float) at.y(), (float) at.z()), node, width, height));
    gui.attachChild(node);
  }

  /** Puts every label over its place as the camera sees it now. */
  void place(Camera camera) {
    for (Label l : labels) {
      Vector3f s = camera.getScreenCoordinates(l.at());
      l.node()
          .setLocalTranslation(
              Math.round(s.x - l.width() / 2), Math.round(s.y - l.height() / 2), 0);
    }
  }
}

package gelfront.viewer.scene;

import com.jme3.asset.AssetManager;
import com.jme3.material.Material;
import com.jme3.math.ColorRGBA;
import com.jme3.scene.Geometry;
import com.jme3.scene.Mesh;
import com.jme3.scene.VertexBuffer;
import com.jme3.util.BufferUtils;
import gelfront.mesh.Vec3;
import gelfront.viewer.model.Extent;
import gelfront.viewer.model.LegendTicks;
import java.util.Locale;

/** Three lines from the lower corner of the part's box, all of the same round length. */
final class Axes {
  private final Extent extent;
  private final double length;

  Axes(Extent extent) {
    this.extent = extent;
    this.length = LegendTicks.roundStep(0.12 * extent.radius());
  }

  /** The lines, with their names and the length put into the labels. */
  Geometry geometry(AssetManager assets, Labels labels) {
    float[] ends = new float[18];
    for (int axis = 0; axis < 3; axis++) {
      put(ends, 6 * axis, extent.lower());
      put(ends, 6 * axis + 3, end(axis, length));
      labels.plain("xyz".substring(axis, axis + 1), end(axis, 1.3 * length), 16);
    }
    labels.plain(
        String.format(Locale.ROOT, length < 1 ? "%.2g mm" : "%.0f mm", length),
        end(2, -0.6 * length),
        15);
    Mesh mesh = new Mesh();
    mesh.setMode(Mesh.Mode.Lines);
    mesh.setBuffer(VertexBuffer.Type.Position, 3, BufferUtils.createFloatBuffer(ends));
    mesh.updateBound();
    Material m = new Material(assets, "Common/MatDefs/Misc/Unshaded.j3md");
    m.setColor("Color", ColorRGBA.White);
    Geometry g = new Geometry("axes", mesh);
    g.setMaterial(m);
    return g;
  }

  private Vec3 end(int axis, double by) {
    Vec3 l = extent.lower();
    return switch (axis) {
      case 0 -> l.plus(new Vec3(by, 0, 0));
      case 1 -> l.plus(new Vec3(0, by, 0));
      default -> l.plus(new Vec3(0, 0, by));
    };
  }

  private static void put(float[] to, int at, Vec3 v) {
    to[at] = (float) v.x();
    to[at + 1] = (float) v.y();
    to[at + 2] = (float) v.z();
  }
}

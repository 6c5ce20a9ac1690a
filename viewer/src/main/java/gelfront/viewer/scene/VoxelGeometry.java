package gelfront.viewer.scene;

import com.jme3.asset.AssetManager;
import com.jme3.material.Material;
import com.jme3.scene.Geometry;
import com.jme3.scene.Mesh;
import com.jme3.scene.VertexBuffer;
import com.jme3.util.BufferUtils;
import gelfront.report.ColourRamp;
import gelfront.viewer.model.VoxelFaces;

/** Voxel faces as one mesh, coloured by set time and shaded by which way they face. */
final class VoxelGeometry {
  /**
   * Brightness of faces towards -x +x -y +y -z +z: edges show without a lamp. Cut faces look to +x
   * or -y and have the legend's colours.
   */
  private static final float[] SHADE = {0.84f, 1, 1, 0.88f, 0.78f, 0.93f};

  private static final int[] QUAD = {0, 1, 2, 0, 2, 3};

  private VoxelGeometry() {}

  /** An empty geometry, to be given meshes of {@link #mesh}. */
  static Geometry of(AssetManager assets) {
    Material m = new Material(assets, "Common/MatDefs/Misc/Unshaded.j3md");
    m.setBoolean("VertexColor", true);
    Geometry g = new Geometry("voxels", new Mesh());
    g.setMaterial(m);
    return g;
  }

  /**
   * May be called on any thread.
   *
   * @param latest s, light end of the ramp
   */
  static Mesh mesh(VoxelFaces faces, double latest) {
    int n = faces.count();
    float[] colour = new float[16 * n];
    int[] index = new int[6 * n];
    for (int f = 0; f < n; f++) {
      paint(colour, 16 * f, ColourRamp.STANDARD.at(faces.setTime()[f] / latest), faces.side()[f]);
      for (int i = 0; i < 6; i++) {
        index[6 * f + i] = 4 * f + QUAD[i];
      }
    }
    Mesh mesh = new Mesh();
    mesh.setBuffer(VertexBuffer.Type.Position, 3, BufferUtils.createFloatBuffer(faces.positions()));
    mesh.setBuffer(VertexBuffer.Type.Color, 4, BufferUtils.createFloatBuffer(colour));
    mesh.setBuffer(VertexBuffer.Type.Index, 3, BufferUtils.createIntBuffer(index));
    mesh.updateBound();
    return mesh;
  }

  private static void paint(float[] colour, int at, int rgb, int side) {
    float shade = SHADE[side] / 255;
    for (int c = at; c < at + 16; c += 4) {
      colour[c] = shade * (rgb >> 16 & 255);
      colour[c + 1] = shade * (rgb >> 8 & 255);
      colour[c + 2] = shade * (rgb & 255);
      colour[c + 3] = 1;
    }
  }
}

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
public final class VoxelGeometry {
  /** Brightness of faces towards -x +x -y +y -z +z: edges show without a lamp. */
  private static final float[] SHADE = {0.78f, 0.86f, 0.7f, 0.92f, 0.62f, 1};

  private VoxelGeometry() {}

  /** An empty geometry; fill it with {@link #show}. */
  public static Geometry of(AssetManager assets) {
    Material m = new Material(assets, "Common/MatDefs/Misc/Unshaded.j3md");
    m.setBoolean("VertexColor", true);
    Geometry g = new Geometry("voxels", new Mesh());
    g.setMaterial(m);
    return g;
  }

  /**
   * Replaces what the geometry shows.
   *
   * @param latest s, light end of the ramp
   */
  public static void show(Geometry g, VoxelFaces faces, double latest) {
    Mesh mesh = new Mesh();
    int n = faces.count();
    float[] colour = new float[16 * n];
    int[] index = new int[6 * n];
    for (int f = 0; f < n; f++) {
      int rgb = ColourRamp.STANDARD.at(faces.setTime()[f] / latest);
      float shade = SHADE[side(faces, f)];
      for (int c = 0; c < 4; c++) {
        colour[16 * f + 4 * c] = shade * (rgb >> 16 & 255) / 255;
        colour[16 * f + 4 * c + 1] = shade * (rgb >> 8 & 255) / 255;
        colour[16 * f + 4 * c + 2] = shade * (rgb & 255) / 255;
        colour[16 * f + 4 * c + 3] = 1;
      }
      int[] quad = {0, 1, 2, 0, 2, 3};
      for (int i = 0; i < 6; i++) {
        index[6 * f + i] = 4 * f + quad[i];
      }
    }
    mesh.setBuffer(VertexBuffer.Type.Position, 3, BufferUtils.createFloatBuffer(faces.positions()));
    mesh.setBuffer(VertexBuffer.Type.Color, 4, BufferUtils.createFloatBuffer(colour));
    mesh.setBuffer(VertexBuffer.Type.Index, 3, BufferUtils.createIntBuffer(index));
    mesh.updateBound();
    g.setMesh(mesh);
    g.updateModelBound();
  }

  private static int side(VoxelFaces faces, int f) {
    for (int a = 0; a < 3; a++) {
      float v = faces.normals()[12 * f + a];
      if (v != 0) {
        return 2 * a + (v > 0 ? 1 : 0);
      }
    }
    return 0;
  }
}

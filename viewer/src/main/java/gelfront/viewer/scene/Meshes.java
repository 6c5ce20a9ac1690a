// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.scene;

import com.jme3.math.Vector3f;
import com.jme3.math.Vector4f;
import com.jme3.scene.Mesh;
import com.jme3.scene.VertexBuffer;
import com.jme3.util.BufferUtils;
import gelfront.mesh.Vec3;
import gelfront.viewer.model.CellFaces;
import gelfront.viewer.model.Plane;
import gelfront.viewer.model.SkinMesh;
import java.util.Optional;

/** Plain arrays as the engine's meshes. For any thread. */
final class Meshes {
  private static final int[] QUAD = {0, 1, 2, 0, 2, 3};

  private Meshes() {}

  /** A skin without values. */
  static Mesh skin(SkinMesh s) {
    float[] none = new float[s.vertex().length];
    return skin(s, none, none);
  }

  /**
   * @param value to be coloured, 0 to 1, one a corner
   * @param deep mm that the place is pulled in, one a corner
   */
  static Mesh skin(SkinMesh s, float[] value, float[] deep) {
    float[] both = new float[2 * value.length];
    for (int c = 0; c < value.length; c++) {
      both[2 * c] = value[c];
      both[2 * c + 1] = deep[c];
    }
    Mesh mesh = new Mesh();
    mesh.setBuffer(VertexBuffer.Type.Position, 3, BufferUtils.createFloatBuffer(s.positions()));
    mesh.setBuffer(VertexBuffer.Type.Normal, 3, BufferUtils.createFloatBuffer(s.normals()));
    mesh.setBuffer(VertexBuffer.Type.TexCoord, 2, BufferUtils.createFloatBuffer(both));
    mesh.updateBound();
    return mesh;
  }

  static Mesh cells(CellFaces.Bin bin) {
    int n = bin.count();
    float[] times = new float[12 * n];
    int[] index = new int[6 * n];
    for (int f = 0; f < n; f++) {
      for (int c = 0; c < 12; c++) {
        times[12 * f + c] = bin.times()[3 * f + c % 3];
      }
      for (int i = 0; i < 6; i++) {
        index[6 * f + i] = 4 * f + QUAD[i];
      }
    }
    Mesh mesh = new Mesh();
    mesh.setBuffer(VertexBuffer.Type.Position, 3, BufferUtils.createFloatBuffer(bin.positions()));
    mesh.setBuffer(VertexBuffer.Type.Normal, 3, BufferUtils.createFloatBuffer(times));
    mesh.setBuffer(VertexBuffer.Type.Index, 3, BufferUtils.createIntBuffer(index));
    mesh.updateBound();
    return mesh;
  }

  /**
   * @param ends x, y, z of both ends of each line, mm
   */
  static Mesh lines(float[] ends) {
    Mesh mesh = new Mesh();
    mesh.setMode(Mesh.Mode.Lines);
    mesh.setBuffer(VertexBuffer.Type.Position, 3, BufferUtils.createFloatBuffer(ends));
    mesh.updateBound();
    return mesh;
  }

  static Vector3f vector(Vec3 v) {
    return new Vector3f((float) v.x(), (float) v.y(), (float) v.z());
  }

  /** As shaders take it: a place stays where xyz . place is not below w. */
  static Vector4f vector(Optional<Plane> plane) {
    if (plane.isEmpty()) {
      return new Vector4f(0, 0, 0, -1);
    }
    Vec3 n = plane.get().normal();
    return new Vector4f(
        (float) n.x(), (float) n.y(), (float) n.z(), (float) n.dot(plane.get().at()));
  }
}

package gelfront.viewer.scene;

import com.jme3.asset.AssetManager;
import com.jme3.material.Material;
import com.jme3.material.RenderState.BlendMode;
import com.jme3.math.ColorRGBA;
import com.jme3.renderer.queue.RenderQueue.Bucket;
import com.jme3.scene.Geometry;
import com.jme3.scene.Mesh;
import com.jme3.scene.VertexBuffer;
import com.jme3.util.BufferUtils;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;

/** The outline of part and feed system as thin glass: clear in front, seen where it turns away. */
final class GhostGeometry {
  private GhostGeometry() {}

  /**
   * @param surface metres, part coordinates
   */
  static Geometry of(AssetManager assets, TriangleMesh surface) {
    Mesh mesh = new Mesh();
    mesh.setBuffer(
        VertexBuffer.Type.Position, 3, BufferUtils.createFloatBuffer(millimetres(surface)));
    mesh.setBuffer(VertexBuffer.Type.Normal, 3, BufferUtils.createFloatBuffer(normals(surface)));
    mesh.setBuffer(
        VertexBuffer.Type.Index, 3, BufferUtils.createIntBuffer(surface.copyTriangles()));
    mesh.updateBound();
    Material m = new Material(assets, "gelfront/viewer/scene/Ghost.j3md");
    m.setColor("Color", new ColorRGBA(0.93f, 0.96f, 1, 1));
    m.getAdditionalRenderState().setBlendMode(BlendMode.Alpha);
    m.getAdditionalRenderState().setDepthWrite(false);
    Geometry g = new Geometry("ghost", mesh);
    g.setMaterial(m);
    g.setQueueBucket(Bucket.Transparent);
    return g;
  }

  private static float[] millimetres(TriangleMesh surface) {
    double[] metres = surface.copyVertices();
    float[] out = new float[metres.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = (float) (1e3 * metres[i]);
    }
    return out;
  }

  /** Per vertex the sum of its triangles' normals by area; the shader makes it a unit vector. */
  private static float[] normals(TriangleMesh surface) {
    float[] out = new float[3 * surface.vertexCount()];
    for (int t = 0; t < surface.triangleCount(); t++) {
      Vec3 a = surface.vertex(surface.corner(t, 0));
      Vec3 b = surface.vertex(surface.corner(t, 1));
      Vec3 c = surface.vertex(surface.corner(t, 2));
      Vec3 n = b.minus(a).cross(c.minus(a)).times(1e6);
      for (int i = 0; i < 3; i++) {
        int v = 3 * surface.corner(t, i);
        out[v] += (float) n.x();
        out[v + 1] += (float) n.y();
        out[v + 2] += (float) n.z();
      }
    }
    return out;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.base.Changed;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import gelfront.result.DentSurface;
import gelfront.result.StoredRun;
import gelfront.result.SyntheticRun;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A reader of its own, by the glTF 2.0 specification, sections 4.4 and 5. */
final class DentsGlbTest {
  private static final double DEEP = 0.4e-3;

  private DentSurface dents;
  private byte[] file;
  private ByteBuffer all;
  private JsonNode root;
  private int binary;

  /** A ball that is pulled in on one side. */
  private static DentSurface ball() {
    TriangleMesh ball = Solids.sphere(new Vec3(3e-3, 0, 0), 7e-3, 48);
    float[] depth = new float[ball.vertexCount()];
    float[] high = new float[depth.length];
    for (int v = 0; v < depth.length; v++) {
      depth[v] = (float) (DEEP * Math.max(0, ball.coordinate(v, 2) / 7e-3));
      high[v] = 2 * depth[v];
    }
    return new DentSurface(ball, depth, depth.clone(), high);
  }

  @BeforeEach
  void write() throws IOException {
    dents = ball();
    StoredRun run = Changed.of(SyntheticRun.small(), "dents", dents);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new DentsGlb().write(run, out);
    file = out.toByteArray();
    all = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    int length = all.getInt(12);
    root = new ObjectMapper().readTree(new String(file, 20, length, StandardCharsets.UTF_8));
    binary = 20 + length + 8;
  }

  @Test
  void chunksAndViewsFillTheFile() {
    assertEquals("glTF", new String(file, 0, 4, StandardCharsets.US_ASCII));
    assertEquals(2, all.getInt(4));
    assertEquals(file.length, all.getInt(8));
    assertEquals("JSON", new String(file, 16, 4, StandardCharsets.US_ASCII));
    assertEquals(0, (binary - 8) % 4);
    assertEquals(0x004E4942, all.getInt(binary - 4));
    assertEquals(file.length - binary, all.getInt(binary - 8));
    assertEquals(file.length - binary, root.get("buffers").get(0).get("byteLength").asInt());
    int next = 0;
    for (JsonNode view : root.get("bufferViews")) {
      assertEquals(next, view.get("byteOffset").asInt());
      next += view.get("byteLength").asInt();
    }
    assertEquals(file.length - binary, next);
    assertEquals("2.0", root.get("asset").get("version").asText());
  }

  private float[] floats(int accessor) {
    JsonNode a = root.get("accessors").get(accessor);
    JsonNode view = root.get("bufferViews").get(a.get("bufferView").asInt());
    int per = a.get("type").asText().equals("VEC3") ? 3 : 1;
    float[] out = new float[per * a.get("count").asInt()];
    assertEquals(5126, a.get("componentType").asInt());
    assertEquals(4 * out.length, view.get("byteLength").asInt());
    for (int i = 0; i < out.length; i++) {
      out[i] = all.getFloat(binary + view.get("byteOffset").asInt() + 4 * i);
    }
    return out;
  }

  private JsonNode primitive(int object) {
    return root.get("meshes").get(object).get("primitives").get(0);
  }

  private TriangleMesh mesh(int object) {
    JsonNode p = primitive(object);
    float[] at = floats(p.get("attributes").get("POSITION").asInt());
    JsonNode indices = root.get("accessors").get(p.get("indices").asInt());
    JsonNode view = root.get("bufferViews").get(indices.get("bufferView").asInt());
    double[] v = new double[at.length];
    for (int i = 0; i < v.length; i++) {
      v[i] = at[i];
    }
    int[] t = new int[indices.get("count").asInt()];
    for (int i = 0; i < t.length; i++) {
      t[i] = all.getInt(binary + view.get("byteOffset").asInt() + 4 * i);
    }
    return new TriangleMesh(v, t);
  }

  @Test
  void realAndExaggeratedGeometryArePulledInAsTheyAreNamed() {
    double times = root.get("meshes").get(1).get("extras").get("times_as_deep").asDouble();
    double lost = dents.mesh().volume() - mesh(0).volume();
    Vec3 top = dents.mesh().box().max();

    assertEquals(5, times, "0.15 of 14 mm is 5 times 0.4 mm");
    assertEquals("dents 5 times as deep", root.get("nodes").get(1).get("name").asText());
    // Integral of d - d^2 / R over half a ball, d = DEEP cos: pi R^2 DEEP (1 - 2 DEEP / (3 R)).
    double held = Math.PI * 49e-6 * DEEP * (1 - 2 * DEEP / (3 * 7e-3));
    assertEquals(held, lost, 0.02 * held);
    assertEquals(top.z() - DEEP, mesh(0).box().max().z(), 0.05 * DEEP);
    assertEquals(top.z() - 5 * DEEP, mesh(1).box().max().z(), 0.2 * DEEP);
  }

  @Test
  void positionsLieInTheBoxThatIsTold() {
    for (int object = 0; object < 2; object++) {
      JsonNode a =
          root.get("accessors").get(primitive(object).get("attributes").get("POSITION").asInt());
      Vec3 min = mesh(object).box().min();
      assertEquals(min.x(), a.get("min").get(0).asDouble(), 1e-9);
      assertEquals(mesh(object).box().max().z(), a.get("max").get(2).asDouble(), 1e-9);
    }
  }

  @Test
  void depthsAreInMillimetresAndColoursDarken() {
    JsonNode attributes = primitive(0).get("attributes");
    float[] depth = floats(attributes.get("_DENT_MM").asInt());
    float[] high = floats(attributes.get("_DENT_HIGH_MM").asInt());
    float[] rgb = floats(attributes.get("COLOR_0").asInt());
    int deepest = 0;
    int flat = 0;
    for (int v = 0; v < depth.length; v++) {
      deepest = depth[v] > depth[deepest] ? v : deepest;
      flat = depth[v] == 0 ? v : flat;
      assertEquals(1e3f * dents.depth()[v], depth[v], 1e-6f);
      assertEquals(2 * depth[v], high[v], 1e-6f);
    }
    assertEquals(0.4, depth[deepest], 1e-3);
    assertTrue(rgb[3 * deepest + 1] < 0.3 * rgb[3 * flat + 1]);
  }
}

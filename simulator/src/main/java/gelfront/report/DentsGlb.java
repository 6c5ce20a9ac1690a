// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gelfront.mesh.Box;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.result.ArtifactWriter;
import gelfront.result.DentColour;
import gelfront.result.DentSurface;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * dents.glb: the part as it comes out of the mould, to turn in any glTF 2.0 viewer. Two objects
 * side by side: the dents as deep as they are, and so many times deeper as the object's name says.
 * Metres as glTF wants; the depth in millimetres is in the vertex attributes _DENT_MM, _DENT_LOW_MM
 * and _DENT_HIGH_MM. Source: Khronos, glTF 2.0 specification.
 */
public final class DentsGlb implements ArtifactWriter {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int MAGIC = 0x46546C67;
  private static final int JSON_CHUNK = 0x4E4F534A;
  private static final int BINARY_CHUNK = 0x004E4942;
  private static final int FLOAT = 5126;
  private static final int UNSIGNED_INT = 5125;
  private static final int VERTICES = 34962;
  private static final int INDICES = 34963;

  /** Share of the part's least width that the deepest dent is drawn with. */
  private static final double DRAWN = 0.15;

  @Override
  public String fileName() {
    return "dents.glb";
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    Document document = new Document(run);
    byte[] json = padded(JSON.writeValueAsBytes(document.root), (byte) ' ');
    ByteBuffer head = ByteBuffer.allocate(28 + json.length).order(ByteOrder.LITTLE_ENDIAN);
    head.putInt(MAGIC).putInt(2).putInt(28 + json.length + document.size);
    head.putInt(json.length).putInt(JSON_CHUNK).put(json);
    head.putInt(document.size).putInt(BINARY_CHUNK);
    out.write(head.array());
    for (byte[] part : document.binary) {
      out.write(part);
    }
  }

  private static byte[] padded(byte[] bytes, byte with) {
    byte[] out = Arrays.copyOf(bytes, (bytes.length + 3) / 4 * 4);
    Arrays.fill(out, bytes.length, out.length, with);
    return out;
  }

  /** 1, 2 or 5 with noughts, so that the deepest dent is well seen; 1 where there is none. */
  static double exaggeration(DentSurface s) {
    Vec3 size = s.mesh().box().size();
    double least = Math.min(size.x(), Math.min(size.y(), size.z()));
    double wanted = s.deepest() > 0 ? DRAWN * least / s.deepest() : 1;
    double times = 1;
    for (double step : new double[] {2, 5, 10, 20, 50, 100}) {
      times = step <= wanted ? step : times;
    }
    return times;
  }

  /** The JSON part and what it points to, being filled. */
  private static final class Document {
    private final ObjectNode root = JSON.createObjectNode();
    private final List<byte[]> binary = new ArrayList<>();
    private final DentSurface dents;
    private int size;

    Document(StoredRun run) {
      dents = run.dents();
      double times = exaggeration(dents);
      root.putObject("asset").put("version", "2.0").put("generator", "gelfront");
      root.put("scene", 0);
      root.putArray("scenes").addObject().put("name", run.name()).putArray("nodes").add(0).add(1);
      for (String list : List.of("nodes", "meshes", "accessors", "bufferViews")) {
        root.putArray(list);
      }
      material();
      int indices = indices();
      int[] values = {scalars(dents.depth()), scalars(dents.low()), scalars(dents.high())};
      int colours = colours(run.findings().visibleDepth());
      object("dents as deep as they are", 1, Vec3.ZERO, indices, colours, values);
      object(
          String.format(Locale.ROOT, "dents %.0f times as deep", times),
          times,
          aside(),
          indices,
          colours,
          values);
      root.putArray("buffers").addObject().put("byteLength", size);
    }

    private void material() {
      ObjectNode m = root.putArray("materials").addObject().put("name", "depth");
      m.putObject("pbrMetallicRoughness").put("metallicFactor", 0).put("roughnessFactor", 0.7);
    }

    /** Beside the first, across its shorter side. */
    private Vec3 aside() {
      Box b = dents.mesh().box();
      boolean y = b.size().y() <= b.size().x();
      return y ? new Vec3(0, 1.5 * b.size().y(), 0) : new Vec3(1.5 * b.size().x(), 0, 0);
    }

    private void object(
        String name, double times, Vec3 at, int indices, int colours, int[] values) {
      TriangleMesh mesh = dents.pulledIn(times);
      ObjectNode node = ((ArrayNode) root.get("nodes")).addObject();
      node.put("name", name).put("mesh", root.get("meshes").size());
      node.putArray("translation").add(at.x()).add(at.y()).add(at.z());
      ObjectNode drawn = ((ArrayNode) root.get("meshes")).addObject().put("name", name);
      drawn.putObject("extras").put("times_as_deep", times);
      ObjectNode primitive = drawn.putArray("primitives").addObject();
      primitive.put("indices", indices).put("material", 0).put("mode", 4);
      ObjectNode attributes = primitive.putObject("attributes");
      attributes.put("POSITION", positions(mesh));
      attributes.put("NORMAL", triples(DentSurface.normals(mesh)));
      attributes.put("COLOR_0", colours);
      attributes.put("_DENT_MM", values[0]);
      attributes.put("_DENT_LOW_MM", values[1]);
      attributes.put("_DENT_HIGH_MM", values[2]);
    }

    private int indices() {
      int[] corners = dents.mesh().copyTriangles();
      ByteBuffer b = ByteBuffer.allocate(4 * corners.length).order(ByteOrder.LITTLE_ENDIAN);
      Arrays.stream(corners).forEach(b::putInt);
      return accessor(b.array(), INDICES, UNSIGNED_INT, "SCALAR", corners.length);
    }

    private int scalars(float[] metres) {
      ByteBuffer b = ByteBuffer.allocate(4 * metres.length).order(ByteOrder.LITTLE_ENDIAN);
      for (float d : metres) {
        b.putFloat(d * 1e3f);
      }
      return accessor(b.array(), VERTICES, FLOAT, "SCALAR", metres.length);
    }

    private int triples(double[] values) {
      ByteBuffer b = ByteBuffer.allocate(4 * values.length).order(ByteOrder.LITTLE_ENDIAN);
      for (double v : values) {
        b.putFloat((float) v);
      }
      return accessor(b.array(), VERTICES, FLOAT, "VEC3", values.length / 3);
    }

    /** glTF wants the box of the positions, of the very floats that are written. */
    private int positions(TriangleMesh mesh) {
      int accessor = triples(mesh.copyVertices());
      ObjectNode n = (ObjectNode) root.get("accessors").get(accessor);
      Box b = mesh.box();
      for (double v : new double[] {b.min().x(), b.min().y(), b.min().z()}) {
        n.withArray("min").add((float) v);
      }
      for (double v : new double[] {b.max().x(), b.max().y(), b.max().z()}) {
        n.withArray("max").add((float) v);
      }
      return accessor;
    }

    /** Linear light, as glTF wants colours of vertices. */
    private int colours(double visible) {
      double[] all = new double[3 * dents.depth().length];
      for (int v = 0; v < dents.depth().length; v++) {
        int rgb = DentColour.of(dents.depth()[v], visible);
        for (int k = 0; k < 3; k++) {
          all[3 * v + k] = linear((rgb >> (16 - 8 * k) & 0xFF) / 255.0);
        }
      }
      return triples(all);
    }

    private static double linear(double c) {
      return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private int accessor(byte[] bytes, int target, int component, String type, int count) {
      ObjectNode view = ((ArrayNode) root.get("bufferViews")).addObject();
      view.put("buffer", 0).put("byteOffset", size).put("byteLength", bytes.length);
      view.put("target", target);
      binary.add(bytes);
      size += bytes.length;
      ObjectNode n = ((ArrayNode) root.get("accessors")).addObject();
      n.put("bufferView", root.get("bufferViews").size() - 1).put("componentType", component);
      n.put("type", type).put("count", count);
      return root.get("accessors").size() - 1;
    }
  }
}

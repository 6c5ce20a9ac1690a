// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.TriangleMesh;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** The same mesh in every format, written independently of the readers, in millimetres. */
public final class MeshTexts {
  static final String CORE = "xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\"";

  static final String RELATIONS =
      "<?xml version=\"1.0\"?><Relationships"
          + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship"
          + " Id=\"r\" Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\""
          + " Target=\"/3D/3dmodel.model\"/></Relationships>";

  private static final double MM = 1e3;

  private MeshTexts() {}

  /** By what a file of it is called. */
  public static Map<String, byte[]> all(TriangleMesh m) {
    Map<String, byte[]> all = new LinkedHashMap<>();
    all.put("binary.stl", binaryStl(m));
    all.put("text.stl", textStl(m));
    all.put("text.obj", obj(m));
    all.put("text.ply", ply(m, "ascii"));
    all.put("little.ply", ply(m, "binary_little_endian"));
    all.put("big.ply", ply(m, "binary_big_endian"));
    all.put("packed.3mf", threeMf(m));
    return all;
  }

  static byte[] binaryStl(TriangleMesh m) {
    ByteBuffer b = ByteBuffer.allocate(84 + 50 * m.triangleCount()).order(ByteOrder.LITTLE_ENDIAN);
    b.position(80).putInt(m.triangleCount());
    for (int t = 0; t < m.triangleCount(); t++) {
      b.putFloat(0).putFloat(0).putFloat(1);
      for (int i = 0; i < 9; i++) {
        b.putFloat((float) mm(m, t, i));
      }
      b.putShort((short) 0);
    }
    return b.array();
  }

  private static double mm(TriangleMesh m, int t, int i) {
    return MM * m.coordinate(m.corner(t, i / 3), i % 3);
  }

  static byte[] textStl(TriangleMesh m) {
    StringBuilder s = new StringBuilder("solid part\n");
    for (int t = 0; t < m.triangleCount(); t++) {
      s.append("facet normal 0 0 1\n outer loop\n");
      for (int i = 0; i < 9; i++) {
        s.append(i % 3 == 0 ? "  vertex" : "").append(' ').append((float) mm(m, t, i));
        s.append(i % 3 == 2 ? "\n" : "");
      }
      s.append(" endloop\nendfacet\n");
    }
    return bytes(s.append("endsolid part\n"));
  }

  static byte[] obj(TriangleMesh m) {
    StringBuilder s = new StringBuilder("# made for a test\nmtllib /etc/passwd\no part\n");
    for (int v = 0; v < m.vertexCount(); v++) {
      s.append("v " + at(m, v, 0) + " " + at(m, v, 1) + " " + at(m, v, 2) + "\n");
    }
    for (int t = 0; t < m.triangleCount(); t++) {
      s.append("f " + (m.corner(t, 0) + 1) + "/1/1 " + (m.corner(t, 1) + 1) + "//1 ");
      s.append((m.corner(t, 2) - m.vertexCount()) + "\n");
    }
    return bytes(s);
  }

  private static float at(TriangleMesh m, int v, int axis) {
    return (float) (MM * m.coordinate(v, axis));
  }

  static byte[] ply(TriangleMesh m, String format) {
    String head =
        "ply\nformat "
            + format
            + " 1.0\ncomment made for a test\nelement vertex "
            + m.vertexCount()
            + "\nproperty float x\nproperty float y\nproperty uchar red\nproperty float z\n"
            + "element face "
            + m.triangleCount()
            + "\nproperty list uchar int vertex_indices\nproperty short part\nend_header\n";
    return format.equals("ascii")
        ? plyText(m, head)
        : plyBytes(m, head, format.equals("binary_big_endian"));
  }

  private static byte[] plyText(TriangleMesh m, String head) {
    StringBuilder s = new StringBuilder(head);
    for (int v = 0; v < m.vertexCount(); v++) {
      s.append(at(m, v, 0) + " " + at(m, v, 1) + " 255 " + at(m, v, 2) + "\n");
    }
    for (int t = 0; t < m.triangleCount(); t++) {
      s.append("3 " + m.corner(t, 0) + " " + m.corner(t, 1) + " " + m.corner(t, 2) + " 7\n");
    }
    return bytes(s);
  }

  private static byte[] plyBytes(TriangleMesh m, String head, boolean big) {
    byte[] h = bytes(head);
    ByteBuffer b = ByteBuffer.allocate(h.length + 13 * m.vertexCount() + 15 * m.triangleCount());
    b.order(big ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN).put(h);
    for (int v = 0; v < m.vertexCount(); v++) {
      b.putFloat(at(m, v, 0)).putFloat(at(m, v, 1)).put((byte) -1).putFloat(at(m, v, 2));
    }
    for (int t = 0; t < m.triangleCount(); t++) {
      b.put((byte) 3).putInt(m.corner(t, 0)).putInt(m.corner(t, 1)).putInt(m.corner(t, 2));
      b.putShort((short) 7);
    }
    return b.array();
  }

  static byte[] threeMf(TriangleMesh m) {
    return zip(
        "_rels/.rels",
        RELATIONS,
        "3D/3dmodel.model",
        model(
            "unit=\"millimeter\"",
            "<object id=\"1\" type=\"model\">" + mesh(m) + "</object>",
            "<item objectid=\"1\"/>"));
  }

  static String model(String attributes, String resources, String build) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<model "
        + attributes
        + " "
        + CORE
        + ">\n<resources>"
        + resources
        + "</resources>\n<build>"
        + build
        + "</build></model>";
  }

  static String mesh(TriangleMesh m) {
    StringBuilder s = new StringBuilder("<mesh><vertices>");
    for (int v = 0; v < m.vertexCount(); v++) {
      s.append("<vertex x=\"" + at(m, v, 0) + "\" y=\"" + at(m, v, 1) + "\"");
      s.append(" z=\"" + at(m, v, 2) + "\"/>\n");
    }
    s.append("</vertices><triangles>");
    for (int t = 0; t < m.triangleCount(); t++) {
      s.append("<triangle v1=\"" + m.corner(t, 0) + "\" v2=\"" + m.corner(t, 1) + "\"");
      s.append(" v3=\"" + m.corner(t, 2) + "\"/>\n");
    }
    return s.append("</triangles></mesh>").toString();
  }

  /** Names and texts by turns. */
  static byte[] zip(String... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (int i = 0; i < parts.length; i += 2) {
        ZipEntry entry = new ZipEntry(parts[i]);
        entry.setTime(0);
        zip.putNextEntry(entry);
        new DataOutputStream(zip).write(parts[i + 1].getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  static byte[] bytes(CharSequence s) {
    return s.toString().getBytes(StandardCharsets.UTF_8);
  }
}

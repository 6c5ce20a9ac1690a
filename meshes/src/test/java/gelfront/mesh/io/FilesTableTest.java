// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.check.PreparedMesh;
import gelfront.mesh.shape.Solids;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code docs/files.md} says what really happens, word for word. With {@code -Dfiles.write=true}
 * its table is written anew: look at it, then commit.
 */
class FilesTableTest {
  private static final Path DOCS = Path.of("docs", "files.md");
  private static final String HEAD = "| file | what happens | words shown |\n|---|---|---|\n";
  private static final TriangleMesh BOX = Solids.box(Vec3.ZERO, new Vec3(20e-3, 10e-3, 5e-3));

  @TempDir private Path folder;

  @Test
  void tableSaysWhatHappens() throws IOException {
    StringBuilder table = new StringBuilder(HEAD);
    for (Map.Entry<String, byte[]> e : files().entrySet()) {
      table.append("| " + e.getKey() + " | " + outcome(e.getValue()) + " |\n");
    }
    String page = Files.readString(DOCS).replace("\r\n", "\n");
    int from = page.indexOf(HEAD);
    int to = page.indexOf("\n\n", from) + 1;
    if (Boolean.getBoolean("files.write")) {
      Files.writeString(DOCS, page.substring(0, from) + table + page.substring(to));
    } else {
      assertEquals(table.toString(), page.substring(from, to));
    }
  }

  private static Map<String, byte[]> files() {
    Map<String, byte[]> f = new LinkedHashMap<>();
    f.put("sound, in any of the formats", MeshTexts.threeMf(BOX));
    text(f);
    binary(f);
    other(f);
    shapes(f);
    return f;
  }

  private static void text(Map<String, byte[]> f) {
    String stl = new String(MeshTexts.textStl(BOX), java.nio.charset.StandardCharsets.UTF_8);
    f.put(
        "text STL with CR LF, tabs and capitals",
        MeshTexts.bytes(stl.replace("\n", "\r\n\t").toUpperCase(java.util.Locale.ROOT)));
    f.put("text STL cut short", MeshTexts.bytes(stl.substring(0, stl.length() / 2)));
    f.put("text STL without its endsolid", MeshTexts.bytes(stl.replace("endsolid part\n", "")));
    f.put("text STL with decimal commas", MeshTexts.bytes(stl.replace("20.0", "20,0")));
    f.put("text STL with NaN", MeshTexts.bytes(stl.replace("20.0", "NaN")));
    f.put("text of 16 bits a letter", stl.getBytes(java.nio.charset.StandardCharsets.UTF_16));
    f.put("a text of another kind", MeshTexts.bytes("hello\n"));
    f.put("OBJ with a face of unknown points", MeshTexts.bytes("v 0 0 0\nf 1 2 3\n"));
    f.put("OBJ with curved surfaces", MeshTexts.bytes("v 0 0 0\ncstype bspline\n"));
    f.put(
        "PLY that promises 4 billion points",
        MeshTexts.bytes(
            """
            ply
            format ascii 1.0
            element vertex 4294967295
            property float x
            property float y
            property float z
            end_header
            0 0 0
            """));
  }

  private static void binary(Map<String, byte[]> f) {
    byte[] stl = MeshTexts.binaryStl(BOX);
    f.put("empty", new byte[0]);
    f.put("binary STL with bytes behind its end", Arrays.copyOf(stl, stl.length + 7));
    f.put("binary STL whose count is too low", count(stl, 3));
    f.put("binary STL whose count is too high", count(stl, 13));
    f.put("binary STL that promises 4 billion triangles", count(stl, -1));
    f.put("binary STL cut short", Arrays.copyOf(stl, stl.length - 70));
    byte[] nan = stl.clone();
    ByteBuffer.wrap(nan).order(ByteOrder.LITTLE_ENDIAN).putFloat(100, Float.NaN);
    f.put("binary STL with NaN", nan);
  }

  private static byte[] count(byte[] stl, int count) {
    byte[] out = stl.clone();
    ByteBuffer.wrap(out).order(ByteOrder.LITTLE_ENDIAN).putInt(80, count);
    return out;
  }

  private static void other(Map<String, byte[]> f) {
    f.put("a zip archive that is no 3MF", MeshTexts.zip("a.txt", "hello"));
    f.put(
        "3MF with a document type",
        model("<!DOCTYPE model [<!ENTITY e SYSTEM \"file:///x\">]>" + MeshTexts.model("", "", "")));
    f.put(
        "3MF whose model lies elsewhere",
        MeshTexts.zip(
            "_rels/.rels",
            MeshTexts.RELATIONS.replace("Target=", "TargetMode=\"External\" Target=")));
    f.put(
        "3MF that needs an unknown extension",
        model(MeshTexts.model("xmlns:b=\"urn:beams\" requiredextensions=\"b\"", "", "")));
    f.put(
        "3MF with an object in itself",
        model(
            MeshTexts.model(
                "",
                "<object id=\"1\"><components><component objectid=\"1\"/></components></object>",
                "<item objectid=\"1\"/>")));
    f.put("3MF that builds nothing", model(MeshTexts.model("", "", "")));
  }

  private static byte[] model(String model) {
    return MeshTexts.zip("_rels/.rels", MeshTexts.RELATIONS, "3D/3dmodel.model", model);
  }

  private static void shapes(Map<String, byte[]> f) {
    int[] c = BOX.copyTriangles();
    int[] turned = c.clone();
    turned[0] = c[1];
    turned[1] = c[0];
    int[] twice = Arrays.copyOf(c, c.length + 3);
    System.arraycopy(c, 0, twice, c.length, 3);
    f.put("a hole", stl(Arrays.copyOf(c, c.length - 3)));
    f.put("a triangle facing the wrong way", stl(turned));
    f.put("a triangle twice", stl(twice));
    f.put(
        "two bodies that overlap",
        MeshTexts.binaryStl(
            BOX.plus(Solids.box(new Vec3(5e-3, 3e-3, 2e-3), new Vec3(30e-3, 14e-3, 9e-3)))));
    f.put("a part of 0.2 mm, no unit stated", MeshTexts.binaryStl(sized(0.01)));
    f.put("a part of 2 m, no unit stated", MeshTexts.binaryStl(sized(100)));
    f.put(
        "a part far from the origin",
        MeshTexts.binaryStl(Solids.box(new Vec3(50, 50, 50), new Vec3(50.02, 50.01, 50.005))));
    f.put("a flat sheet: one face of a solid", stl(Arrays.copyOf(c, 6)));
    f.put(
        "a flat sheet, drawn from both sides",
        MeshTexts.binaryStl(Solids.box(Vec3.ZERO, new Vec3(20e-3, 10e-3, 1e-12))));
    f.put("a single skin, bent but open along its rim", stl(Arrays.copyOf(c, 12)));
    f.put(
        "a solid, and a flat sheet beside it",
        MeshTexts.binaryStl(
            BOX.plus(Solids.box(new Vec3(0, 0, 9e-3), new Vec3(20e-3, 10e-3, 9e-3 + 1e-12)))));
  }

  private static byte[] stl(int[] corners) {
    return MeshTexts.binaryStl(new TriangleMesh(BOX.copyVertices(), corners));
  }

  private static TriangleMesh sized(double times) {
    return Solids.box(Vec3.ZERO, new Vec3(20e-3 * times, 10e-3 * times, 5e-3 * times));
  }

  private String outcome(byte[] content) throws IOException {
    Path file = Files.write(folder.resolve("part.stl"), content);
    try {
      RawMesh raw = MeshFiles.load(file, Optional.empty());
      PreparedMesh p = MeshRepair.prepare(raw.mesh(), MeshRepair.WELD);
      List<String> told = new ArrayList<>(raw.notes());
      told.addAll(p.report().reasons());
      told.addAll(p.repairs());
      return (told.isEmpty() ? "accepted" : "accepted and told") + " | " + String.join("; ", told);
    } catch (MeshException e) {
      return "refused | " + e.getMessage().replace("part.stl: ", "");
    }
  }
}

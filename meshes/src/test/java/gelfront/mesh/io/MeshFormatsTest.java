// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.check.MeshCheck;
import gelfront.mesh.check.MeshRepair;
import gelfront.mesh.shape.Solids;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeshFormatsTest {
  private static final TriangleMesh BALL = Solids.sphere(new Vec3(3e-3, 0, 0), 10e-3, 12);
  private static final TriangleMesh BOX = Solids.box(Vec3.ZERO, new Vec3(20e-3, 10e-3, 5e-3));

  @TempDir private Path folder;

  @Test
  void everyFormatGivesTheSameClosedMesh() throws IOException {
    for (Map.Entry<String, byte[]> e : MeshTexts.all(BALL).entrySet()) {
      RawMesh raw = load(e.getValue(), Optional.empty());

      assertEquals(BALL.volume(), raw.mesh().volume(), 1e-6 * BALL.volume(), e.getKey());
      assertEquals(BALL.vertexCount(), raw.mesh().vertexCount(), e.getKey());
      assertTrue(MeshCheck.inspect(raw.mesh()).closed(), e.getKey());
      assertEquals(List.of(), raw.notes(), e.getKey());
    }
  }

  @Test
  void unitStatedByTheUserCounts() throws IOException {
    Map<String, byte[]> all = MeshTexts.all(BALL);
    for (String name : List.of("text.obj", "text.ply", "big.ply", "text.stl")) {
      double v = load(all.get(name), Optional.of(LengthUnit.INCH)).mesh().volume();

      assertEquals(Math.pow(25.4, 3) * BALL.volume(), v, 1e-6 * v, name);
    }
  }

  @Test
  void objWithPolygonsAndLinesCarriedOn() throws IOException {
    String corners =
        "v 0 0 0\nv 20 0 0\nv 20 10 0\nv 0 10 0\nv 0 0 5\nv 20 0 5\nv 20 10 5\nv 0 10 5\n";
    String faces =
        "f 4 3 2 1\nf 5 6 7 8 # top\nf 1 2 \\\n 6 5\nf -7 3 7 6\nf 3 4 8 7\nf 4/1 1/2 5/3 8/4\n";

    TriangleMesh mesh = read("g box\n" + corners + "usemtl steel\ns off\n" + faces);

    assertEquals(BOX.volume(), mesh.volume(), 1e-12 * BOX.volume());
    assertTrue(MeshCheck.inspect(mesh).closed());
  }

  @Test
  void hollowPolygonIsCutIntoTrianglesThatFaceAlike() throws IOException {
    // an L of 30 square units by 10, both caps with seven corners, one of them on an edge
    String[] l = {"0 0", "10 0", "10 1", "5 1", "1 1", "1 20", "0 20"};
    StringBuilder s = new StringBuilder();
    for (int z = 0; z <= 10; z += 10) {
      for (String p : l) {
        s.append("v " + p + " " + z + "\n");
      }
    }
    s.append("f 7 6 5 4 3 2 1\nf 8 9 10 11 12 13 14\n");
    for (int i = 0; i < 7; i++) {
      s.append(
          String.format(
              Locale.ROOT, "f %d %d %d %d%n", 1 + i, 1 + (i + 1) % 7, 8 + (i + 1) % 7, 8 + i));
    }

    TriangleMesh mesh = read(s.toString());

    assertEquals(290e-9, mesh.volume(), 1e-18);
    assertEquals((2 * 29 + 10 * 60) * 1e-6, mesh.area(), 1e-15);
  }

  @ParameterizedTest
  @CsvSource({
    "f 1 2 3,line 1: there is no point number 1 so far: there are 0",
    "v 1 2,'line 1: a point needs x, y and z'",
    "v 1 2 3;f 1 1,line 2: a face has 2 corners: three are needed",
    "v 1 2 3;f 1 1 0,line 2: there is no point number 0",
    "v 1 2 3;f 1 1 99999999999999999999,line 2: not a number of a point",
    "v 1 2 nan,line 1: not a number: \"nan\"",
    "v 1 2 1e999,line 1: a coordinate is 1e999",
    "v 1 2 3;surf 0 1,line 2: holds curved surfaces (surf)",
    "v 1 2 3;hello,line 2: no statement of an OBJ file: \"hello\"",
    "v 1 2 3,no faces in it",
  })
  void badObjIsRefusedWithItsLine(String text, String message) {
    assertRefused(text.replace(';', '\n') + "\n", message);
  }

  @ParameterizedTest
  @CsvSource({
    "element vertex 162,element vertex 4294967295,more than the file holds",
    "element face 320,element face 99999999999999999999,an element needs a name and a number",
    "property float x,property quad x,no type of a PLY file",
    "property float y,property float w,its vertices have no y",
    "vertex_indices,vertex_names,have no list vertex_indices",
    "ascii,ebcdic,line 2: no format",
    "end_header,end_of_head,no line of a PLY head",
    "3 0 ,2 0 ,a face has 2 corners",
    "3 0 ,3 9999 ,names vertex 9999.0",
    "3 0 ,3 0.5 ,names vertex 0.5",
    "3 0 ,3.5 0 ,corners",
  })
  void badPlyIsRefused(String good, String bad, String message) {
    String all = new String(MeshTexts.ply(ICO, "ascii"), java.nio.charset.StandardCharsets.UTF_8);
    String from =
        good.replace("162", "" + ICO.vertexCount()).replace("320", "" + ICO.triangleCount());
    assertTrue(all.contains(from), from);

    assertRefused(all.replaceFirst(from, bad), message);
  }

  private static final TriangleMesh ICO = Solids.sphere(Vec3.ZERO, 10e-3, 8);

  @Test
  void listsOfOtherElementsArePassedOver() throws IOException {
    String text =
        """
        ply
        format ascii 1.0
        element camera 1
        property list uchar float where
        element vertex 4
        property double x
        property double y
        property double z
        element face 4
        property list uint8 uint32 vertex_index
        end_header
        3 1 2 3
        0 0 0
        10 0 0
        0 10 0
        0 0 10
        3 0 2 1
        3 0 1 3
        3 1 2 3
        3 2 0 3
        """
            .replace("\n", "\r\n");

    assertEquals(1e-6 / 6, read(text).volume(), 1e-16);
  }

  @Test
  void threeMfAppliesComponentsTransformsAndMirrors() throws IOException {
    String box = "<object id=\"1\">" + MeshTexts.mesh(BOX) + "</object>";
    // twice as long on x, mirrored on y, moved by 100 on z
    String pair =
        "<object id=\"2\"><components><component objectid=\"1\"/><component objectid=\"1\""
            + " transform=\"2 0 0 0 -1 0 0 0 1 0 0 100\"/></components></object>";

    TriangleMesh mesh =
        load3mf("", box + pair, "<item objectid=\"2\" transform=\"0 1 0 -1 0 0 0 0 1 7 0 0\"/>")
            .mesh();

    assertEquals(3 * BOX.volume(), mesh.volume(), 1e-9 * BOX.volume());
    assertEquals(2, MeshRepair.prepare(mesh, 0).report().shells().size());
    // x' = -y + 7, y' = x: y from -10 to 10 becomes x' from -3 to 17, x to 40 becomes y' to 40
    assertEquals(-3e-3, mesh.box().min().x(), 1e-9);
    assertEquals(17e-3, mesh.box().max().x(), 1e-9);
    assertEquals(40e-3, mesh.box().max().y(), 1e-9);
    assertEquals(105e-3, mesh.box().max().z(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"centimeter,10", "inch,25.4", "micron,0.001", "foot,304.8", "meter,1000"})
  void threeMfKnowsItsUnit(String unit, double factor) throws IOException {
    double size = 50 / factor;
    TriangleMesh box = Solids.box(Vec3.ZERO, new Vec3(1e-3 * size, 1e-3 * size, 1e-3 * size));

    RawMesh raw =
        load3mf(
            "unit=\"" + unit + "\"",
            "<object id=\"1\">" + MeshTexts.mesh(box) + "</object>",
            "<item objectid=\"1\"/>");

    assertEquals(50e-3, raw.mesh().box().size().x(), 1e-7);
  }

  @Test
  void threeMfThatContradictsTheStatedUnitIsRefused() {
    byte[] content = MeshTexts.threeMf(BOX);

    MeshException e =
        assertThrows(MeshException.class, () -> load(content, Optional.of(LengthUnit.INCH)));

    assertTrue(e.getMessage().contains("states its unit, mm, and it is not inch"), e.getMessage());
  }

  @Test
  void threeMfWithObjectsInOtherPartsAndSupport() throws IOException {
    String p = "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";
    String root =
        MeshTexts.model(
            "xmlns:p=\"" + p + "\" requiredextensions=\"p\"",
            "<object id=\"1\"><components><component p:path=\"/3D/a.model\" objectid=\"7\"/>"
                + "</components></object><object id=\"2\" type=\"support\">"
                + MeshTexts.mesh(BALL)
                + "</object>",
            "<item objectid=\"1\"/><item objectid=\"2\"/>");
    String other = MeshTexts.model("", "<object id=\"7\">" + MeshTexts.mesh(BOX) + "</object>", "");

    RawMesh raw =
        load(
            MeshTexts.zip(
                "3D/a.model", other, "_rels/.rels", MeshTexts.RELATIONS, "3D/3dmodel.model", root),
            Optional.empty());

    assertEquals(BOX.volume(), raw.mesh().volume(), 1e-9 * BOX.volume());
    assertEquals(
        List.of("1 objects that are support, surface or other were left out"), raw.notes());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<object id='1'/>|<item objectid='9'/>|there is no object number \"9\"",
        "<object id='1'><components><component objectid='1'/></components></object>"
            + "|<item objectid='1'/>|is part of itself",
        "<object id='1'/>||its build has no item",
        "<object id='1'/>|<item objectid='1'/>|no triangles",
        "<object id='1'/>|<item objectid='1' transform='1 0 0'/>|a transform has 3 numbers",
        "<object id='1'/>|<item objectid='1' transform='0 0 0 0 0 0 0 0 0 0 0 0'/>|squeezes",
        "<object id='1'/><object id='1'/>|<item objectid='1'/>|two objects have the number",
        "<object id='1'><mesh><vertices/><triangles><triangle v1='0' v2='1' v3='2'/></triangles>"
            + "</mesh></object>|<item objectid='1'/>|is none of the 0 vertices",
        "<object id='1'><mesh><vertices><vertex x='1' y='NaN' z='1'/></vertices></mesh></object>"
            + "|<item objectid='1'/>|y is no number: \"NaN\"",
        "<object id='1'><mesh><beamlattice/></mesh></object>|<item objectid='1'/>|beamlattice",
      })
  void badThreeMfIsRefused(String text) {
    String[] s = text.split("\\|", -1);

    MeshException e = assertThrows(MeshException.class, () -> load3mf("", s[0], s[1]));

    assertTrue(e.getMessage().contains(s[2]), e.getMessage());
  }

  private RawMesh load3mf(String attributes, String resources, String build) throws IOException {
    return load(
        MeshTexts.zip(
            "_rels/.rels",
            MeshTexts.RELATIONS,
            "3D/3dmodel.model",
            MeshTexts.model(attributes, resources, build)),
        Optional.empty());
  }

  private TriangleMesh read(String text) throws IOException {
    return load(MeshTexts.bytes(text), Optional.empty()).mesh();
  }

  private RawMesh load(byte[] content, Optional<LengthUnit> unit) throws IOException {
    return MeshFiles.load(Files.write(folder.resolve("part.any"), content), unit);
  }

  private void assertRefused(String text, String part) {
    MeshException e = assertThrows(MeshException.class, () -> read(text));

    assertTrue(e.getMessage().contains(part), e.getMessage());
    assertEquals(1, e.getMessage().lines().count());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeshFilesTest {
  private static final String FACET =
      "facet normal 0 0 1 outer loop vertex 0 0 0\nvertex 20 0 0\nvertex 0 20 0\nendloop endfacet\n";

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(LengthUnit.class)
  void whatIsWrittenIsReadBack(LengthUnit unit) throws IOException {
    TriangleMesh box = box(60e-3);

    TriangleMesh back = read(binary(box, unit), Optional.of(unit));

    assertEquals(8, back.vertexCount());
    assertEquals(box.volume(), back.volume(), 1e-6 * box.volume());
    assertEquals(60e-3, back.box().size().x(), 1e-8);
  }

  @Test
  void binaryWhoseHeaderSaysSolidIsBinary() throws IOException {
    byte[] content = binary(box(60e-3), LengthUnit.MM);
    byte[] title = "solid facet normal".getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(title, 0, content, 0, title.length);

    assertEquals(12, read(content, Optional.empty()).triangleCount());
  }

  @Test
  void textInAnyCaseWithNamesAndSeveralSolids() throws IOException {
    String one =
        "SOLID my part facet\r\n" + FACET.toUpperCase(java.util.Locale.ROOT) + "EndSolid x\n";

    TriangleMesh mesh = read(text(one + one), Optional.empty());

    assertEquals(2, mesh.triangleCount());
    assertEquals(3, mesh.vertexCount());
  }

  @Test
  void zeroAndMinusZeroAreOneCorner() throws IOException {
    String other = FACET.replace("vertex 0 0 0", "vertex -0 -0.0 0");

    assertEquals(
        3, read(text("solid\n" + FACET + other + "endsolid\n"), Optional.empty()).vertexCount());
  }

  @ParameterizedTest
  @CsvSource({
    "vertex 20 0 0,vertex 20 0 nan,line 3: not a number: \"nan\"",
    "vertex 20 0 0,vertex 20 0 1e999,line 3: a coordinate is 1e999",
    "vertex 20 0 0,vertex 20 zero 0,line 3: not a number: \"zero\"",
    "vertex 20 0 0,vertex 20 0,line 4: not a number: \"vertex\"",
    "vertex 20 0 0,,'line 4: expected vertex, found \"endloop\"'",
    "endfacet,,'line 6: expected endfacet, found \"endsolid\"'",
    "endsolid,,the file is cut short",
  })
  void badTextIsRefusedWithItsLine(String good, String bad, String message) {
    String all = "solid\n" + FACET + "endsolid\n";
    String broken = all.replace(good, bad == null ? "" : bad);
    if (good.startsWith("vertex") && bad == null) {
      broken = all.replace("vertex 20 0 0\nvertex 0 20 0\n", "vertex 20 0 0\n");
    }

    assertRefused(text(broken), message);
  }

  @Test
  void rubbishAfterTheEndIsRefused() {
    assertRefused(
        text("solid\n" + FACET + "endsolid\nmore\n"),
        "line 7: expected facet or endsolid, found \"more\"");
  }

  @Test
  void textWithoutTrianglesIsRefused() {
    assertRefused(text("solid nothing\nendsolid nothing\n"), "no triangles in it");
  }

  @Test
  void cutShortBinaryIsRefused() throws IOException {
    byte[] all = binary(box(60e-3), LengthUnit.MM);

    assertRefused(Arrays.copyOf(all, all.length - 60), "promises 12 triangles", "cut short");
  }

  @Test
  void bytesAfterTheLastTriangleAreTold() throws IOException {
    byte[] all = binary(box(60e-3), LengthUnit.MM);

    RawMesh raw = load(Arrays.copyOf(all, all.length + 7));

    assertEquals(12, raw.mesh().triangleCount());
    assertEquals(List.of("7 bytes after the last triangle were not read"), raw.notes());
  }

  @Test
  void countThatIsTooLowIsCorrectedAndTold() throws IOException {
    byte[] all = binary(box(60e-3), LengthUnit.MM);
    ByteBuffer.wrap(all).order(ByteOrder.LITTLE_ENDIAN).putInt(80, 5);

    RawMesh raw = load(all);

    assertEquals(12, raw.mesh().triangleCount());
    assertEquals(
        List.of("the header promises 5 triangles, the file holds 12: all were taken"), raw.notes());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\r", "\r\n", "\t\n", " \n\n ", " "})
  void textWithAnyWhiteSpace(String end) throws IOException {
    String one = ("solid a\n" + FACET + "endsolid a\n").replace("\n", end);

    RawMesh raw = load(text(one.replace(" 20 ", "\t2.0E+01 ")));

    assertEquals(1, raw.mesh().triangleCount());
    assertEquals(20e-3, raw.mesh().box().size().x(), 1e-12);
  }

  @Test
  void textWithMarkOfItsCodeStrangeNameAndPaddingAtItsEnd() throws IOException {
    String all = "\ufeffsolid b\u00e4it <b>\n" + FACET + "end solid\n\0\0\0\032";

    assertEquals(1, load(all.getBytes(StandardCharsets.UTF_8)).mesh().triangleCount());
  }

  @Test
  void lettersOutsideAsciiAreRefusedInPlainWords() {
    assertRefused(
        "solid\nfac\u00e9t".getBytes(StandardCharsets.UTF_8),
        "line 2: expected facet or endsolid, found \"fac??t\"");
  }

  @Test
  void decimalCommasAreNamed() {
    assertRefused(text("solid\n" + FACET.replace("vertex 20", "vertex 20,5")), "a decimal comma?");
  }

  @Test
  void textOfSixteenBitsIsNamed() {
    assertRefused(("solid\n" + FACET).getBytes(StandardCharsets.UTF_16), "16 bits a letter");
  }

  @Test
  void absurdCountIsRefusedWithoutAskingForMemory() throws IOException {
    byte[] all = binary(box(60e-3), LengthUnit.MM);
    ByteBuffer.wrap(all).putInt(80, -1);

    assertRefused(all, "promises 4294967295 triangles");
  }

  @Test
  void binaryWithoutTrianglesIsRefused() {
    assertRefused(new byte[84], "no triangles in it");
  }

  @Test
  void notANumberIsRefusedWithItsTriangle() throws IOException {
    byte[] all = binary(box(60e-3), LengthUnit.MM);
    int at = 84 + 3 * 50 + 12 + 4;
    ByteBuffer.wrap(all).order(ByteOrder.LITTLE_ENDIAN).putFloat(at, Float.NaN);

    assertRefused(all, "triangle 4 (byte " + at + "): a coordinate is NaN");
  }

  @Test
  void somethingElseIsRefused() {
    assertRefused(text("# a list of points\n1 2 3\n"), "not an STL, 3MF, OBJ or PLY file");
  }

  @Test
  void whatPeopleHandOverInsteadIsTold() throws IOException {
    assertRefused(text("ISO-10303-21;\nHEADER;\n"), "a STEP drawing: save the part as STL or 3MF");
    assertRefused(text("%PDF-1.7\n"), "a PDF page: save the part");
    assertRefused(text("<!DOCTYPE html><html></html>"), "a web page: was the download refused?");
    byte[] picture = new byte[2000];
    picture[0] = (byte) 0x89;
    System.arraycopy(text("PNG"), 0, picture, 1, 3);
    assertRefused(picture, "a picture: save the part as STL or 3MF");
    assertRefused(new byte[] {31, -117, 8, 0}, "packed: unpack it first");
  }

  @Test
  void emptyMissingAndFolder() throws IOException {
    Path empty = Files.createFile(folder.resolve("empty.stl"));

    assertTrue(refusal(empty, Optional.empty()).endsWith("empty.stl: the file is empty"));
    assertTrue(
        refusal(folder.resolve("none.stl"), Optional.empty()).endsWith("there is no such file"));
    assertTrue(refusal(folder, Optional.empty()).endsWith("is not a file"));
  }

  @ParameterizedTest
  @CsvSource({"INCH,4.00 mm,inches", "M,0.102 mm,metres"})
  void sizeThatLooksLikeAnotherUnitIsRefused(LengthUnit unit, String size, String guess)
      throws IOException {
    byte[] content = binary(box(0.1016), unit);

    assertRefused(content, size, guess, "state the unit (mm, cm, m or inch)");
    assertEquals(0.1016, read(content, Optional.of(unit)).box().size().x(), 1e-7);
  }

  @Test
  void fourMetresInMillimetresAreRefused() throws IOException {
    assertRefused(binary(box(4), LengthUnit.MM), "4000 mm long", "state the unit");
  }

  @Test
  void noUnitExcusesAPartOfKilometres() throws IOException {
    Path file = Files.write(folder.resolve("part.stl"), binary(box(1e5), LengthUnit.MM));

    String message = refusal(file, Optional.of(LengthUnit.M));

    assertTrue(message.endsWith("the part would be 1.000e+08 m long"), message);
  }

  private TriangleMesh read(byte[] content, Optional<LengthUnit> unit) throws IOException {
    return MeshFiles.read(Files.write(folder.resolve("part.stl"), content), unit);
  }

  private RawMesh load(byte[] content) throws IOException {
    return MeshFiles.load(Files.write(folder.resolve("part.stl"), content), Optional.empty());
  }

  private void assertRefused(byte[] content, String... parts) {
    MeshException e = assertThrows(MeshException.class, () -> read(content, Optional.empty()));

    assertTrue(e.getMessage().startsWith("part.stl: "), e.getMessage());
    assertTrue(e.getMessage().lines().count() == 1, e.getMessage());
    for (String part : parts) {
      assertTrue(e.getMessage().contains(part), e.getMessage());
    }
  }

  private static String refusal(Path file, Optional<LengthUnit> unit) {
    return assertThrows(MeshException.class, () -> MeshFiles.read(file, unit)).getMessage();
  }

  private static byte[] text(String s) {
    return s.getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] binary(TriangleMesh mesh, LengthUnit unit) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    MeshFiles.writeStl(mesh, out, unit);
    return out.toByteArray();
  }

  private static TriangleMesh box(double length) {
    return Solids.box(Vec3.ZERO, new Vec3(length, 0.2 * length, 0.1 * length));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.shape.Solids;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Files made to do harm: nothing is fetched, written, waited for or set aside without limit. */
@Timeout(60)
class HostileMeshesTest {
  private static final TriangleMesh BOX = Solids.box(Vec3.ZERO, new Vec3(20e-3, 10e-3, 5e-3));

  @TempDir private Path folder;

  @Test
  void outsideEntitiesAreRefused() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "1000");
    String attack =
        "<!DOCTYPE model [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>" + model("&e;");

    String message = refusal3mf(attack);

    assertTrue(message.contains("document type declaration"), message);
  }

  @Test
  void entitiesThatDoubleThemselvesAreRefused() {
    StringBuilder s = new StringBuilder("<!DOCTYPE model [<!ENTITY a0 \"1\">");
    for (int i = 1; i < 40; i++) {
      s.append("<!ENTITY a" + i + " \"&a" + (i - 1) + ";&a" + (i - 1) + ";\">");
    }

    assertTrue(refusal3mf(s + "]>" + model("&a39;")).contains("document type declaration"));
  }

  @Test
  void unknownEntityIsRefused() {
    assertTrue(refusal3mf(model("&e;")).contains("line"));
  }

  private static String model(String x) {
    return "<model "
        + MeshTexts.CORE
        + "><resources><object id=\"1\"><mesh><vertices><vertex x=\""
        + x
        + "\" y=\"0\" z=\"0\"/></vertices></mesh></object></resources></model>";
  }

  @Test
  void zipBombIsRefusedAtTheStatedLimit() throws IOException {
    byte[] bomb = bomb("3D/3dmodel.model", "<!-- -->".getBytes(StandardCharsets.US_ASCII));

    String message = refusal(bomb);

    assertTrue(bomb.length < 500_000, "small as a file: " + bomb.length);
    assertTrue(message.contains("unpacks to more than"), message);
  }

  @Test
  void bombBesideTheModelIsRefusedToo() throws IOException {
    String message = refusal(bomb("Metadata/picture.png", new byte[8]));

    assertTrue(message.contains("unpacks to more than"), message);
  }

  /** A part of 100 MiB before the relations and the model. */
  private static byte[] bomb(String name, byte[] text) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry(name));
      byte[] block = new byte[1 << 16];
      for (int i = 0; i < block.length; i++) {
        block[i] = text[i % text.length];
      }
      for (int i = 0; i < 1600; i++) {
        zip.write(block);
      }
      zip.closeEntry();
      zip.putNextEntry(new ZipEntry("_rels/.rels"));
      zip.write(MeshTexts.bytes(MeshTexts.RELATIONS));
      zip.closeEntry();
    }
    return out.toByteArray();
  }

  @Test
  void endlessTagIsRefused() {
    String message = refusal3mf("<model unit=\"" + "a".repeat(200_000) + "\">");

    assertTrue(message.contains("more than 64 KiB"), message);
  }

  @Test
  void componentsThatMultiplyAreRefused() {
    StringBuilder s = new StringBuilder("<object id=\"0\">" + MeshTexts.mesh(BOX) + "</object>");
    for (int i = 1; i < 20; i++) {
      s.append("<object id=\"" + i + "\"><components>");
      s.append(("<component objectid=\"" + (i - 1) + "\"/>").repeat(10));
      s.append("</components></object>");
    }

    String message = refusal3mf(MeshTexts.model("", s.toString(), "<item objectid=\"19\"/>"));

    assertTrue(message.contains("used more than 100000 times"), message);
  }

  @Test
  void namesThatClimbOutOfTheArchiveWriteNothing() throws IOException {
    byte[] content =
        MeshTexts.zip(
            "../../escaped.txt",
            "x",
            "/absolute.txt",
            "x",
            "_rels/.rels",
            MeshTexts.RELATIONS.replace("/3D/3dmodel.model", "/../../../../etc/passwd"));
    Path inside = Files.createDirectory(folder.resolve("inside"));
    Path file = Files.write(inside.resolve("part.3mf"), content);

    String message = refusal(file);

    assertTrue(message.contains("the archive has no part \"/../../../../etc/passwd\""), message);
    try (var all = Files.walk(folder)) {
      assertEquals(1, all.filter(Files::isRegularFile).count());
    }
  }

  @Test
  void modelElsewhereIsNotFetched() {
    String relations =
        MeshTexts.RELATIONS.replace(
            "Target=\"/3D/3dmodel.model\"",
            "Target=\"http://localhost:1/part.model\" TargetMode=\"External\"");

    assertTrue(refusal(MeshTexts.zip("_rels/.rels", relations)).contains("outside the file"));
  }

  @Test
  void neededExtensionIsRefusedByName() {
    String message =
        refusal3mf(MeshTexts.model("xmlns:s=\"urn:secret\" requiredextensions=\"s\"", "", ""));

    assertTrue(message.contains("needs the 3MF extension \"urn:secret\""), message);
  }

  @Test
  void otherArchivesAreNamed() {
    assertTrue(refusal(MeshTexts.zip("a.txt", "hello")).contains("a zip archive, but no 3MF"));
  }

  @Test
  void damagedArchiveIsRefused() {
    byte[] content = MeshTexts.threeMf(BOX);
    content[content.length / 2] ^= 0x55;

    assertFalse(refusal(content).isEmpty());
  }

  @Test
  void pipesAndDevicesAreNotOpened() throws IOException, InterruptedException {
    Path pipe = folder.resolve("pipe.stl");
    Assumptions.assumeTrue(Files.exists(Path.of("/usr/bin/mkfifo")));
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());

    assertTrue(refusal(pipe).endsWith("is not a file"));
    assertTrue(refusal(Path.of("/dev/zero")).endsWith("is not a file"));
  }

  @Test
  void linksLeadToFilesOnly() throws IOException {
    Path real = Files.write(folder.resolve("real.stl"), MeshTexts.binaryStl(BOX));
    Path good = Files.createSymbolicLink(folder.resolve("good.stl"), real);
    Path device = Files.createSymbolicLink(folder.resolve("zero.stl"), Path.of("/dev/zero"));
    Path self = folder.resolve("self.stl");
    Files.createSymbolicLink(self, self);

    assertEquals(12, MeshFiles.read(good, Optional.empty()).triangleCount());
    assertTrue(refusal(device).endsWith("is not a file"));
    assertTrue(refusal(self).endsWith("there is no such file"));
    Files.delete(device);
  }

  @Test
  void filesThatHideTheirSizeAreReadUpToALimit() {
    Path endless = Path.of("/proc/self/maps");
    Assumptions.assumeTrue(Files.isReadable(endless));

    assertFalse(refusal(endless).isEmpty());
  }

  @Test
  void fileThatIsTooLargeIsRefusedUnread() throws IOException {
    Path sparse = folder.resolve("sparse.stl");
    try (var channel =
        java.nio.channels.FileChannel.open(
            sparse,
            java.nio.file.StandardOpenOption.CREATE,
            java.nio.file.StandardOpenOption.WRITE)) {
      channel.write(java.nio.ByteBuffer.wrap(new byte[1]), 5L << 30);
    }

    assertTrue(refusal(sparse).contains("5120 MiB are more than a mesh file has"));
  }

  @Test
  void namesObeyNoTerminal() throws IOException {
    Path file = Files.writeString(folder.resolve("a\u001b[31m\nb.stl"), "nothing");

    String message = refusal(file);

    assertTrue(message.startsWith("a\ufffd[31m\ufffdb.stl: "), message);
  }

  @Test
  void textThatObeysATerminalIsQuotedPlainly() {
    String message = refusal("solid\n\u001b]0;gone\u0007 x".getBytes(StandardCharsets.UTF_8));

    assertTrue(message.chars().allMatch(c -> c >= 32 && c < 127), message);
  }

  private String refusal3mf(String model) {
    return refusal(MeshTexts.zip("_rels/.rels", MeshTexts.RELATIONS, "3D/3dmodel.model", model));
  }

  private String refusal(byte[] content) {
    try {
      return refusal(Files.write(folder.resolve("part.3mf"), content));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String refusal(Path file) {
    MeshException e =
        assertThrows(MeshException.class, () -> MeshFiles.read(file, Optional.empty()));
    assertEquals(1, e.getMessage().lines().count(), e.getMessage());
    return e.getMessage();
  }
}

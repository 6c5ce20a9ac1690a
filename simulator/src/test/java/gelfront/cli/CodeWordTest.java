// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class CodeWordTest {
  @TempDir private Path folder;

  private static String word(Path place) throws NoSuchAlgorithmException {
    MessageDigest sha = MessageDigest.getInstance("SHA-256");
    CodeWord.add(sha, place);
    return HexFormat.of().formatHex(sha.digest());
  }

  private Path classes(String run, String page) throws IOException {
    Path classes = Files.createTempDirectory(folder, "classes");
    Files.createDirectories(classes.resolve("gelfront/run"));
    Files.createDirectories(classes.resolve("gelfront/report"));
    Files.writeString(classes.resolve("gelfront/run/ShotRun.class"), run);
    Files.writeString(classes.resolve("gelfront/report/Page.class"), page);
    return classes;
  }

  private Path jar(String run) throws IOException {
    Path jar = Files.createTempFile(folder, "classes", ".jar");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(jar))) {
      out.putNextEntry(new ZipEntry("gelfront/run/ShotRun.class"));
      out.write(run.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
    return jar;
  }

  @Test
  void itChangesWithWhatRunsGoThroughAndWithNothingElse()
      throws IOException, NoSuchAlgorithmException {
    String word = word(classes("a", "x"));
    assertEquals(word, word(classes("a", "x")));
    assertNotEquals(word, word(classes("b", "x")));
    assertEquals(word, word(classes("a", "other page")));
    assertEquals(word(jar("a")), word(jar("a")));
    assertNotEquals(word(jar("a")), word(jar("b")));
    assertEquals(word(jar("a")), word(classes("a", "x")));
  }

  @Test
  void solversAndMaterialsCountAndPagesDont() {
    assertTrue(CodeWord.matters("gelfront/heat/SplitStepper.class"));
    assertTrue(CodeWord.matters("gelfront/mesh/TriangleMesh.class"));
    assertTrue(CodeWord.matters("gelfront/material/materials.toml"));
    assertFalse(CodeWord.matters("gelfront/report/report.css"));
    assertFalse(CodeWord.matters("META-INF/MANIFEST.MF"));
    assertTrue(CodeWord.of().matches(".+\\+[0-9a-f]{10}"), CodeWord.of());
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.result.ResultFolder;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What keeps the window from opening: one line, an exit code, no window needed. */
class ViewerAppTest {
  @TempDir Path folder;

  private record Ended(int code, String said) {}

  private static Ended run(String... args) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    int code = ViewerApp.run(new PrintStream(said, true, StandardCharsets.UTF_8), args);
    return new Ended(code, said.toString(StandardCharsets.UTF_8));
  }

  static Process start(String... args) throws IOException {
    return builder(args).start();
  }

  private static ProcessBuilder builder(String... args) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dgelfront.home="
                    + System.getProperty(
                        "gelfront.home", System.getProperty("java.io.tmpdir") + "/gelfront-tests"),
                "-cp",
                System.getProperty("java.class.path"),
                ViewerApp.class.getName()));
    command.addAll(List.of(args));
    return new ProcessBuilder(command);
  }

  private static void assertOneLine(String said, String holds) {
    assertEquals(1, said.lines().count(), said);
    assertTrue(said.startsWith("gelfront: ") && said.contains(holds), said);
  }

  @Test
  void aMissingFolderIsNamed() {
    Ended e = run(folder.resolve("none").toString());

    assertEquals(3, e.code());
    assertOneLine(e.said(), folder.resolve("none") + ": there is no such file");
  }

  @Test
  void aFolderThatIsNoResultIsNamed() {
    Ended e = run(folder.toString());

    assertEquals(3, e.code());
    assertOneLine(e.said(), folder.toString());
  }

  @Test
  void aDamagedFileIsNamed() throws IOException {
    Path ball = folder.resolve("ball");
    ResultFolder.write(ball, StoredBall.run(), List.of());
    Files.write(ball.resolve("fields.bin"), new byte[] {1, 2, 3});

    Ended e = run(ball.toString());

    assertEquals(3, e.code());
    assertOneLine(e.said(), "fields.bin");
  }

  @Test
  void aWrongCommandLineShowsTheRightOne() {
    for (String[] args :
        new String[][] {{"a", "b"}, {"--wrong", "a"}, {"a", "--screenshot"}, {"--show", "x"}}) {
      Ended e = run(args);

      assertEquals(2, e.code());
      assertOneLine(e.said(), "usage: gelfront view [MESH|CASE|RESULT]");
    }
  }

  @Test
  void aPictureThatCanNotBeWrittenIsNamed() throws ViewerException {
    BufferedImage picture = new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB);
    Path bad = folder.resolve("none").resolve("x.png");

    Screenshots.write(picture, folder.resolve("x.png"));
    ViewerException e = assertThrows(ViewerException.class, () -> Screenshots.write(picture, bad));

    assertTrue(Files.exists(folder.resolve("x.png")));
    assertEquals(4, e.exitCode());
    assertEquals(bad + ": can't be written: there is no such folder", e.getMessage());
  }

  @Test
  @Timeout(120)
  void anEngineThatFailsEndsWithACodeAndOneLine() throws Exception {
    Screen.needed();
    Path ball = folder.resolve("ball");
    ResultFolder.write(ball, StoredBall.run(), List.of());
    ProcessBuilder builder = builder(ball.toString());
    builder.environment().put("MESA_GL_VERSION_OVERRIDE", "2.0");

    Process p = builder.start();

    assertTrue(p.waitFor(100, TimeUnit.SECONDS));
    assertEquals(1, p.exitValue());
    String said = new String(p.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(said.contains("gelfront: the window failed: "), said);
    assertTrue(!said.contains("\tat "), "no stack trace: " + said);
  }

  @Test
  @Timeout(60)
  void withoutADisplayTheReportIsPointedTo() throws Exception {
    Path ball = folder.resolve("ball");
    ResultFolder.write(ball, StoredBall.run(), List.of());
    ProcessBuilder builder = builder(ball.toString());
    builder.environment().remove("DISPLAY");

    Process p = builder.start();

    assertTrue(p.waitFor(50, TimeUnit.SECONDS));
    assertEquals(1, p.exitValue());
    assertOneLine(new String(p.getErrorStream().readAllBytes(), StandardCharsets.UTF_8), "report");
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.study.StudyCases;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk of 64 KiB, and one that nothing may be written on; skipped where none can be mounted. */
final class FullDiskTest {
  @TempDir private Path folder;
  private Path disk;
  private String err = "";

  @BeforeEach
  void mount() throws IOException, InterruptedException {
    disk = Files.createDirectory(folder.resolve("disk"));
    Assumptions.assumeTrue(
        Files.exists(Path.of("/proc/mounts"))
            && system("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", disk.toString()) == 0,
        "no small disk can be mounted here");
  }

  @AfterEach
  void unmount() throws IOException, InterruptedException {
    system("umount", disk.toString());
  }

  private static int system(String... command) throws IOException, InterruptedException {
    try {
      return new ProcessBuilder(command)
          .redirectError(Redirect.DISCARD)
          .redirectOutput(Redirect.DISCARD)
          .start()
          .waitFor();
    } catch (IOException e) {
      return -1;
    }
  }

  @Test
  void aFullDiskIsToldAndLeftClean() throws IOException {
    Path pea = Files.writeString(folder.resolve("pea.toml"), CommandLineTest.CASE);
    Path result = disk.resolve("result");

    assertEquals(ExitCode.OUTPUT, run("check", pea.toString(), "-o", result.toString()), err);

    assertEquals(1, err.lines().count(), err);
    assertTrue(err.contains(result.toString()) && err.contains("No space left"), err);
    assertEquals(List.of(), listed());
  }

  @Test
  void aStudyOnAFullDiskIsToldAndKeepsWhatItHas() throws IOException {
    Path bean = Files.writeString(folder.resolve("bean.toml"), StudyCases.BEAN);
    Files.write(disk.resolve("filler"), new byte[44 * 1024]);
    Path study = disk.resolve("study");

    int code =
        run(
            "map",
            bean.toString(),
            "gate = 2..4 mm/2",
            "hold = 3..4 s/2",
            "--no-flow",
            "-o",
            study.toString());

    assertEquals(ExitCode.OUTPUT, code, err);
    assertEquals(1, err.lines().count(), err);
    assertTrue(err.contains("No space left"), err);
    try (Stream<Path> all = Files.walk(study)) {
      assertTrue(all.noneMatch(p -> p.getFileName().toString().startsWith(".")), "no debris");
    }
  }

  @Test
  void aReadOnlyFolderIsToldBeforeAnythingIsCalculated() throws IOException, InterruptedException {
    Path pea = Files.writeString(folder.resolve("pea.toml"), CommandLineTest.CASE);
    assertEquals(0, system("mount", "-o", "remount,ro", disk.toString()));

    assertEquals(
        ExitCode.OUTPUT, run("check", pea.toString(), "-o", disk.resolve("a/b").toString()), err);

    assertEquals(1, err.lines().count(), err);
    assertTrue(err.contains("nothing may be written in " + disk), err);
    assertEquals(
        ExitCode.OUTPUT,
        run("map", pea.toString(), "gate = 2..3 mm/2", "hold = 3..4 s/2", "-o", disk + "/study"));
    assertTrue(err.contains("can't be written"), err);
  }

  private List<String> listed() throws IOException {
    try (Stream<Path> s = Files.list(disk)) {
      return s.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  private int run(String... args) {
    Program.Answer a = Program.run((Object[]) args);
    err = a.err();
    return a.code();
  }
}

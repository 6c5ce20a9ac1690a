// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A study whose process is killed without warning goes on where it was. */
final class KilledStudyTest {
  private static final long PATIENCE = 120;

  @TempDir private Path folder;

  private static List<Path> kept(Path study) throws IOException {
    Path runs = study.resolve("runs");
    if (!Files.isDirectory(runs)) {
      return List.of();
    }
    try (Stream<Path> list = Files.list(runs)) {
      return list.filter(p -> p.toString().endsWith(".json")).sorted().toList();
    }
  }

  private String[] map(Path study) {
    return new String[] {
      "map",
      folder.resolve("pea.toml").toString(),
      "gate = 2..3 mm/4",
      "hold = 2..6 s/4",
      "--threads",
      "1",
      "-o",
      study.toString()
    };
  }

  /** Kills the child once two runs are kept; SIGKILL where there is such a thing. */
  private void startAndKill(Path study) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    List<String> words =
        Stream.concat(
                Stream.of(java, "-cp", System.getProperty("java.class.path"), Main.class.getName()),
                Stream.of(map(study)))
            .toList();
    Process child =
        new ProcessBuilder(words)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("out.txt").toFile())
            .start();
    try {
      long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
      while (kept(study).size() < 2 && child.isAlive() && System.nanoTime() < end) {
        Thread.sleep(20);
      }
    } finally {
      child.destroyForcibly();
    }
    assertTrue(child.waitFor(PATIENCE, TimeUnit.SECONDS), "it is gone");
  }

  @Test
  void whatWasKeptIsWholeAndUsedAgain() throws IOException, InterruptedException {
    Files.writeString(folder.resolve("pea.toml"), CommandLineTest.CASE);
    Path study = folder.resolve("study");
    startAndKill(study);
    List<Path> before = kept(study);
    assertTrue(before.size() >= 2 && before.size() < 16, () -> before.size() + " runs: " + said());
    for (Path run : before) {
      assertTrue(new ObjectMapper().readTree(run.toFile()).has("hash"), run.toString());
    }
    assertFalse(Files.exists(study.resolve("map-gate-size-shot-hold-time.csv")));

    Program.Answer a = Program.run((Object[]) map(study));

    String words = a.out();
    assertEquals(0, a.code(), a::err);
    assertTrue(words.contains(before.size() + " of them kept from earlier"), words);
    assertTrue(kept(study).containsAll(before));
    assertTrue(Files.exists(study.resolve("map-gate-size-shot-hold-time.csv")));
  }

  private String said() {
    try {
      return Files.readString(folder.resolve("out.txt"));
    } catch (IOException e) {
      return String.valueOf(e);
    }
  }
}

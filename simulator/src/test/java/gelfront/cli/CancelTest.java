// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Evidence;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ctrl-C at random times: the process ends by itself, with its code, and leaves nothing. How long
 * the slowest took goes to the evidence; the test itself only waits for a hang.
 */
final class CancelTest {
  private static final int TIMES = Boolean.getBoolean("slow") ? 20 : 1;
  private static final int HANG_SECONDS = 30;

  @TempDir private Path folder;

  @Test
  void anInterruptedCheckEndsSoonAndClean() throws IOException, InterruptedException {
    Assumptions.assumeTrue(Files.exists(Path.of("/bin/kill")), "no kill command");
    Assumptions.assumeFalse(ignoresInterrupts(), "started in the background of a shell script");
    String fine = CommandLineTest.CASE.replace("level = \"quick\"", "voxel = \"0.12 mm\"");
    Path pea = Files.writeString(folder.resolve("pea.toml"), fine);
    Random chance = new Random(11);
    long slowest = 0;
    for (int k = 0; k < TIMES; k++) {
      Process child =
          KillTest.start(Main.class, "check", pea.toString())
              .redirectOutput(Redirect.DISCARD)
              .start();
      Thread.sleep(1500 + chance.nextInt(6000));
      if (!child.isAlive()) {
        continue;
      }
      long start = System.nanoTime();
      new ProcessBuilder("kill", "-INT", String.valueOf(child.pid())).start().waitFor();
      boolean ended = child.waitFor(HANG_SECONDS, TimeUnit.SECONDS);
      child.destroyForcibly();
      assertTrue(ended, "it hangs");
      slowest = Math.max(slowest, (System.nanoTime() - start) / 1_000_000);
      assertEquals(ExitCode.CANCELLED, child.exitValue());
    }
    try (Stream<Path> s = Files.list(folder)) {
      assertEquals(List.of(pea), s.toList());
    }
    Evidence.write("cancel-ms", "slowest of " + TIMES + " interrupted checks to end, ms", slowest);
  }

  /** What a shell script starts with an ampersand ignores Ctrl-C, and so do its children. */
  private static boolean ignoresInterrupts() throws IOException {
    Path status = Path.of("/proc/self/status");
    return Files.exists(status)
        && Files.readAllLines(status).stream()
            .filter(l -> l.startsWith("SigIgn:"))
            .anyMatch(l -> (Long.parseUnsignedLong(l.substring(7).strip(), 16) & 2) != 0);
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import gelfront.evidence.Evidence;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Case files changed by chance end in a case or in mistakes told by line: no crash, no hang, no
 * hunger for memory. With {@code -Dslow=true} many more of them.
 */
final class CaseFuzzTest {
  private static final int FILES = Boolean.getBoolean("slow") ? 50_000 : 800;
  private static final long SECONDS = 30;

  /** What the reading of one may ask for, let go or not. */
  private static final long BYTES = 256L << 20;

  private static final List<String> WORDS =
      List.of(
          "0",
          "-1",
          "1e999",
          "nan",
          "-inf",
          "9223372036854775808",
          "\"\"",
          "\"1e-9 mm\"",
          "\"330 degC\"",
          "\"-3 mm\"",
          "\"1,5 mm\"",
          "\"1.5\"",
          "[]",
          "[[]]",
          "{}",
          "[\"1 mm\"]",
          "[1,2,3]",
          "true",
          "1979-05-27",
          "\"\"\"",
          "'''",
          "\"\\u0000\"",
          "\"\\ud800\"",
          "#",
          "= = =",
          "[part]",
          "[[part]]",
          "[gate.gate]",
          "x.y.z = 1",
          "\"mm\" = 3",
          "\u001b[2J",
          "\ufeff",
          "\u0000",
          "[[block.insert]]",
          "mesh = \"../../etc/passwd\"",
          "mesh = \"/dev/zero\"",
          "\"=cmd()\"",
          "\"<script>alert(1)</script>\"",
          "\u0661\u0662");

  private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  @TempDir private Path folder;

  @Test
  void changedCasesEndInACaseOrInMistakes() throws IOException, InterruptedException {
    List<String> good = good();
    List<String> wrong = new ArrayList<>();
    ExecutorService thread = Executors.newSingleThreadExecutor();
    try {
      for (int i = 0; i < FILES && wrong.size() < 10; i++) {
        Random chance = new Random(i);
        byte[] text = changed(good.get(chance.nextInt(good.size())), chance);
        try {
          long asked = thread.submit(() -> asked(text)).get(SECONDS, TimeUnit.SECONDS);
          if (asked > BYTES) {
            wrong.add("case " + i + " asked for " + (asked >> 20) + " MiB");
          }
        } catch (ExecutionException | TimeoutException e) {
          wrong.add("case " + i + ": " + e);
        }
      }
    } finally {
      thread.shutdownNow();
    }

    assertEquals(List.of(), wrong);
    Evidence.write("case-fuzz", "case files changed by chance, no crash, no hang", FILES);
  }

  private static List<String> good() throws IOException {
    List<String> good = new ArrayList<>(List.of(Cases.SOUND));
    Path examples = Path.of("../meshes/src/main/resources/gelfront/examples");
    try (var list = Files.list(examples)) {
      for (Path p : list.filter(p -> p.toString().endsWith(".toml")).sorted().toList()) {
        good.add(Files.readString(p));
      }
    }
    return good;
  }

  private static byte[] changed(String text, Random chance) {
    StringBuilder s = new StringBuilder(text);
    for (int n = 1 + chance.nextInt(4); n > 0; n--) {
      change(s, chance);
    }
    byte[] bytes = s.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
    if (chance.nextInt(6) == 0 && bytes.length > 0) {
      bytes[chance.nextInt(bytes.length)] = (byte) chance.nextInt(256);
    }
    return bytes;
  }

  private static void change(StringBuilder s, Random chance) {
    int at = chance.nextInt(s.length() + 1);
    int line = Math.max(0, s.lastIndexOf("\n", at) + 1);
    int end = s.indexOf("\n", line) < 0 ? s.length() : s.indexOf("\n", line);
    String word = WORDS.get(chance.nextInt(WORDS.size()));
    switch (chance.nextInt(6)) {
      case 0 -> s.setLength(at);
      case 1 -> s.delete(line, end);
      case 2 -> s.insert(line, s.substring(line, end) + "\n");
      case 3 -> s.insert(line, word + "\n");
      case 4 -> {
        int equals = s.indexOf("=", line);
        if (equals >= 0 && equals < end) {
          s.replace(equals + 1, end, " " + word);
        }
      }
      default -> s.insert(at, chance.nextInt(20) == 0 ? word.repeat(500) : word);
    }
  }

  private long asked(byte[] text) throws IOException {
    Path file = Files.write(folder.resolve("bait.toml"), text);
    long before = threads.getCurrentThreadAllocatedBytes();
    try {
      CaseFile.read(file);
    } catch (CaseException e) {
      for (String line : e.getMessage().lines().toList()) {
        assertTrue(line.chars().noneMatch(c -> c < 32 || c == 127), line);
      }
    }
    return threads.getCurrentThreadAllocatedBytes() - before;
  }
}

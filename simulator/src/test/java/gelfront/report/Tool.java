// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A program of the machine that a test needs. Where it is missing the test is skipped, unless the
 * environment says CI=true: there a missing program is a failure.
 */
public final class Tool {
  private static final int MOST_SECONDS = 120;

  private final String path;

  private Tool(String path) {
    this.path = path;
  }

  /**
   * @param names the program may go by, best first; with their folder if no other will do
   */
  public static Tool orSkip(String... names) {
    Optional<String> found =
        Stream.of(names)
            .flatMap(
                name ->
                    Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
                        .map(folder -> Path.of(folder).resolve(name)))
            .filter(Files::isExecutable)
            .map(Path::toString)
            .findFirst();
    need(found.isPresent(), String.join(", ", names));
    return new Tool(found.orElseThrow());
  }

  /** Skips the test where something is not there, or fails it where it must be. */
  public static void need(boolean there, String what) {
    assertTrue(there || !"true".equals(System.getenv("CI")), () -> "not installed: " + what);
    assumeTrue(there, () -> "not installed: " + what);
  }

  /** What it prints; its complaints go to a file beside the test's own. */
  public String run(Path folder, List<String> arguments) throws IOException, InterruptedException {
    Path out = Files.createTempFile(folder, "out", ".txt");
    Path complaints = Files.createTempFile(folder, "err", ".txt");
    Process p = start(arguments, out, complaints);
    if (!p.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
      p.descendants().forEach(ProcessHandle::destroyForcibly);
      p.destroyForcibly();
    }
    p.waitFor();
    assertEquals(0, p.exitValue(), () -> path + " " + arguments + "\n" + text(complaints));
    return text(out);
  }

  /** Goes on running; what it says goes to files. */
  Process start(Path folder, List<String> arguments) throws IOException {
    Path out = Files.createTempFile(folder, "out", ".txt");
    return start(arguments, out, Files.createTempFile(folder, "err", ".txt"));
  }

  private Process start(List<String> arguments, Path out, Path complaints) throws IOException {
    List<String> command = new ArrayList<>(List.of(path));
    command.addAll(arguments);
    return new ProcessBuilder(command)
        .redirectOutput(out.toFile())
        .redirectError(complaints.toFile())
        .start();
  }

  private static String text(Path file) {
    try {
      return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return e.toString();
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.evidence.Evidence;
import gelfront.result.ResultFolder;
import gelfront.result.StoredRun;
import gelfront.result.StudyFolder;
import gelfront.study.StudyCases;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Processes killed at random times (kill -9) while they calculate, save and keep a study's runs:
 * what was there before stays whole, and whoever comes next clears up and goes on. With {@code
 * -Dslow=true} a hundred kills while saving, and more of the others.
 */
final class KillTest {
  private static final boolean SLOW = Boolean.getBoolean("slow");
  private static final int SAVES = SLOW ? 100 : 8;
  private static final int STUDIES = SLOW ? 50 : 2;
  private static final int CHECKS = SLOW ? 30 : 1;

  private final Random chance = new Random(5);

  @TempDir private Path folder;

  @Test
  void whatIsSavedIsOneResultOrTheOther() throws IOException, InterruptedException {
    Path target = folder.resolve("result");
    for (int k = 0; k < SAVES; k++) {
      killed(target, KillChild.class, 1, 250, "save", target.toString());

      StoredRun there = ResultFolder.read(target);
      StoredRun wanted = KillChild.run(there.name().equals("even") ? 0 : 1);
      assertEquals(wanted.name(), there.name());
      assertEquals(wanted.cautions(), there.cautions());
      assertArrayEquals(wanted.fields().setTime(), there.fields().setTime());
    }
    ResultFolder.write(target, KillChild.run(0), List.of());

    assertEquals(List.of("result"), listed(folder), "no debris");
    Evidence.write("kills-save", "processes killed while saving, results whole", SAVES);
  }

  @Test
  void whatAStudyKeptIsWhole() throws IOException, InterruptedException {
    Path target = folder.resolve("study");
    for (int k = 0; k < STUDIES; k++) {
      killed(target, KillChild.class, k % 3, 150, "keep", target.toString());

      StudyFolder study = StudyFolder.open(target, KillChild.STUDY);
      try (Stream<Path> runs = Files.list(target.resolve("runs"))) {
        for (Path p : runs.filter(p -> p.toString().endsWith(".json")).toList()) {
          String hash = p.getFileName().toString().replace(".json", "");
          assertTrue(study.find(hash).isPresent(), hash);
        }
      }
      Path answer = target.resolve("answer.txt");
      if (Files.exists(answer)) {
        assertTrue(Files.readString(answer).endsWith("\n"), "a whole answer");
      }
    }
    Evidence.write("kills-study", "processes killed while keeping a study's runs", STUDIES);
  }

  @Test
  void aCheckThatIsKilledLeavesTheEarlierResult() throws IOException, InterruptedException {
    Path pea = Files.writeString(folder.resolve("pea.toml"), CommandLineTest.CASE);
    assertEquals(0, run("check", pea.toString()));
    Path result = folder.resolve("pea-result");
    byte[] before = Files.readAllBytes(result.resolve("run.json"));
    for (int k = 0; k < CHECKS; k++) {
      killed(result, Main.class, 0, 5000, "check", pea.toString());

      ResultFolder.read(result);
      assertArrayEquals(before, Files.readAllBytes(result.resolve("run.json")));
    }

    assertEquals(0, run("check", pea.toString()));
    assertArrayEquals(before, Files.readAllBytes(result.resolve("run.json")));
    assertEquals(List.of("pea-result", "pea.toml"), listed(folder), "no debris");
    Evidence.write("kills-check", "processes killed while checking, earlier results whole", CHECKS);
  }

  @Test
  void aStudyThatIsKilledGoesOn() throws IOException, InterruptedException {
    Path bean = Files.writeString(folder.resolve("bean.toml"), StudyCases.BEAN);
    String[] map = {
      "map", bean.toString(), "gate = 2..4 mm/2", "hold = 3..4 s/2", "--no-flow", "-o"
    };
    String[] alone =
        Stream.concat(Stream.of(map), Stream.of(folder + "/alone")).toArray(String[]::new);
    String[] broken =
        Stream.concat(Stream.of(map), Stream.of(folder + "/broken")).toArray(String[]::new);
    for (int k = 0; k < CHECKS; k++) {
      killed(folder.resolve("broken"), Main.class, 0, 6000, broken);
    }

    assertEquals(0, run(alone));
    assertEquals(0, run(broken));
    assertArrayEquals(answers(folder.resolve("alone")), answers(folder.resolve("broken")));
    Evidence.write("kills-map", "processes killed during a map, the same answer after", CHECKS);
  }

  private static Object[] answers(Path study) throws IOException {
    List<Object> all = new ArrayList<>();
    for (String name : listed(study)) {
      if (name.endsWith(".csv")) {
        all.add(name);
        all.add(Files.readString(study.resolve(name)));
      }
    }
    assertTrue(!all.isEmpty(), "answers");
    return all.toArray();
  }

  /** Starts a process, waits for so many bytes of it and a while by chance, and kills it. */
  private void killed(Path target, Class<?> main, int bytes, int millis, String... args)
      throws IOException, InterruptedException {
    Process child = start(main, args).start();
    for (int b = 0; b < bytes; b++) {
      assertTrue(child.getInputStream().read() >= 0, "ended by itself, before " + target);
    }
    Thread.sleep(chance.nextInt(millis));
    child.destroyForcibly().waitFor();
    child.getInputStream().close();
  }

  static ProcessBuilder start(Class<?> main, String... args) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
    command.addAll(List.of(args));
    return new ProcessBuilder(command).redirectError(Redirect.DISCARD);
  }

  private static int run(String... args) {
    return Program.run((Object[]) args).code();
  }

  private static List<String> listed(Path folder) throws IOException {
    try (Stream<Path> s = Files.list(folder)) {
      return s.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }
}

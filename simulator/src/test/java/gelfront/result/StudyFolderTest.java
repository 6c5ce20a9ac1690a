// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.answer.Curves;
import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.SomeRun;
import gelfront.base.Changed;
import gelfront.finding.Constriction;
import gelfront.finding.Opening;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class StudyFolderTest {
  private static final StudyFolder.Identity MINE = new StudyFolder.Identity("1", "Bean", "abc");

  @TempDir private Path temp;

  private static Ran ran(Optional<Vec3> at, OptionalDouble held) {
    Optional<Constriction> blamed =
        at.map(p -> new Constriction(Constriction.Kind.NECK, p, 5e-3, 12.5));
    Opening early = new Opening(6, Severity.MAY_DENT, 2e-6, 3e-4, 1e-4, Vec3.ZERO, 9, "a", "b");
    return Ran.well(
        Changed.of(
            SomeRun.dent(0.1, 1e3 / 3),
            "verdict",
            "may \"dent\"",
            "dentPlace",
            at,
            "blamed",
            blamed,
            "pocketCentre",
            at,
            "partedBy",
            blamed,
            "openUntil",
            Double.POSITIVE_INFINITY,
            "pressing",
            new RunOutcome.Pressing(2e4, 20, 25, held),
            "opening",
            at.isPresent() ? early : Opening.WHEN_FIRM,
            "cavities",
            List.of(new RunOutcome.OfCavity(1, 0, 1e-4, Double.POSITIVE_INFINITY)),
            "curves",
            new Curves(
                List.of(0.0, 0.4),
                List.of(new Curves.Curve("gate", "gate", "°C", List.of(165.0, 160.25))))));
  }

  private Map<String, String> content() throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(temp)) {
      for (Path p : walk.filter(Files::isRegularFile).toList()) {
        all.put(temp.relativize(p).toString(), Files.readString(p));
      }
    }
    return all;
  }

  @Test
  void outcomesComeBackToTheLastBit() throws IOException {
    Path folder = temp.resolve("bean-study");
    StudyFolder study = StudyFolder.open(folder, MINE);
    Ran full = ran(Optional.of(new Vec3(0.1, 1.0 / 7, -3)), OptionalDouble.of(2000));
    Ran bare = ran(Optional.empty(), OptionalDouble.empty());
    study.keep("aa", "full", full);
    study.keep("bb", "bare", bare);
    study.keep("cc", "bad", Ran.failed("no gate"));

    StudyFolder again = StudyFolder.open(folder, MINE);
    assertEquals(Optional.of(full), again.find("aa"));
    assertEquals(Optional.of(bare), again.find("bb"));
    assertEquals("no gate", again.find("cc").get().error());
    assertEquals(Optional.empty(), again.find("dd"));
    assertEquals(List.of("bad: no gate"), again.failures());
    assertTrue(content().keySet().stream().noneMatch(n -> n.contains(".part-")));
  }

  @Test
  void aHalfWrittenRunCountsAsNone() throws IOException {
    StudyFolder study = StudyFolder.open(temp, MINE);
    study.keep("aa", "", ran(Optional.empty(), OptionalDouble.empty()));
    Path file = temp.resolve("runs/aa.json");
    String whole = Files.readString(file);
    for (int n : new int[] {0, 1, whole.length() / 2, whole.length() - 2}) {
      Files.writeString(file, whole.substring(0, n));
      assertEquals(Optional.empty(), study.find("aa"));
    }
    Files.writeString(file, whole);
    Files.copy(file, temp.resolve("runs/bb.json"));
    assertEquals(Optional.empty(), study.find("bb"), "another run's file");
    Files.writeString(temp.resolve("runs/.aa.json.part-7"), "{"); // left by kill -9
    assertTrue(StudyFolder.open(temp, MINE).find("aa").isPresent());
  }

  @Test
  void othersStudiesAreRefusedAndLeftAlone() throws IOException {
    StudyFolder.open(temp, MINE).keep("aa", "", Ran.failed("x"));
    Map<String, String> before = content();
    for (StudyFolder.Identity other :
        List.of(
            new StudyFolder.Identity("2", "Bean", "abc"),
            new StudyFolder.Identity("1", "Pea", "abc"),
            new StudyFolder.Identity("1", "Bean", "abd"))) {
      String no =
          assertThrows(ResultException.class, () -> StudyFolder.open(temp, other)).getMessage();
      assertTrue(no.contains("nothing was overwritten"), no);
    }
    assertEquals(before, content());
  }

  @Test
  void foldersOfSomethingElseAreRefused() throws IOException {
    Files.writeString(temp.resolve("notes.txt"), "mine");
    assertThrows(ResultException.class, () -> StudyFolder.open(temp, MINE));
    Path file = temp.resolve("notes.txt");
    assertThrows(ResultException.class, () -> StudyFolder.open(file, MINE));
    Path damaged = Files.createDirectory(temp.resolve("d"));
    for (String text : List.of("{\"format\":", "{\"format\":\"gelfront-study\",\"version\":1}")) {
      Files.writeString(damaged.resolve("study.json"), text);
      String no =
          assertThrows(ResultException.class, () -> StudyFolder.open(damaged, MINE)).getMessage();
      assertTrue(no.contains("study.json: damaged: it no longer says whose study this is;"), no);
      assertTrue(no.contains("-o") && !no.contains("property"), no);
    }
    assertEquals("mine", Files.readString(file));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Changed;
import gelfront.finding.Findings;
import gelfront.finding.Opening;
import gelfront.finding.Severity;
import gelfront.mesh.Vec3;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultFolderTest {
  @TempDir Path temp;

  private static final StoredRun RUN = SyntheticRun.small();

  private static final ArtifactWriter HELLO =
      new ArtifactWriter() {
        @Override
        public String fileName() {
          return "hello.txt";
        }

        @Override
        public void write(StoredRun run, OutputStream out) throws IOException {
          out.write(run.name().getBytes(StandardCharsets.UTF_8));
        }
      };

  private static final ArtifactWriter FAILS =
      new ArtifactWriter() {
        @Override
        public String fileName() {
          return "never.txt";
        }

        @Override
        public void write(StoredRun run, OutputStream out) throws IOException {
          out.write(1);
          throw new IOException("disk full");
        }
      };

  private List<String> listed(Path folder) throws IOException {
    try (Stream<Path> s = Files.list(folder)) {
      return s.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  private Path written() throws IOException {
    Path folder = temp.resolve("result");
    ResultFolder.write(folder, RUN, List.of(HELLO));
    return folder;
  }

  @Test
  void comesBackAsItWas() throws IOException {
    StoredRun back = ResultFolder.read(written());

    assertEquals(RUN.name(), back.name());
    assertEquals(RUN.caseText(), back.caseText());
    assertEquals(RUN.inputs(), back.inputs());
    assertEquals(RUN.findings(), back.findings());
    assertEquals(RUN.health(), back.health());
    assertEquals(RUN.cautions(), back.cautions());
    assertEquals(RUN.provenance(), back.provenance());
    assertArrayEquals(RUN.series().time(), back.series().time());
    for (int i = 0; i < RUN.series().curves().size(); i++) {
      Series.Curve was = RUN.series().curves().get(i);
      Series.Curve is = back.series().curves().get(i);
      assertEquals(was.key() + was.label() + was.unit(), is.key() + is.label() + is.unit());
      assertArrayEquals(was.values(), is.values());
    }
  }

  @Test
  void fieldsComeBackToTheBit() throws IOException {
    Fields was = RUN.fields();
    was.setTime()[3] = Float.POSITIVE_INFINITY;
    Fields is = ResultFolder.read(written()).fields();

    assertEquals(was.origin(), is.origin());
    assertEquals(was.spacing(), is.spacing());
    assertEquals(List.of(was.nx(), was.ny(), was.nz()), List.of(is.nx(), is.ny(), is.nz()));
    assertArrayEquals(was.cells(), is.cells());
    assertArrayEquals(was.region(), is.region());
    assertArrayEquals(was.setTime(), is.setTime());
    assertArrayEquals(was.cutOff(), is.cutOff());
    assertArrayEquals(was.pocket(), is.pocket());
    assertEquals(was.snapshots().size(), is.snapshots().size());
    for (int i = 0; i < was.snapshots().size(); i++) {
      assertEquals(was.snapshots().get(i).time(), is.snapshots().get(i).time());
      assertArrayEquals(was.snapshots().get(i).temperature(), is.snapshots().get(i).temperature());
    }
  }

  @Test
  void surfaceComesBackClosedAndInPlace() throws IOException {
    StoredRun back = ResultFolder.read(written());

    assertEquals(RUN.surface().vertexCount(), back.surface().vertexCount());
    assertEquals(RUN.surface().triangleCount(), back.surface().triangleCount());
    assertEquals(RUN.surface().volume(), back.surface().volume(), 1e-6 * RUN.surface().volume());
    for (int a = 0; a < 3; a++) {
      assertEquals(
          RUN.surface().coordinate(RUN.surface().corner(9, 1), a),
          back.surface().coordinate(back.surface().corner(9, 1), a),
          1e-8);
    }
  }

  @Test
  void whatOpeningDoesSurvives() throws IOException {
    Opening early = new Opening(6, Severity.MAY_DENT, 2e-6, 3e-4, 1e-4, Vec3.ZERO, 9, "a", "b");
    Path folder = temp.resolve("opened");

    ResultFolder.write(folder, SyntheticRun.opened(RUN, early), List.of());

    assertEquals(early, ResultFolder.read(folder).findings().opening());
  }

  @Test
  void infinitiesAndAbsentNumbersSurvive() throws IOException {
    Findings f = RUN.findings();
    Findings odd =
        Changed.of(
            f,
            "gateSets",
            Double.POSITIVE_INFINITY,
            "firmAt",
            Double.POSITIVE_INFINITY,
            "linearShrinkage",
            1 / 3.0,
            "amounts",
            Changed.of(f.amounts(), "cavities", 3, "injectorCapacity", OptionalDouble.empty()));
    Path folder = temp.resolve("odd");

    ResultFolder.write(folder, Changed.of(RUN, "findings", odd), List.of());

    assertEquals(odd, ResultFolder.read(folder).findings());
  }

  @Test
  void sameRunGivesSameBytesButForProvenance() throws IOException {
    Provenance elsewhere = new Provenance("0.1.0", "2027-01-01T00:00:00Z", "elsewhere", 99);
    StoredRun later = Changed.of(RUN, "provenance", elsewhere);
    Path one = written();
    Path two = temp.resolve("two");

    ResultFolder.write(two, later, List.of(HELLO));

    assertEquals(listed(one), listed(two));
    for (String name : listed(one)) {
      boolean same =
          Arrays.equals(
              Files.readAllBytes(one.resolve(name)), Files.readAllBytes(two.resolve(name)));
      assertEquals(!name.equals("provenance.json"), same, name);
    }
  }

  @Test
  void aFailedWriteLeavesNoDebrisAndKeepsTheEarlierResult() throws IOException {
    Path folder = written();
    byte[] before = Files.readAllBytes(folder.resolve("run.json"));

    assertThrows(IOException.class, () -> ResultFolder.write(folder, RUN, List.of(HELLO, FAILS)));

    assertEquals(List.of("result"), listed(temp));
    assertArrayEquals(before, Files.readAllBytes(folder.resolve("run.json")));
    assertEquals(RUN.name(), Files.readString(folder.resolve("hello.txt")));
  }

  @Test
  void anEarlierResultIsReplacedWhole() throws IOException {
    Path folder = written();

    ResultFolder.write(folder, Changed.of(RUN, "name", "second", "cautions", List.of()), List.of());

    assertEquals("second", ResultFolder.read(folder).name());
    assertFalse(Files.exists(folder.resolve("hello.txt")));
    assertEquals(List.of("result"), listed(temp));
  }

  @Test
  void aFolderOfSomebodyElseIsNotReplaced() throws IOException {
    Path folder = Files.createDirectory(temp.resolve("holiday"));
    Files.writeString(folder.resolve("photo.jpg"), "x");

    IOException e =
        assertThrows(IOException.class, () -> ResultFolder.write(folder, RUN, List.of()));

    assertTrue(e.getMessage().contains("is no gelfront result"), e.getMessage());
    assertEquals(List.of("photo.jpg"), listed(folder));
  }

  @Test
  void aResultThatSomebodyPutNotesIntoIsNotReplaced() throws IOException {
    Path folder = written();
    Files.writeString(folder.resolve("notes.txt"), "mine");

    IOException e =
        assertThrows(IOException.class, () -> ResultFolder.write(folder, RUN, List.of()));

    assertTrue(e.getMessage().contains("notes.txt"), e.getMessage());
    assertEquals("mine", Files.readString(folder.resolve("notes.txt")));
  }

  @Test
  void aFileInTheWayIsLeftAlone() throws IOException {
    Path file = Files.writeString(temp.resolve("file"), "x");

    assertThrows(ResultException.class, () -> ResultFolder.checkWritable(file));
    assertThrows(ResultException.class, () -> ResultFolder.write(file, RUN, List.of()));
    assertEquals("x", Files.readString(file));
  }

  @Test
  void emptyAndMissingFoldersAreFine() throws IOException {
    Path deep = temp.resolve("not/yet/there");
    Path empty = Files.createDirectory(temp.resolve("empty"));

    ResultFolder.write(deep, RUN, List.of());
    ResultFolder.write(empty, RUN, List.of());

    assertEquals(RUN.name(), ResultFolder.read(deep).name());
    assertEquals(RUN.name(), ResultFolder.read(empty).name());
    assertTrue(ResultFolder.isResult(empty));
  }

  private String readError(Path folder) {
    IOException e = assertThrows(ResultException.class, () -> ResultFolder.read(folder));
    assertEquals(1, e.getMessage().lines().count(), e.getMessage());
    return e.getMessage();
  }

  @Test
  void whatIsNoResultIsToldSo() throws IOException {
    assertTrue(readError(temp).contains("not a gelfront result"));
    assertTrue(readError(temp.resolve("nowhere")).contains("no such folder"));
    Files.writeString(temp.resolve("run.json"), "{\"format\": \"other\"}");
    assertTrue(readError(temp).contains("not written by gelfront"));
    assertFalse(ResultFolder.isResult(temp));
  }

  @Test
  void anotherFormatIsToldSo() throws IOException {
    Path folder = written();
    Path json = folder.resolve("run.json");
    String text = Files.readString(json);
    Files.writeString(json, text.replace("\"version\" : 8,", "\"version\" : 9,"));
    assertTrue(readError(folder).contains("newer gelfront"));
    Files.writeString(json, text.replace("\"version\" : 8,", "\"version\" : 1,"));
    assertTrue(readError(folder).contains("older gelfront"));
  }

  @Test
  void everyTruncatedFileIsToldByName() throws IOException {
    for (String name :
        List.of("run.json", "fields.bin", "surface.stl", "dents.ply", "provenance.json")) {
      Path folder = temp.resolve("cut-" + name);
      ResultFolder.write(folder, RUN, List.of());
      byte[] all = Files.readAllBytes(folder.resolve(name));
      for (double share : new double[] {0.9, 0.5, 0.0}) {
        Files.write(folder.resolve(name), Arrays.copyOf(all, (int) (share * all.length)));

        assertTrue(readError(folder).contains(name), name);
      }
      Files.delete(folder.resolve(name));
      assertTrue(readError(folder).contains(name), name);
    }
  }

  @Test
  void flippedBitsInFieldsAreNoticed() throws IOException {
    Path folder = written();
    Path file = folder.resolve("fields.bin");
    byte[] bytes = Files.readAllBytes(file);
    bytes[bytes.length / 2] ^= 0x55;
    Files.write(file, bytes);

    assertTrue(readError(folder).contains("fields.bin"));
  }

  @Test
  void twoWritersOfOneFileAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> ResultFolder.write(temp.resolve("r"), RUN, List.of(HELLO, HELLO)));
    assertFalse(Files.exists(temp.resolve("r")));
  }

  @Test
  void aProcessKilledWhileItReplacesAResultLosesNothing() throws IOException {
    Path folder = written();
    Files.move(folder, temp.resolve(".result.part-7.old"));
    Files.createFile(temp.resolve(".result.part-7.lock"));
    Files.writeString(Files.createDirectory(temp.resolve(".result.part-7")).resolve("x"), "half");

    assertEquals(RUN.name(), ResultFolder.read(folder).name());
    ResultFolder.write(folder, RUN, List.of());

    assertEquals(List.of("result"), listed(temp));
  }

  @Test
  void whatALivingProcessWritesIsLeftAlone() throws IOException {
    Path folder = temp.resolve("result");
    Path lock = Files.createFile(temp.resolve(".result.part-7.lock"));
    Path half = Files.createDirectory(temp.resolve(".result.part-7"));
    try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.WRITE);
        FileLock held = channel.lock()) {
      assertTrue(held.isValid());
      ResultFolder.write(folder, RUN, List.of());
    }

    assertTrue(Files.exists(half) && Files.exists(lock));
  }

  @Test
  void aStudyKilledAtItsVeryStartCanBegin() throws IOException {
    Files.createDirectories(temp.resolve("study").resolve("runs"));

    StudyFolder.open(temp.resolve("study"), new StudyFolder.Identity("1", "Pea", "abc"));

    assertTrue(Files.exists(temp.resolve("study").resolve("study.json")));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.mesh.TriangleMesh;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A run on disk. Holds {@code run.json}, {@code fields.bin}, {@code surface.stl}, {@code
 * dents.ply}, {@code case.toml} and {@code provenance.json}, and one file per {@link
 * ArtifactWriter}. The same case gives the same bytes in all of them but {@code provenance.json},
 * which knows when, where and how long.
 *
 * <p>A folder is there complete or not at all: it is written under another name beside its place
 * and renamed at the end. An earlier result in that place stays until then, and comes back if the
 * process is killed while it is replaced.
 */
public final class ResultFolder {
  private static final String SURFACE = "surface.stl";
  private static final String CASE = "case.toml";
  private static final String PROVENANCE = "provenance.json";

  /** What desktops strew into folders that somebody looked at. */
  private static final Set<String> DESKTOP_FILES =
      Set.of(".DS_Store", "Thumbs.db", "desktop.ini", ".directory");

  private ResultFolder() {}

  /**
   * Whether a result may be written there: nothing, an empty folder or an earlier result and
   * nothing else is in that place. Long work asks before it begins.
   *
   * @throws ResultException in words if not
   */
  public static void checkWritable(Path folder) throws IOException {
    Path target = folder.toAbsolutePath().normalize();
    if (target.getFileName() == null) {
      throw new ResultException(folder + ": a result needs a folder of its own");
    }
    Leftovers.restore(target);
    checkRights(folder, target);
    if (!Files.exists(target)) {
      return;
    }
    if (!Files.isDirectory(target)) {
      throw new ResultException(folder + ": a file is in the place of the result folder");
    }
    List<String> names = names(target);
    if (names.isEmpty()) {
      return;
    }
    checkOnlyOurs(folder, names);
  }

  /** A result is written beside its place, so the folder round it must let that be. */
  private static void checkRights(Path folder, Path target) throws ResultException {
    Path round = target.getParent();
    while (round != null && !Files.exists(round)) {
      round = round.getParent();
    }
    if (round == null || !Files.isDirectory(round) || !Files.isWritable(round)) {
      throw new ResultException(folder + ": can't be written: nothing may be written in " + round);
    }
  }

  private static void checkOnlyOurs(Path folder, List<String> names) throws ResultException {
    RunJson earlier;
    try {
      earlier = RunJson.read(folder);
    } catch (ResultException e) {
      throw new ResultException(
          folder + ": holds files and is no gelfront result, so it is not replaced", e);
    }
    Set<String> ours = new HashSet<>(earlier.files());
    for (String name : names) {
      if (!ours.contains(name)) {
        throw new ResultException(
            folder
                + ": holds "
                + name
                + ", which gelfront did not write; move it or choose another folder");
      }
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> list = Files.list(folder)) {
      return list.map(p -> p.getFileName().toString())
          .filter(name -> !DESKTOP_FILES.contains(name))
          .sorted()
          .toList();
    }
  }

  /**
   * Writes the run and what the writers make of it.
   *
   * @throws IOException if it can't be written; the place is then as it was before
   */
  public static void write(Path folder, StoredRun run, List<ArtifactWriter> writers)
      throws IOException {
    checkWritable(folder);
    List<String> files = fileNames(writers);
    Path absolute = folder.toAbsolutePath().normalize();
    Path target = Files.exists(absolute) ? absolute.toRealPath() : absolute;
    try (Staging staging = new Staging(target)) {
      fill(staging.folder(), run, writers, files);
      staging.commit();
    }
  }

  private static List<String> fileNames(List<ArtifactWriter> writers) {
    List<String> files =
        new ArrayList<>(
            List.of(RunJson.FILE, FieldsFile.FILE, SURFACE, DentsPly.FILE, CASE, PROVENANCE));
    for (ArtifactWriter writer : writers) {
      if (files.contains(writer.fileName())) {
        throw new IllegalArgumentException("two writers of " + writer.fileName());
      }
      files.add(writer.fileName());
    }
    return List.copyOf(files);
  }

  private static void fill(
      Path folder, StoredRun run, List<ArtifactWriter> writers, List<String> files)
      throws IOException {
    Files.writeString(folder.resolve(CASE), run.caseText());
    Files.write(folder.resolve(PROVENANCE), RunJson.mapper().writeValueAsBytes(run.provenance()));
    put(folder.resolve(FieldsFile.FILE), out -> FieldsFile.write(run.fields(), out));
    put(folder.resolve(SURFACE), out -> SurfaceFile.write(run.surface(), out));
    double visible = run.findings().visibleDepth();
    put(folder.resolve(DentsPly.FILE), out -> DentsPly.write(run.dents(), visible, out));
    for (ArtifactWriter writer : writers) {
      put(folder.resolve(writer.fileName()), out -> writer.write(run, out));
    }
    Path last = folder.resolve(RunJson.FILE);
    Files.write(last, RunJson.mapper().writeValueAsBytes(RunJson.of(run, files)));
    // One flush to disk, of the file that makes the folder a result.
    try (FileChannel channel = FileChannel.open(last, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  private interface Body {
    void to(OutputStream out) throws IOException;
  }

  private static void put(Path file, Body body) throws IOException {
    try (OutputStream out =
        new BufferedOutputStream(
            Files.newOutputStream(file, StandardOpenOption.CREATE_NEW), 1 << 16)) {
      body.to(out);
    }
  }

  /** Whether the folder claims to be a result; {@link #read} finds out whether it is whole. */
  public static boolean isResult(Path folder) {
    try {
      RunJson.read(folder);
      return true;
    } catch (ResultException e) {
      return false;
    }
  }

  /**
   * Reads a run back. The surface comes back to the float precision of its file.
   *
   * @throws ResultException in one line with the file, if the folder is no result, was written by a
   *     newer gelfront, is damaged or incomplete
   */
  public static StoredRun read(Path folder) throws IOException {
    Leftovers.restore(folder.toAbsolutePath().normalize());
    if (!Files.isDirectory(folder)) {
      throw new ResultException(folder + ": there is no such folder");
    }
    RunJson json = RunJson.read(folder);
    Provenance provenance =
        get(folder.resolve(PROVENANCE), in -> RunJson.mapper().readValue(in, Provenance.class));
    String caseText =
        get(folder.resolve(CASE), in -> new String(in.readAllBytes(), StandardCharsets.UTF_8));
    Fields fields = get(folder.resolve(FieldsFile.FILE), FieldsFile::read);
    TriangleMesh surface = get(folder.resolve(SURFACE), SurfaceFile::read);
    DentSurface dents = get(folder.resolve(DentsPly.FILE), DentsPly::read);
    return new StoredRun(
        json.name(),
        caseText,
        json.inputs(),
        json.findings(),
        json.series(),
        json.health(),
        json.cautions(),
        provenance,
        fields,
        surface,
        dents);
  }

  private interface Reader<T> {
    T from(InputStream in) throws IOException;
  }

  private static <T> T get(Path file, Reader<T> reader) throws ResultException {
    try (InputStream in = Files.newInputStream(file)) {
      return reader.from(in);
    } catch (NoSuchFileException e) {
      throw new ResultException(file + ": missing from the result folder", e);
    } catch (ResultException e) {
      throw new ResultException(file + ": " + e.getMessage(), e);
    } catch (IOException e) {
      String firstLine = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
      throw new ResultException(file + ": damaged or truncated: " + firstLine, e);
    }
  }
}

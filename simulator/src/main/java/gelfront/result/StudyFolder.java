// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.answer.Ran;
import gelfront.answer.RunOutcome;
import gelfront.answer.RunStore;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A study on disk: {@code study.json} says whose it is, {@code runs/HASH.json} holds one outcome
 * each, and answers lie beside them. A file is there whole or not at all: it is written under
 * another name, flushed and renamed. So a study that was killed goes on where it was. A run's file
 * that is damaged all the same counts as none and is calculated again.
 */
public final class StudyFolder implements RunStore {
  private static final String FILE = "study.json";
  private static final String RUNS = "runs";
  private static final String FORMAT = "gelfront-study";
  private static final int VERSION = 1;

  private final Path folder;
  private final ObjectMapper mapper;

  private StudyFolder(Path folder) {
    this.folder = folder;
    this.mapper = mapper();
  }

  /**
   * Whose a study is.
   *
   * @param program its version
   * @param name of the case
   * @param part hash of the part's mesh
   */
  public record Identity(String program, String name, String part) {}

  /** What {@code study.json} holds. */
  record StudyJson(String format, int version, Identity of) {}

  /** What a run's file holds. */
  record RunFile(
      String format,
      int version,
      String hash,
      String label,
      Optional<RunOutcome> outcome,
      String error) {}

  /**
   * Begins a study, or goes on with it.
   *
   * @throws ResultException in one line with the folder, if what lies there is no study, or one of
   *     another program version, case or part; nothing is written then
   */
  public static StudyFolder open(Path folder, Identity identity) throws IOException {
    StudyFolder study = new StudyFolder(folder.toAbsolutePath().normalize());
    if (Files.exists(study.folder.resolve(FILE))) {
      study.hold(identity);
    } else {
      study.begin(identity);
    }
    return study;
  }

  /** Where answers go. */
  public Path folder() {
    return folder;
  }

  private void begin(Identity identity) throws IOException {
    if (Files.exists(folder)) {
      if (!Files.isDirectory(folder)) {
        throw new ResultException(folder + ": is no folder, so no study can lie there");
      }
      try (Stream<Path> list = Files.list(folder)) {
        if (list.anyMatch(p -> !p.getFileName().toString().startsWith(".") && !begun(p))) {
          throw new ResultException(
              folder + ": holds something else than a study: name another folder with -o");
        }
      }
    }
    Files.createDirectories(folder.resolve(RUNS));
    write(FILE, mapper.writeValueAsBytes(new StudyJson(FORMAT, VERSION, identity)));
  }

  /** A process that was killed before it had said whose study it is leaves an empty one. */
  private static boolean begun(Path p) {
    if (!p.getFileName().toString().equals(RUNS) || !Files.isDirectory(p)) {
      return false;
    }
    try (Stream<Path> list = Files.list(p)) {
      return list.findAny().isEmpty();
    } catch (IOException e) {
      return false;
    }
  }

  private void hold(Identity identity) throws IOException {
    Path file = folder.resolve(FILE);
    StudyJson there;
    try {
      JsonNode tree = mapper.readTree(Files.readAllBytes(file));
      if (tree == null || !FORMAT.equals(tree.path("format").asText())) {
        throw new ResultException(file + ": not written by gelfront");
      }
      if (tree.path("version").asInt() != VERSION) {
        throw other("of another format");
      }
      there = mapper.treeToValue(tree, StudyJson.class);
    } catch (JsonProcessingException e) {
      String lost = ": damaged: it no longer says whose study this is";
      throw new ResultException(
          file + lost + "; name another folder with -o, or delete " + folder, e);
    }
    Identity was = there.of();
    if (!was.program().equals(identity.program())) {
      throw other("made by gelfront " + was.program() + ", this is " + identity.program());
    }
    if (!was.name().equals(identity.name())) {
      throw other("of another case, \"" + was.name() + "\"");
    }
    if (!was.part().equals(identity.part())) {
      throw other("of another part: the mesh has changed");
    }
    Files.createDirectories(folder.resolve(RUNS));
    WholeFile.clear(folder);
    WholeFile.clear(folder.resolve(RUNS));
  }

  private ResultException other(String whose) {
    return new ResultException(
        folder
            + ": the study there is "
            + whose
            + "; nothing was overwritten: name another folder with -o, or delete this one");
  }

  @Override
  public Optional<Ran> find(String hash) {
    Path file = folder.resolve(RUNS).resolve(hash + ".json");
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try {
      RunFile run = mapper.readValue(Files.readAllBytes(file), RunFile.class);
      boolean sound = run.format().equals(FORMAT) && run.version() == VERSION;
      return sound && run.hash().equals(hash)
          ? Optional.of(new Ran(run.outcome(), run.error()))
          : Optional.empty();
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  @Override
  public void keep(String hash, String label, Ran ran) {
    try {
      write(
          RUNS + "/" + hash + ".json",
          mapper.writeValueAsBytes(
              new RunFile(FORMAT, VERSION, hash, label, ran.outcome(), ran.error())));
    } catch (IOException e) {
      throw new UncheckedIOException(folder + ": a run can't be kept: " + e.getMessage(), e);
    }
  }

  /** Writes an answer into the folder, whole or not at all; an earlier one is replaced. */
  public Path write(String name, String text) throws IOException {
    return write(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** As above. */
  public Path write(String name, byte[] content) throws IOException {
    return WholeFile.write(folder.resolve(name), content);
  }

  /** Labels of the runs that are kept and went wrong, with their reasons. */
  public List<String> failures() throws IOException {
    try (Stream<Path> list = Files.list(folder.resolve(RUNS))) {
      return list.filter(p -> p.toString().endsWith(".json"))
          .sorted()
          .flatMap(p -> failure(p).stream())
          .toList();
    }
  }

  private Optional<String> failure(Path file) {
    try {
      RunFile run = mapper.readValue(Files.readAllBytes(file), RunFile.class);
      return run.error().isEmpty()
          ? Optional.empty()
          : Optional.of(run.label() + ": " + run.error());
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static ObjectMapper mapper() {
    return RunJson.mapper().registerModule(OptionalJson.module());
  }
}

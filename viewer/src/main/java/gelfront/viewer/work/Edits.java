// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.result.WholeFile;
import gelfront.setup.CaseException;
import gelfront.setup.LoadedCase;
import gelfront.setup.Mistake;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Steps on a project that may not come off, and its way to a file. */
final class Edits {
  private Edits() {}

  /**
   * @return what is wrong, in words; empty: done
   */
  static Optional<String> attempt(Runnable step) {
    try {
      step.run();
      return Optional.empty();
    } catch (CaseException e) {
      return Optional.of(
          e.mistakes().stream().map(Mistake::message).collect(Collectors.joining("; ")));
    } catch (IllegalArgumentException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }

  /**
   * Writes the case's text; in another folder its mesh is seen from there.
   *
   * @throws IOException if it can't be written; an older file is then as it was
   */
  static void save(Project project, Path file) throws IOException {
    LoadedCase from = project.now();
    Path folder =
        Objects.requireNonNull(
            file.toAbsolutePath().normalize().getParent(), "a file lies in a folder");
    if (!folder.equals(from.folder().toAbsolutePath().normalize())) {
      project.become(CaseMove.seenFrom(from, folder));
    }
    WholeFile.write(file, project.now().text());
    project.saved(file);
  }
}

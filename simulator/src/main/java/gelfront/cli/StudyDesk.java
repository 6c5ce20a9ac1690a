// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.mesh.MeshException;
import gelfront.mesh.TriangleMesh;
import gelfront.result.ResultException;
import gelfront.result.StudyFolder;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import gelfront.study.Study;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;

/** A study opened for a command: its case, its folder, its threads, its progress line. */
final class StudyDesk implements AutoCloseable {
  private final LoadedCase base;
  private final Study study;
  private final StudyFolder folder;
  private final ExecutorService pool;
  private final ProgressLine progress;
  private final int threads;

  /**
   * @param folder null: beside the case, named after it
   * @param flow whether liquid is drawn in and carries heat
   * @throws IOException if the folder can't be used
   */
  StudyDesk(
      Console console,
      Answers answers,
      int threads,
      Path caseFile,
      @Nullable Path folder,
      boolean flow)
      throws IOException {
    this.base = base(caseFile, flow);
    Path target = folder == null ? beside(caseFile) : folder;
    TriangleMesh part;
    try {
      part = PartLoader.load(base.setup().part()).mesh();
    } catch (MeshException e) {
      throw new InputFailure(caseFile.getFileName() + ": " + e.getMessage(), e);
    }
    this.threads = threads;
    String version = CodeWord.of();
    String name = base.setup().name();
    this.folder = open(target, new StudyFolder.Identity(version, name, Study.partHash(part)));
    this.pool = Executors.newFixedThreadPool(2 * threads);
    this.study = Study.of(base, part, version, this.folder, pool, threads);
    this.progress = new ProgressLine(console, console.terminal() && !answers.quiet());
  }

  /** The case that a study is about; nothing is written. */
  static LoadedCase base(Path caseFile, boolean flow) throws IOException {
    LoadedCase read = CaseFile.read(caseFile);
    return flow ? read : read.with(read.setup().numerics().withoutFlow());
  }

  private static StudyFolder open(Path target, StudyFolder.Identity identity) throws IOException {
    try {
      return StudyFolder.open(target, identity);
    } catch (ResultException e) {
      throw e;
    } catch (IOException e) {
      throw new OutputFailure(target + ": can't be written: " + e.getMessage(), e);
    }
  }

  /** {@code bait.toml} gives {@code bait-study}. */
  static Path beside(Path caseFile) {
    String name = String.valueOf(caseFile.getFileName()).replaceFirst("\\.[^.]*$", "");
    return caseFile.resolveSibling(name + "-study");
  }

  LoadedCase base() {
    return base;
  }

  Study study() {
    return study;
  }

  StudyFolder folder() {
    return folder;
  }

  /** For a single run at a time. */
  Workers workers() {
    return new Workers(pool, threads);
  }

  Progress progress() {
    return progress;
  }

  /** Writes an answer into the study's folder. */
  Path write(String name, String text) {
    try {
      return folder.write(name, text);
    } catch (IOException e) {
      throw new OutputFailure(
          folder.folder().resolve(name) + ": can't be written: " + e.getMessage(), e);
    }
  }

  /** "14 runs, 11 of them from an earlier study". */
  String runs() {
    int all = study.calculated() + study.reused();
    String kept = study.reused() == 0 ? "" : ", " + study.reused() + " of them kept from earlier";
    return all + (all == 1 ? " run" : " runs") + kept;
  }

  @Override
  public void close() {
    progress.close();
    pool.shutdownNow();
  }
}

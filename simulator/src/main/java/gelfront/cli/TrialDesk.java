// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.Trials;
import gelfront.calibrate.TrialCalibration;
import gelfront.calibrate.TrialReader;
import gelfront.calibrate.TrialShot;
import gelfront.study.Study;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Cases of a log of trial shots, each with a study's folder of its own. */
final class TrialDesk implements AutoCloseable {
  private final Console console;
  private final Answers answers;
  private final int threads;
  private final Path caseFile;
  private final Path target;
  private final Map<String, StudyDesk> desks = new LinkedHashMap<>();

  /**
   * @param caseFile for shots that name none
   * @param target folder for answers and what is calculated
   */
  TrialDesk(Console console, Answers answers, int threads, Path caseFile, Path target) {
    this.console = console;
    this.answers = answers;
    this.threads = threads;
    this.caseFile = caseFile;
    this.target = target;
  }

  /**
   * @param log its file; cases that it names lie from its folder
   * @throws gelfront.calibrate.LogException with the line, if it can't be used
   */
  Trials run(Path log, String text, String hash) throws IOException {
    String file = String.valueOf(log.getFileName());
    List<TrialShot> shots = TrialReader.read(file, text);
    Map<String, Study> studies = new LinkedHashMap<>();
    for (TrialShot s : shots) {
      if (!desks.containsKey(s.caseName())) {
        desks.put(s.caseName(), desk(log, file, s));
      }
      studies.put(s.caseName(), desks.get(s.caseName()).study());
    }
    StudyDesk any = desks.values().iterator().next();
    return new TrialCalibration(file, shots, studies, any.progress()).run(hash);
  }

  private StudyDesk desk(Path log, String file, TrialShot s) throws IOException {
    Path one = s.caseName().isEmpty() ? caseFile : log.resolveSibling(s.caseName());
    if (!Files.isRegularFile(one)) {
      throw new InputFailure(file + ":" + s.line() + ": there is no case " + one);
    }
    String stem = String.valueOf(one.getFileName()).replaceFirst("\\.[^.]*$", "");
    Path folder = target.resolve("runs").resolve(stem);
    return new StudyDesk(console, answers, threads, one, folder, true);
  }

  @Override
  public void close() {
    desks.values().forEach(StudyDesk::close);
  }
}

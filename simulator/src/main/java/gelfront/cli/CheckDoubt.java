// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.Doubt;
import gelfront.doubt.DoubtStudy;
import gelfront.doubt.Tolerances;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** How sure a check's verdict is: calculated where asked for, else where it costs nothing. */
final class CheckDoubt {
  private static final int USUAL = 20;

  private final Console console;
  private final Answers answers;
  private final int threads;
  private final Path caseFile;
  private final boolean flow;

  CheckDoubt(Console console, Answers answers, int threads, Path caseFile, boolean flow) {
    this.console = console;
    this.answers = answers;
    this.threads = threads;
    this.caseFile = caseFile;
    this.flow = flow;
  }

  /**
   * @param cases that are asked for; absent: only what an earlier doubt study has kept
   */
  Optional<Doubt> of(Optional<Integer> cases) {
    Path study = StudyDesk.beside(caseFile);
    if (cases.isEmpty() && !Files.exists(study.resolve("doubt.json"))) {
      return Optional.empty();
    }
    try (StudyDesk desk = new StudyDesk(console, answers, threads, caseFile, study, flow)) {
      DoubtStudy all = DoubtStudy.few(desk.base(), Tolerances.USUAL, cases.orElse(USUAL));
      return cases.isPresent() || all.stored(desk.study())
          ? Optional.of(all.run(desk.study(), desk.progress()))
          : Optional.empty();
    } catch (IOException | IllegalArgumentException e) {
      if (cases.isPresent()) {
        throw new InputFailure(String.valueOf(e.getMessage()), e);
      }
      return Optional.empty(); // a study of another case or program: nothing is known
    }
  }
}

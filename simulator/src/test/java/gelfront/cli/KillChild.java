// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.Ran;
import gelfront.base.Caution;
import gelfront.base.Changed;
import gelfront.result.ResultFolder;
import gelfront.result.StoredRun;
import gelfront.result.StudyFolder;
import gelfront.result.SyntheticRun;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A process that does one thing over and over until somebody kills it. */
final class KillChild {
  static final StudyFolder.Identity STUDY = new StudyFolder.Identity("1", "Pea", "abc");

  private KillChild() {}

  /** The two results that are saved by turns. */
  static StoredRun run(int n) {
    String name = n % 2 == 0 ? "even" : "odd";
    StoredRun run = SyntheticRun.make(0, 3e-3, 8);
    return Changed.of(run, "name", name, "cautions", List.of(Caution.of("result " + n % 2)));
  }

  /**
   * @param args save or keep, and the folder; a byte goes out after each time
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[1]);
    StoredRun[] runs = {run(0), run(1)};
    for (int n = 0; ; n++) {
      if (args[0].equals("save")) {
        ResultFolder.write(folder, runs[n % 2], List.of());
      } else {
        StudyFolder study = StudyFolder.open(folder, STUDY);
        study.keep("run" + n % 50, "label", Ran.failed("reason " + n));
        study.write("answer.txt", "answer ".repeat(1000) + n + "\n");
      }
      System.out.write('.');
      System.out.flush();
    }
  }
}

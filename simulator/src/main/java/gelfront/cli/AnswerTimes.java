// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.base.Quantities;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** How long answers take that need many runs: each on the demo's case, in a process of its own. */
final class AnswerTimes {
  /**
   * @param command and what follows the case
   * @param asked s, at level quick and confirmed at normal
   */
  private record Answer(String name, List<String> command, double asked) {}

  private static final List<Answer> ALL =
      List.of(
          new Answer("doubt, 20 cases", List.of("doubt"), 20),
          new Answer("size", List.of("size"), 20),
          new Answer("remedies", List.of("remedies"), 30),
          new Answer(
              "map, 5 x 5",
              List.of("map", "gate size = 2..5 mm", "mould temperature = 20..60 degC"),
              30));

  private final Path folder;
  private final Consumer<String> out;

  /**
   * @param folder that case and studies go to
   */
  AnswerTimes(Path folder, Consumer<String> out) {
    this.folder = folder;
    this.out = out;
  }

  /**
   * @param runs of which the median is told
   */
  void run(int runs) throws IOException {
    Path file = new ExampleCase(DemoCommand.EXAMPLE).copyTo(folder);
    for (Answer a : ALL) {
      // A study's folder of its own each time: runs that are there are not calculated again.
      double took =
          FreshProcess.median(
                  runs, run -> arguments(a, file, folder.resolve(a.command.get(0) + run)))
              .end();
      out.accept(
          Quantities.say("%-16s %5.1f s in a fresh process, %.0f s asked", a.name, took, a.asked));
    }
  }

  private static List<String> arguments(Answer a, Path file, Path study) {
    List<String> all = new ArrayList<>(List.of(a.command.get(0), file.toString()));
    all.addAll(a.command.subList(1, a.command.size()));
    all.addAll(List.of("--quiet", "--output", study.toString()));
    return all;
  }
}

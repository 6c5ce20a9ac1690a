// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.Bearing;
import gelfront.answer.Diagnosis;
import gelfront.answer.Symptom;
import gelfront.answer.SymptomTable;
import gelfront.base.Nearest;
import gelfront.report.Cautions;
import gelfront.report.SymptomsPage;
import gelfront.result.ResultFolder;
import gelfront.result.WholeFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Whether it is a dent at all. */
@Command(
    name = "symptoms",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Tells from what you see on a part whether it is a dent, trapped air, a short shot or something"
          + " else, how that is told, and what to try first. With a result: which of its findings"
          + " bears on it.",
      "For example: gelfront symptoms --surface textured --shape caved --sprue level bait-result"
    })
final class SymptomsCommand implements Callable<Integer> {
  private final Console console;
  private final Set<Symptom> seen = EnumSet.noneOf(Symptom.class);

  @Spec private CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "RESULT", description = "A result folder.")
  private @Nullable Path result;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Also writes the answer as a page, such as symptoms.html.")
  private @Nullable Path page;

  @Mixin private Answers answers;

  SymptomsCommand(Console console) {
    this.console = console;
  }

  @Option(names = "--surface", paramLabel = "WORD", description = "textured or smooth")
  void surface(String word) {
    take(Symptom.Aspect.SURFACE, word);
  }

  @Option(names = "--shape", paramLabel = "WORD", description = "caved, round or missing")
  void shape(String word) {
    take(Symptom.Aspect.SHAPE, word);
  }

  @Option(names = "--place", paramLabel = "WORD", description = "thick, end, top, gate or seam")
  void place(String word) {
    take(Symptom.Aspect.PLACE, word);
  }

  @Option(
      names = "--when",
      paramLabel = "WORD",
      description = "every (shot), first (few only) or some (now and then)")
  void when(String word) {
    take(Symptom.Aspect.WHEN, word);
  }

  @Option(names = "--sprue", paramLabel = "WORD", description = "sinking or level")
  void sprue(String word) {
    take(Symptom.Aspect.SPRUE, word);
  }

  @Option(names = "--holding", paramLabel = "WORD", description = "cures or nothing (changes)")
  void holding(String word) {
    take(Symptom.Aspect.HOLDING, word);
  }

  private void take(Symptom.Aspect a, String word) {
    List<Symptom> known = a.symptoms();
    seen.add(
        known.stream()
            .filter(s -> s.word().equalsIgnoreCase(word))
            .findFirst()
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "--"
                            + a.word()
                            + " "
                            + word
                            + ": none of "
                            + SymptomTable.choices(a)
                            + Nearest.question(word, known.stream().map(Symptom::word).toList()))));
  }

  @Override
  public Integer call() throws IOException {
    if (seen.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "say what you see: --surface, --shape, --place, --when, --sprue, --holding");
    }
    Diagnosis d = Diagnosis.of(seen);
    List<String> bearing =
        result == null ? List.of() : Bearing.of(d, ResultFolder.read(result).findings());
    if (page != null) {
      write(page, SymptomsPage.of(d, bearing));
    }
    if (answers.json()) {
      console.out().print(SymptomsPage.json(d, bearing));
    } else {
      print(d, bearing);
    }
    return ExitCode.OK;
  }

  private static void write(Path page, String text) {
    try {
      WholeFile.write(page, text);
    } catch (IOException e) {
      throw new OutputFailure(page + ": can't be written: " + e.getMessage(), e);
    }
  }

  private void print(Diagnosis d, List<String> bearing) {
    if (!answers.quiet()) {
      list("For " + d.fault().words() + ":", d.pro().stream().map(SymptomsPage::told).toList());
      list(
          "Against " + d.fault().words() + ":",
          d.contra().stream().map(SymptomsPage::told).toList());
      list("Look again:", d.clashes());
      if (d.certainty() != Diagnosis.Certainty.OPEN) {
        list("What to try, first things first:", d.steps());
      }
      list("The result says:", bearing);
      list("Mind:", Cautions.ALL.subList(0, 4));
      console.out().println("(" + SymptomTable.SOURCE + ")");
      console.out().println();
    }
    console.out().println(d.verdict());
  }

  private void list(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      console.out().println(title);
      lines.forEach(l -> console.out().println("  - " + l));
    }
  }
}

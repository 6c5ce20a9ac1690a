// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.answer.Remedies;
import gelfront.report.Cautions;
import gelfront.report.RemediesFiles;
import gelfront.report.RemediesPage;
import gelfront.study.RemedyStudy;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What to change. */
@Command(
    name = "remedies",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Calculates what a maker can do about a dent, or about an oval where open_at opens the mould"
          + " too early, least effort first: recipe, file work, another"
          + " design; each with the dent it leaves, the time to open, what is to be trimmed, and how"
          + " hard the halves are pushed apart. Then two at once. The answer is confirmed at level"
          + " normal; nothing is claimed that wasn't run.",
      "Writes remedies.html and remedies.json into the study's folder. Runs of an earlier study are"
          + " used again; what was stopped goes on where it was."
    })
final class RemediesCommand implements Callable<Integer> {
  /** Characters of a remedy on one line of the table. */
  private static final int WIDEST = 56;

  private final Console console;

  @Parameters(paramLabel = "CASE", description = "The case file.")
  private Path caseFile;

  @Mixin private StudyOptions options;
  @Mixin private Answers answers;
  @Mixin private Threads threads;

  RemediesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    try (StudyDesk desk =
        new StudyDesk(
            console, answers, threads.count(), caseFile, options.folder(), options.flow())) {
      Remedies r = new RemedyStudy(desk.study(), options.level(), desk.progress()).run();
      if (r.before().outcome().isEmpty()) {
        throw new InputFailure(caseFile.getFileName() + ": " + r.before().error());
      }
      String json = RemediesFiles.json(r);
      desk.write("remedies.json", json);
      Path page = desk.write("remedies.html", RemediesPage.of(r));
      if (answers.json()) {
        console.out().print(json);
      } else {
        print(r, page, desk);
      }
    }
    return ExitCode.OK;
  }

  private void print(Remedies r, Path page, StudyDesk desk) {
    if (!answers.quiet()) {
      table(r);
      r.notRun().forEach(l -> console.out().println("Not run: " + l.label() + ": " + l.why()));
      r.chosen()
          .filter(c -> !c.caution().isEmpty())
          .ifPresent(c -> console.out().println("Mind: " + c.caution()));
      Cautions.ALL.subList(0, 4).forEach(c -> console.out().println("Mind: " + c));
      console.out().println(desk.runs() + ".");
      console.out().println();
    }
    console.out().println(r.name() + ": " + r.verdict());
    console.out().println("Page: " + page);
  }

  private void table(Remedies r) {
    if (r.lines().isEmpty()) {
      return;
    }
    List<List<String>> lines = new ArrayList<>();
    lines.add(RemediesFiles.HEADS);
    lines.add(RemediesFiles.before(r));
    r.lines().forEach(l -> lines.addAll(wrapped(RemediesFiles.cells(r, l))));
    r.pairs().forEach(l -> lines.addAll(wrapped(RemediesFiles.cells(r, l))));
    new TextTable(lines).print(console.out());
    console.out().println();
  }

  /** Long words of the first cell go on below. */
  private static List<List<String>> wrapped(List<String> cells) {
    List<List<String>> lines = new ArrayList<>();
    String rest = cells.get(0);
    List<String> others = cells.subList(1, cells.size());
    while (!rest.isEmpty()) {
      int cut = rest.length() <= WIDEST ? rest.length() : rest.lastIndexOf(' ', WIDEST);
      cut = cut <= 0 ? rest.length() : cut;
      List<String> line = new ArrayList<>(List.of(rest.substring(0, cut)));
      line.addAll(others);
      lines.add(line);
      rest = rest.substring(cut).strip();
      rest = rest.isEmpty() ? rest : "  " + rest;
      others = Collections.nCopies(others.size(), "");
    }
    return lines;
  }
}

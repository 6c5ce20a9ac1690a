// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.report.ComparePage;
import gelfront.report.Comparison;
import gelfront.report.Designs;
import gelfront.result.ResultFolder;
import gelfront.result.StoredRun;
import gelfront.result.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Designs side by side. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Puts results side by side: what was changed, what came out, and pictures at one scale and"
          + " one colour on one page. A case file instead of a result is calculated first, as check"
          + " does, but not stored.",
      "For example: gelfront compare bait-result wider.toml"
    })
final class CompareCommand implements Callable<Integer> {
  private static final String PAGE = "compare.html";
  private static final String JSON = "compare.json";

  private final Console console;

  @Parameters(
      arity = "1..12",
      paramLabel = "RESULT",
      description = "Result folders or case files, two at least.")
  private List<Path> designs;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      defaultValue = "gelfront-compare",
      description = "Folder for " + PAGE + " and " + JSON + "; left out: ${DEFAULT-VALUE}.")
  @SuppressWarnings("NullAway.Init") // has a default
  private Path folder;

  @Spec private CommandSpec spec;
  @Mixin private Answers answers;
  @Mixin private Threads threads;

  CompareCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    if (designs.size() < 2) {
      throw new ParameterException(
          spec.commandLine(), "one design has nothing to be compared with: name two at least");
    }
    List<Designs.Design> all = new ArrayList<>();
    for (Path p : designs) {
      all.add(new Designs.Design(label(p), run(p)));
    }
    Designs compared = new Designs(all);
    Path page = write(PAGE, ComparePage.of(compared));
    String json = ComparePage.json(compared);
    write(JSON, json);
    if (answers.json()) {
      console.out().print(json);
      return ExitCode.OK;
    }
    if (!answers.quiet()) {
      print("What was changed", compared, compared.changed());
      print("What came out", compared, compared.outcomes());
    }
    console.out().println(compared.verdict());
    console.out().println("Page: " + page.toAbsolutePath().normalize());
    return ExitCode.OK;
  }

  /** The name of file or folder, as far as it is needed to tell it from the others. */
  private String label(Path p) {
    String name = name(p);
    return designs.stream().filter(d -> name(d).equals(name)).count() > 1 ? p.toString() : name;
  }

  private static String name(Path p) {
    String name = String.valueOf(p.toAbsolutePath().normalize().getFileName());
    return name.replaceFirst("(-result|\\.toml)$", "");
  }

  private StoredRun run(Path p) throws IOException {
    if (!Files.exists(p)) {
      throw new InputFailure(p + ": there is no such result or case");
    }
    return Files.isDirectory(p)
        ? ResultFolder.read(p)
        : new CaseCheck(console, answers, threads.count(), true).calculated(p);
  }

  private Path write(String name, String text) {
    Path file = folder.resolve(name);
    try {
      return WholeFile.write(file, text);
    } catch (IOException e) {
      throw new OutputFailure(file + ": can't be written: " + e.getMessage(), e);
    }
  }

  private void print(String title, Designs d, List<Comparison.Row> rows) {
    List<List<String>> lines = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(""));
    d.all().forEach(one -> head.add(one.label()));
    lines.add(head);
    for (Comparison.Row r : rows) {
      List<String> line = new ArrayList<>(List.of(r.name()));
      line.addAll(r.values());
      lines.add(line);
    }
    console.out().println(title);
    new TextTable(lines).print(console.out());
    console.out().println();
  }
}

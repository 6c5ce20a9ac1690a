package gelfront.cli;

import gelfront.report.FindingsJson;
import gelfront.result.StoredRun;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** check CASE. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Run a case and write its report into a folder.")
final class CheckCommand implements Callable<Integer> {
  @Parameters(paramLabel = "CASE", description = "case file (.toml)")
  private Path file;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      description = "result folder; default: beside the case, named after it")
  private Path folder;

  @Option(names = "--quiet", description = "no progress bar")
  private boolean quiet;

  @Option(names = "--json", description = "print the findings as JSON")
  private boolean json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    LoadedCase loaded = CaseFile.read(file);
    Path to = folder != null ? folder : file.resolveSibling(base(file) + "-result");
    StoredRun run = Checking.run(loaded, to, quiet, spec.commandLine().getErr());
    if (json) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      new FindingsJson().write(run, bytes);
      spec.commandLine().getOut().println(bytes.toString(StandardCharsets.UTF_8));
    } else {
      Checking.print(run, to, spec.commandLine().getOut());
    }
    return ExitCodes.OK;
  }

  private static String base(Path file) {
    return String.valueOf(file.getFileName()).replaceFirst("\\.[^.]*$", "");
  }
}

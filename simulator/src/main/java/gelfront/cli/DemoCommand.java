package gelfront.cli;

import gelfront.mesh.example.Examples;
import gelfront.result.StoredRun;
import gelfront.setup.CaseFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** demo. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    description = "Check a shipped example: two bulbs with a neck, fed through a 3 mm gate.")
final class DemoCommand implements Callable<Integer> {
  private static final String EXAMPLE = "two-bulbs-neck";

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      defaultValue = "gelfront-demo",
      description = "where case, mesh and result go; default: ${DEFAULT-VALUE}")
  private Path folder;

  @Option(names = "--quiet", description = "no progress bar")
  private boolean quiet;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    Files.createDirectories(folder);
    for (String ending : new String[] {".toml", ".stl"}) {
      try (InputStream in =
          Examples.class.getResourceAsStream("/gelfront/examples/" + EXAMPLE + ending)) {
        Files.copy(in, folder.resolve(EXAMPLE + ending), StandardCopyOption.REPLACE_EXISTING);
      }
    }
    Path result = folder.resolve("result");
    StoredRun run =
        Checking.run(
            CaseFile.read(folder.resolve(EXAMPLE + ".toml")),
            result,
            quiet,
            spec.commandLine().getErr());
    Checking.print(run, result, spec.commandLine().getOut());
    return ExitCodes.OK;
  }
}

package gelfront.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where a study's outcomes are kept. */
final class StudyPlace {
  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      description = "The study's folder; left out: beside the case, named after it.")
  private Path folder;

  /** Null: beside the case, named after it. */
  Path folder() {
    return folder;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where a study's outcomes are kept. */
final class StudyPlace {
  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      description = "The study's folder; left out: beside the case, named after it.")
  private @Nullable Path folder;

  /** Null: beside the case, named after it. */
  @Nullable Path folder() {
    return folder;
  }
}

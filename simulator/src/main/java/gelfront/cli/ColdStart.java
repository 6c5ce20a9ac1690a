// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.timing.StandardCase;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** {@code check} on the standard case, each time in a new Java process. */
final class ColdStart {
  private final Path file;

  /**
   * @param folder that mesh, case and result go to
   */
  ColdStart(Path folder) throws IOException {
    file = Files.writeString(folder.resolve("standard.toml"), StandardCase.CASE);
    try (OutputStream out = Files.newOutputStream(folder.resolve("standard.stl"))) {
      MeshFiles.writeStl(StandardCase.body(128), out, LengthUnit.MM);
    }
  }

  /** The standard case, read. */
  LoadedCase loaded() {
    return CaseFile.read(file);
  }

  /**
   * Until the verdict is said, and until the report is written.
   *
   * @param options of {@code check}
   */
  FreshProcess.Took median(int runs, String... options) throws IOException {
    List<String> arguments = new ArrayList<>(List.of("check", "--quiet", file.toString()));
    arguments.addAll(Arrays.asList(options));
    return FreshProcess.median(runs, run -> arguments);
  }
}

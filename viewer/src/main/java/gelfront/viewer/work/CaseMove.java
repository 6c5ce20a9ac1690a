// SPDX-License-Identifier: Apache-2.0
package gelfront.viewer.work;

import gelfront.setup.CaseFile;
import gelfront.setup.Change;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartShape;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A case that is saved into another folder than it came from: its mesh is elsewhere from there. */
final class CaseMove {
  private CaseMove() {}

  static LoadedCase seenFrom(LoadedCase loaded, Path folder) {
    if (!(loaded.setup().part() instanceof PartShape.Meshes m)) {
      return CaseFile.parse(loaded.file(), loaded.text(), folder);
    }
    LoadedCase whole = loaded.with(List.of(mesh(m, f -> f.toString())));
    LoadedCase there = CaseFile.parse(loaded.file(), whole.text(), folder);
    return there.with(List.of(mesh(m, f -> seen(f, folder))));
  }

  private static Change mesh(PartShape.Meshes m, Function<Path, String> said) {
    String files =
        m.files().stream()
            .map(f -> Change.text(said.apply(f.toAbsolutePath().normalize())))
            .collect(Collectors.joining(", "));
    return new Change.Set("part.mesh", m.files().size() == 1 ? files : "[" + files + "]");
  }

  private static String seen(Path file, Path folder) {
    try {
      return folder.relativize(file).toString().replace('\\', '/');
    } catch (IllegalArgumentException e) { // another drive
      return file.toString().replace('\\', '/');
    }
  }
}

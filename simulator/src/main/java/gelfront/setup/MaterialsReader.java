// SPDX-License-Identifier: Apache-2.0
package gelfront.setup;

import gelfront.material.MaterialTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** The materials that a case may name: the built-in ones, and those of a file that it names. */
record MaterialsReader(CaseTable root, Path folder) {
  private static final String KEY = "materials";

  /** Bytes; the built-in table is a hundredth of it. */
  private static final long LARGEST = 1 << 20;

  MaterialTable read() {
    MaterialTable builtIn = MaterialTable.builtIn();
    Optional<String> file = root.text(KEY);
    if (file.isEmpty()) {
      return builtIn;
    }
    try {
      Path path = folder.resolve(file.get());
      if (!Files.isRegularFile(path)) {
        root.mistake(KEY, "there is no file \"" + file.get() + "\" in " + folder);
      } else if (Files.size(path) > LARGEST) {
        root.mistake(KEY, "\"" + file.get() + "\" is larger than 1 MiB: is it a table?");
      } else {
        return builtIn.with(file.get(), Files.readString(path));
      }
    } catch (InvalidPathException | IOException e) {
      root.mistake(KEY, "\"" + file.get() + "\" can't be read: " + e.getMessage());
    } catch (IllegalArgumentException e) {
      root.mistake(KEY, String.valueOf(e.getMessage()));
    }
    return builtIn;
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A temporary folder that goes with all it holds.
 *
 * @param folder exists until closed
 */
record Scratch(Path folder) implements AutoCloseable {
  static Scratch make() throws IOException {
    return new Scratch(Files.createTempDirectory("gelfront-timing-"));
  }

  @Override
  public void close() throws IOException {
    List<Path> all;
    try (Stream<Path> walk = Files.walk(folder)) {
      all = walk.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path p : all) {
      Files.delete(p);
    }
  }
}

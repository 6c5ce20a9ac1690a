// SPDX-License-Identifier: Apache-2.0
package gelfront.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Numbers that tests leave in {@code target/evidence}, one file each: the name, a tab, what was
 * counted, a tab, how many. The validation report gathers them.
 */
public final class Evidence {
  private Evidence() {}

  public static void write(String name, String what, long count) throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "evidence"));
    Files.writeString(folder.resolve(name + ".tsv"), name + "\t" + what + "\t" + count + "\n");
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import java.io.IOException;
import java.io.OutputStream;

/** Writes one file of a result folder from a run: report, table, export. Extension point. */
public interface ArtifactWriter {
  /** Plain file name inside the folder. */
  String fileName();

  void write(StoredRun run, OutputStream out) throws IOException;
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.answer.Doubt;
import gelfront.result.ArtifactWriter;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The doubt of a run's verdict beside its findings: all of it as JSON, its curves as a table. */
final class DoubtArtifact implements ArtifactWriter {
  private final String fileName;
  private final String text;

  private DoubtArtifact(String fileName, String text) {
    this.fileName = fileName;
    this.text = text;
  }

  static List<ArtifactWriter> all(Doubt d) {
    return List.of(
        new DoubtArtifact("doubt.json", DoubtFiles.json(d)),
        new DoubtArtifact(DoubtFiles.CURVES, DoubtFiles.curvesCsv(d)));
  }

  @Override
  public String fileName() {
    return fileName;
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }
}

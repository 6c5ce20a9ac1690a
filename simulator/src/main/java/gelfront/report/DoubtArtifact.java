package gelfront.report;

import gelfront.answer.Doubt;
import gelfront.result.ArtifactWriter;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** The doubt of a run's verdict, as JSON beside its findings. */
public final class DoubtArtifact implements ArtifactWriter {
  private final Doubt doubt;

  public DoubtArtifact(Doubt doubt) {
    this.doubt = doubt;
  }

  @Override
  public String fileName() {
    return "doubt.json";
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    out.write(DoubtFiles.json(doubt).getBytes(StandardCharsets.UTF_8));
  }
}

// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import gelfront.result.ArtifactWriter;
import gelfront.result.Series;
import gelfront.result.StoredRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** series.csv: time in seconds, then one column a curve; empty where unknown. */
public final class SeriesCsv implements ArtifactWriter {
  @Override
  public String fileName() {
    return "series.csv";
  }

  @Override
  public void write(StoredRun run, OutputStream out) throws IOException {
    Series series = run.series();
    StringBuilder s = new StringBuilder("time_s");
    series
        .curves()
        .forEach(c -> s.append(',').append(PocketsCsv.cell(c.key() + " [" + c.unit() + "]")));
    s.append("\r\n");
    for (int i = 0; i < series.time().length; i++) {
      s.append(PocketsCsv.number(series.time()[i], 3));
      for (Series.Curve c : series.curves()) {
        s.append(',').append(PocketsCsv.number(c.values()[i], 3));
      }
      s.append("\r\n");
    }
    out.write(s.toString().getBytes(StandardCharsets.UTF_8));
  }
}
